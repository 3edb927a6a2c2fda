import { expect, it } from 'vitest';
import { createLayoutMemo } from '../../language/layout/index.ts';
import { allJobs, openAll, replaceText } from './index.ts';

const { open } = openAll();

/** Opens a job twice with one memory; the answer is how many runs the second text had laid out. */
async function laidOutBy(path: string, before: string, after: string): Promise<number> {
  const memo = createLayoutMemo();
  await open(path, before, memo);
  const first = memo.laidOut;
  expect(first).toBeGreaterThan(0);
  await open(path, after, memo);
  return memo.laidOut - first;
}

it.each(allJobs)('$name: what is put above the runs lays out none', async ({ path, text }) => {
  const firstRun = text.search(/^run /m);
  expect(firstRun).toBeGreaterThan(-1);
  const above = (added: string) => `${text.slice(0, firstRun)}${added}\n${text.slice(firstRun)}`;
  expect(await laidOutBy(path, text, `\n\n${text}`)).toBe(0);
  expect(await laidOutBy(path, text, above('// Ask about the drain.'))).toBe(0);
  expect(await laidOutBy(path, text, above('board spare { width 4-3/4"; thickness 5/8" }'))).toBe(0);
  expect(await laidOutBy(path, text, above('pattern spare { repeat nothing-yet; gap 1/4" }'))).toBe(0);
});

/** Runs that go on with its slat lines, or close the offset from it over the height of its slats, are laid out with it. */
function followers(text: string, name: string): number {
  const goesOn = new RegExp(`^  (after ${name}, .*closed by|lines as ${name}$)`, 'm');
  return text.split(/^(?=run )/m).filter((block) => goesOn.test(block)).length;
}

it.each(allJobs)('$name: an edit of one run lays out that run only', async ({ path, text }) => {
  const names = [...text.matchAll(/^run ([\w-]+) \{$/gm)].map(([, name]) => name ?? '');
  expect(names.length).toBeGreaterThan(0);
  for (const name of names) {
    const head = `run ${name} {`;
    const start = text.indexOf(head);
    const own = text.slice(start, text.indexOf('\n}', start));
    const changed = own.replace(/bottom (\d+)/, (_, low: string) => `bottom ${Number(low) + 1}`);
    expect(changed).not.toBe(own);
    expect(await laidOutBy(path, text, replaceText(text, own, changed)), name).toBe(
      1 + followers(text, name),
    );
  }
});

it('lays out what uses a board whose width changes, and no other', async () => {
  const kitchen = allJobs.find(({ text }) => (text.match(/^run /gm) ?? []).length > 2);
  if (!kitchen) throw new Error('no job has three runs');
  const board =
    'board own-slat { width 4-1/2"; thickness 1" }\npattern own { repeat own-slat; gap 1/2"; end anywhere }';
  const [first] = /^ {2}fill .*$/m.exec(kitchen.text) ?? [];
  const text = `${board}\n${kitchen.text.replace(first ?? '', '  fill own')}`;
  expect(await laidOutBy(kitchen.path, text, text.replace('4-1/2"', '4-3/4"'))).toBe(1);
  expect(
    await laidOutBy(kitchen.path, text, text.replace('own { repeat', 'own { /* as planed */ repeat')),
  ).toBe(0);
});

it('lays out a run anew when its own gate changes', async () => {
  const gated = allJobs.find(({ text }) => /^gate /m.test(text));
  if (!gated) throw new Error('no job has a gate');
  const opening = /opening (\d+)/.exec(gated.text);
  const narrower = gated.text.replace(/opening \d+/, `opening ${Number(opening?.[1]) - 1}`);
  expect(await laidOutBy(gated.path, gated.text, narrower)).toBe(1);
});
