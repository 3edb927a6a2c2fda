import { EmptyFileSystem, URI } from 'langium';
import { checkJob, checkRun } from '../language/checks/index.ts';
import { diffViews, viewsOf } from '../language/drawing/index.ts';
import { createSlatCoreServices, type SlatSharedServices } from '../language/grammar/index.ts';
import { createLayoutMemo } from '../language/layout/index.ts';
import type { SlatServices } from './services.ts';
import { workOut } from './work/index.ts';

/** Text that goes through every stage: both directions of slats, a gate, a fit. */
export const SAMPLE = `
job { measure inches to 1/16"; see-through at most 20 % }
board plank { width 5-1/2"; thickness 3/4"; lengths 8', 12' }
rip strip from plank to 2-1/2"
post pole { along 3-1/2"; through 3-1/2" }
rail beam { width 3-1/2"; thickness 1-1/2" }
cleat batten { width 3/4"; thickness 3/4" }
pattern weave(space = 1/2") { repeat plank, 2 of strip; gap space; end on plank; fit gaps 3/8" to 5/8", else rip last }
run sample {
  length 24' over posts; posts pole, at most 6' clear; height 6'; bottom 2"; cleats batten
  slats between posts; fill weave
}
gate wicket in sample { opening 42" from 9'; hinges on left; frame beam; fill weave; flip upright }
`;

const ROUNDS = 12;
/** Milliseconds to leave to the first picture before it begins, and to everything else between rounds. */
const AT_FIRST = 400;
const BETWEEN = 10;

/**
 * Sends a sample through the whole chain a few times, apart from all open files but with the same
 * lexer and parser, so that the code is warm before the first keystroke.
 */
export async function warmUp({ parser }: SlatServices): Promise<void> {
  try {
    await pause(AT_FIRST);
    const { shared } = createSlatCoreServices(EmptyFileSystem, {
      parser: { Lexer: () => parser.Lexer, LangiumParser: () => parser.LangiumParser },
    });
    for (let round = 0; round < ROUNDS; round++) {
      await pause(BETWEEN);
      await workOutSample(shared, round);
    }
  } catch (error) {
    console.error('the sample cannot be worked out:', error);
  }
}

async function workOutSample(shared: SlatSharedServices, round: number): Promise<void> {
  const { LangiumDocumentFactory, DocumentBuilder } = shared.workspace;
  const uri = URI.parse(`slatwright-sample:/${round}.slat`);
  const document = LangiumDocumentFactory.fromString(`${SAMPLE}// ${round}`, uri);
  await DocumentBuilder.build([document]);
  const { job, layout } = workOut(shared, document, createLayoutMemo());
  checkJob(job);
  for (const run of layout.runs) checkRun(run, job);
  diffViews([], viewsOf(layout.runs, job.measure.value), 0, 1);
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((resume) => setTimeout(resume, milliseconds));
}
