import { EmptyFileSystem, URI } from 'langium';
import { createSlatCoreServices, type SlatFile } from '../../grammar/index.ts';
import { buildJob, type Job, type JobContext, type Problem, type RunSpec } from '../index.ts';

/** Address of the file under test; files it uses stand beside it. */
export const JOB_URI = 'file:///site/job.slat';

/** Stock enough for a run, in inches. */
export const STOCK = `
material cedar { kind wood }
board wide { width 5-1/2"; thickness 3/4"; made of cedar; lengths 12', 8'; span at most 6' }
rip strip from wide to 1-1/2"
post p4 { along 3-1/2"; through 3-1/2" }
rail two-by { width 3-1/2"; thickness 1-1/2" }
cleat stop { width 3/4"; thickness 3/4" }
pattern beat(slat = wide, space = 1/2") {
  repeat slat, 2 of strip
  gap space
  end on slat
}
`;

/** Statements of a run that can be worked out with STOCK. */
export const RUN = `
length 24'
posts p4, at most 6' clear
height 6'
fill beat
`;

const { shared } = createSlatCoreServices(EmptyFileSystem);

/** The job of a text, parsed and linked for real. `used` are further files by their path. */
export async function jobOf(text: string, used?: Readonly<Record<string, string>>): Promise<Job> {
  const { root, context } = await parse(text, used);
  return buildJob(root, context);
}

/** The linked tree of a text. */
export async function parse(
  text: string,
  used: Readonly<Record<string, string>> = {},
): Promise<{ root: SlatFile; context: JobContext }> {
  const { LangiumDocumentFactory, LangiumDocuments, DocumentBuilder, UseGraph } = shared.workspace;
  await DocumentBuilder.update([], LangiumDocuments.all.map(({ uri }) => uri).toArray());
  const files = { 'job.slat': text, ...used };
  const documents = Object.entries(files).map(([path, content]) =>
    LangiumDocumentFactory.fromString<SlatFile>(content, URI.parse(`file:///site/${path}`)),
  );
  for (const document of documents) LangiumDocuments.addDocument(document);
  await DocumentBuilder.build(documents);
  const roots = new Map(documents.map((each) => [each.uri.toString(), each.parseResult.value]));
  const seen = [...UseGraph.closure(JOB_URI).files].filter((uri) => uri !== JOB_URI);
  const root = roots.get(JOB_URI);
  if (!root) throw new Error('no file under test');
  return { root, context: { uri: JOB_URI, used: seen.flatMap((uri) => roots.get(uri) ?? []) } };
}

/** A problem in short: code, path, and the args asked for. */
export function briefly({ code, origin }: Problem): string {
  return `${code} ${origin.path}`;
}

/** The problems of a text in short. */
export async function problemsOf(text: string, used?: Readonly<Record<string, string>>): Promise<string[]> {
  return (await jobOf(text, used)).problems.map(briefly);
}

/** A run of a job that must not be broken. */
export function runOf(job: Job, name = 'bank'): RunSpec {
  const run = job.runs.find((each) => each.name === name);
  if (!run || 'broken' in run)
    throw new Error(`${name}: ${run ? JSON.stringify(job.problems) : 'not there'}`);
  return run;
}
