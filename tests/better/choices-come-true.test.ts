import { expect, it } from 'vitest';
import { builtBy, figuresOf, searchBetter } from '../../language/takeoff/index.ts';
import { betterTask } from '../../server/work/index.ts';
import { randomJob } from '../fit-edits/random-jobs.ts';
import { allJobs, type OpenJob, openAll, openJobs, textAfter } from '../jobs/index.ts';

/** Few, so that many jobs are tried. */
const MOST = 32;

it.each(allJobs)(
  '$name: every better choice, written into the text, builds what it said',
  async ({ path }) => {
    const { open } = openAll();
    await choicesComeTrue(path, open);
  },
  60_000,
);

it('builds what it says in jobs made at random', async () => {
  const { open } = openJobs({});
  const made: string[] = [];
  for (let seed = 1; seed <= 12; seed++)
    made.push(
      ...(await choicesComeTrue('/made/side.slat', (path, text) => open(path, text ?? randomJob(seed).text))),
    );
  expect(made.length).toBeGreaterThan(12);
  for (const said of [/\d bays/, /^gap /, /spread the rest/])
    expect(made.some((one) => said.test(one))).toBe(true);
}, 60_000);

/** Writes every choice of a job's runs into its text; the answer is what they were called. */
async function choicesComeTrue(
  path: string,
  open: (path: string, text?: string) => Promise<OpenJob>,
): Promise<string[]> {
  const before = await open(path);
  const { document, job, services } = before;
  const texts = before.layout.runs.flatMap(({ spec: { name } }) => {
    const task = betterTask(services.shared, document, job, name);
    if (!task) return [];
    const search = searchBetter({ ...task, most: MOST });
    search.run(() => false);
    const found = search.found();
    return (found?.choices ?? []).map((choice) => ({
      name,
      choice,
      text: textAfter(document, choice.changes),
    }));
  });
  for (const { name, choice, text } of texts) {
    const where = `${name}: ${choice.title}\n${text}`;
    const after = await open(path, text);
    const run = after.run(name);
    expect(
      run.fits.every(({ chosen }) => chosen),
      where,
    ).toBe(true);
    expect(builtBy(run), where).toBe(choice.built);
    expect(figuresOf(run, after.layout, after.job), where).toEqual(choice.figures);
  }
  return texts.map(({ choice }) => choice.title);
}
