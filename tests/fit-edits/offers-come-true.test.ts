import { expect, it } from 'vitest';
import type { FitChoice, FitResult } from '../../language/layout/index.ts';
import { allJobs, type OpenJob, openAll, openJobs, textAfter } from '../jobs/index.ts';
import { randomJob } from './random-jobs.ts';

const RANDOM_JOBS = 60;

it.each(allJobs)(
  '$name: every remedy offered, written into the text, builds what it said',
  async ({ path }) => {
    const { open } = openAll();
    // Where every pattern closes in one way only, as lines that follow another run do, nothing is offered.
    const { layout } = await open(path);
    const some = layout.runs.some(({ fits }) => fits.some(({ choices }) => choices.length > 0));
    expect((await offersComeTrue(path, open)).length > 0).toBe(some);
  },
);

it('builds what it offers in jobs made at random', async () => {
  const { open } = openJobs({});
  const offers: string[] = [];
  for (let seed = 1; seed <= RANDOM_JOBS; seed++) {
    offers.push(
      ...(await offersComeTrue('/made/side.slat', (path, text) => open(path, text ?? randomJob(seed).text))),
    );
  }
  expect(offers.length).toBeGreaterThan(2 * RANDOM_JOBS);
  expect([...new Set(offers)].sort()).toEqual([
    'change-width',
    'gaps',
    'move-ends',
    'rip-last',
    'short-repeat',
    'trim',
  ]);
}, 60_000);

it('builds what it offers for slats by turns on both faces', async () => {
  const { open } = openJobs({});
  const offers: string[] = [];
  for (let seed = 1; seed <= RANDOM_JOBS / 2; seed++) {
    const made = randomJob(seed)
      .text.replace(/repeat .*/, 'repeat wide')
      .replace(/slats on .*|slats between .*/, 'slats on alternate faces');
    const text = made.replace(/space = [^)]*\) \{/, `space = ${2 + (seed % 5) / 2}") {`);
    offers.push(...(await offersComeTrue('/made/side.slat', (path, changed) => open(path, changed ?? text))));
  }
  expect(offers).toContain('gaps');
  expect(offers).toContain('move-ends');
}, 60_000);

/** Tries every offer of a job; the answer is of what kind they were. */
async function offersComeTrue(
  path: string,
  open: (path: string, text?: string) => Promise<OpenJob>,
): Promise<string[]> {
  const texts: { run: string; fit: FitResult; choice: FitChoice; text: string }[] = [];
  const { document, layout } = await open(path);
  for (const run of layout.runs) {
    for (const fit of run.fits) {
      for (const choice of fit.choices) {
        texts.push({ run: run.spec.name, fit, choice, text: textAfter(document, choice.changes) });
      }
    }
  }
  for (const { run, fit, choice, text } of texts) {
    const where = `${run} ${fit.gate ?? fit.bays.join()} ${choice.kind}\n${text}`;
    expect(choice.changes.length, where).toBeGreaterThan(0);
    const after = await open(path, text);
    expect(
      after.findings.filter(({ severity }) => severity === 'error').map(({ message }) => message),
      where,
    ).toEqual([]);
    const [bay] = fit.bays;
    const again = after.run(run).fits.find((one) => one.gate === fit.gate && one.bays.includes(bay ?? -1));
    expect(figures(again?.chosen), where).toEqual(figures(choice));
  }
  return texts.map(({ choice }) => choice.kind);
}

/** What is built, however it was come by. */
function figures(choice: FitChoice | undefined) {
  return (
    choice && {
      count: choice.count,
      gap: choice.gap,
      lead: choice.lead,
      tail: choice.tail,
      width: choice.width,
      bottom: choice.bottom,
      height: choice.height,
    }
  );
}
