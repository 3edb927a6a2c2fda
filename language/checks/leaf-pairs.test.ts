import { expect, it } from 'vitest';
import { checkLayout } from './index.ts';
import { checked, fixed, screen } from './testing/checked.ts';

const MORE = `channel shallow { width 7/8"; thickness 1-3/8"; wall 1/8"; lengths 8' }
pattern wide { repeat slat; gap 3"; end anywhere; fit gaps 1" to 4" }
pattern stiff { repeat slat; gap 0.4"; end anywhere }
pattern airy { repeat slat; gap 3"; end anywhere; fit gaps 2-3/4" to 4" }
`;

/** The sound screen, 20 feet long, with a pair of leaves that states what it is filled with. */
const pair = (gate: string, code?: string) =>
  checked(
    `${screen(
      ['118-1/2"', "20'"],
      ['2 bays', "at most 6' clear"],
      ['run bank', `${MORE}run bank`],
    )}gate cart in bank { opening 80" from 75"; hinges on left; frame bar; ${gate} }\n`,
    code,
  );

it('holds gaps of leaves against each other by the pattern of the gate', async () => {
  // Upright, a wide leaf and a narrow one take unlike gaps.
  const { open } = await pair('leaves two, meeting gap 1/2", active leaf 44" wide; fill wide; flip upright');
  const told = checkLayout(open.layout, open.job).filter(({ code }) => code === 'gaps-differ');
  expect(told.map(({ at, args }) => [at.path, args.pattern, args.first, args.second, args.beside])).toEqual([
    ['Gate:cart/FillStatement', 'wide', 'gate cart (left leaf)', 'gate cart (right leaf)', 1],
  ]);
});

it('tells an open pattern of a pair at what the gate is filled with', async () => {
  const { findings } = await pair('leaves two; fill stiff', 'pattern-open');
  expect(findings.map(({ at, args }) => [at.path, args.pattern, args.gate])).toEqual([
    ['Gate:cart/FillStatement', 'stiff', 'cart (left leaf)'],
  ]);
});

it('tells faces of a pair that hardly overlap, once for leaves that mirror each other', async () => {
  const { findings } = await pair('leaves two; slats on alternate faces; fill airy', 'overlap-small');
  expect(findings.map(({ at }) => at.path)).toEqual(['Gate:cart/FillStatement']);
});

it('writes the end gap of a leaf into its gate', async () => {
  const found = await pair('leaves two; slats in channels shallow; fill wide', 'slat-slips-out');
  const [told] = found.findings;
  expect(found.findings).toHaveLength(1);
  expect(told?.fixes?.[0]?.changes).toMatchObject([{ path: 'Gate:cart', place: 'append' }]);
  const after = await fixed(found, told?.fixes?.[0]);
  expect(after.findings.filter(({ code }) => code === 'slat-slips-out')).toEqual([]);
});
