import { expect, it, vi } from 'vitest';
import { BANK } from '../reckoning/testing/bank.ts';
import { openTexts } from '../testing/index.ts';

async function lenses(text: string) {
  const open = await openTexts({ 'a.slat': text });
  const ask = async () =>
    (await open.slat.lsp.CodeLensProvider?.provideCodeLens(open.document, open.params)) ?? [];
  const titles = async () => (await ask()).map(({ range, command }) => [range.start.line, command?.title]);
  /** Until the totals of the text as it stands are there. */
  const settled = () =>
    vi.waitFor(
      async () => {
        const all = await titles();
        expect(all.every(([, title]) => !String(title).includes('…'))).toBe(true);
        return all;
      },
      { timeout: 20_000 },
    );
  return { ...open, ask, titles, settled };
}

it('tells above the job and each run what they come to', async () => {
  const { settled, titles, ask } = await lenses(BANK);
  // At once there is a place for them, so that no line moves when they come.
  expect(await titles()).toEqual([
    [0, 'being worked out …'],
    [5, 'being worked out …'],
    [5, 'Look for better choices...'],
  ]);
  const [job, run, better] = await settled();
  expect(job?.[1]).toMatch(
    / boards? and 3 posts to buy, order \$[\d.]+ and more, price \$[\d.]+, proven cheapest$/,
  );
  expect(run?.[1]).toMatch(/^22 slats, \d+ boards and 3 posts for \$[\d.]+, 16' long, \d+(\.\d)? % open$/);
  expect(better).toEqual([5, 'Look for better choices...']);
  const commands = (await ask()).map(({ command }) => [command?.command, command?.arguments]);
  expect(commands).toEqual([
    ['slatwright.showTakeoff', ['file:///work/a.slat']],
    ['slatwright.showMaterials', ['file:///work/a.slat']],
    ['slatwright.findBetter', ['file:///work/a.slat', 'bank']],
  ]);
});

it('keeps what was known last through a change, marked, and then tells what is so now', async () => {
  const { settled, titles, change } = await lenses(BANK);
  const before = await settled();
  await change('a.slat', BANK.replace("length 16'", "length 24'"));
  const [, stale] = await titles();
  expect(stale?.[1]).toBe(`${before[1]?.[1]} …`);
  const [, after] = await settled();
  expect(after?.[1]).toMatch(/^22 slats, .* 24' long, /);
});

it('says of a run that cannot be built that it cannot, and nothing of a file without runs', async () => {
  // Three posts of 3-1/2" have no room in 8"; and without a length there is nothing to lay out.
  for (const faulty of ['length 8" over posts', '']) {
    const { settled } = await lenses(BANK.replace("length 16' over posts", faulty));
    expect((await settled())[1]?.[1], faulty).toBe('cannot be worked out as it stands');
  }
  expect(await (await lenses('job "Empty" { money USD }')).titles()).toEqual([]);
});

it('does without prices, and without lengths to buy', async () => {
  const plain = BANK.replace(/ \$[\d.]+ each/g, '').replace(/^quote.*$/m, '');
  const [job, run] = await (await lenses(plain)).settled();
  expect(job?.[1]).toMatch(/^\d+ boards and 3 posts to buy, proven to be the least$/);
  expect(run?.[1]).toMatch(/ % open$/);
  const [bare, bareRun] = await (await lenses(plain.replace(/ lengths [^}]+/g, ' '))).settled();
  expect(bare?.[1]).toBe('nothing to buy yet');
  expect(bareRun?.[1]).toMatch(/^22 slats, 16' long, [\d.]+ % open$/);
});
