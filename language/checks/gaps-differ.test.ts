import { expect, it } from 'vitest';
import { checkLayout, messageOf } from './index.ts';
import { checked, screen } from './testing/checked.ts';

const found = async (measured: string, more = '', job = '') => {
  const base = screen(
    ['  fill rows\n', `  fill rows\n  flip upright; rails bar\n  fit gaps 1/4" to 3/4"\n`],
    ['to 1/16" }', `to 1/16"; ${job} }`],
  );
  const { open } = await checked(`${base}measured bank { ${measured} }\n${more}`);
  return checkLayout(open.layout, open.job).filter(({ code }) => code === 'gaps-differ');
};

// Upright, 55-1/2 takes 14 slats and 13 gaps of 1/2; 13 sixteenths more are a sixteenth a gap.
it('tells gaps of neighbors that differ by more than a sixteenth, and no less', async () => {
  expect(await found('bay 1 clear 55-1/2"; bay 2 clear 56-5/16"')).toEqual([]);
  const told = await found('bay 1 clear 55-1/2"; bay 2 clear 56-7/16"');
  expect(told.map(({ at, args }) => [at.path, args.first, args.second, args.beside])).toEqual([
    ['Measured:bank/MeasuredBay:2', 'bay 1', 'bay 2', 1],
  ]);
  expect(told[0]?.related?.map(({ at }) => at.path)).toEqual(['Measured:bank/MeasuredBay:1']);
  expect(await found('bay 1 clear 55-1/2"; bay 2 clear 56-7/16"', '', 'threshold gaps-differ 3/32"')).toEqual(
    [],
  );
});

it('tells panels of one run farther apart, over twice that', async () => {
  const three = (last: string) =>
    checked(
      `${screen(
        ['118-1/2"', '180-1/2"'],
        ['2 bays', '3 bays'],
        ['  fill rows\n', `  fill rows\n  flip upright; rails bar\n  fit gaps 1/4" to 3/4"\n`],
      )}measured bank { bay 1 clear 54-5/8"; bay 2 clear 55-1/2"; bay 3 clear ${last} }\n`,
    ).then(({ open }) => checkLayout(open.layout, open.job).filter(({ code }) => code === 'gaps-differ'));
  // By hand: 7/8 over 13 gaps is 0.067, over a sixteenth: neighbors are told first.
  expect((await three('55-1/2"')).map(({ args }) => args.beside)).toEqual([1]);
  const narrow = ['to 1/16" }', 'to 1/16"; threshold gaps-differ 0.05" }'] as const;
  const upright = [
    '  fill rows\n',
    `  fill rows\n  flip upright; rails bar\n  fit gaps 1/4" to 3/4"\n`,
  ] as const;
  const far = await checked(
    `${screen(['118-1/2"', '180-1/2"'], ['2 bays', '3 bays'], narrow, upright)}measured bank { bay 1 clear 54-15/16"; bay 2 clear 55-1/2"; bay 3 clear 56-1/8" }\n`,
  );
  const told = ({ open }: typeof far) =>
    checkLayout(open.layout, open.job).filter(({ code }) => code === 'gaps-differ');
  // By hand: 9/16 and 5/8 over 13 are 0.043 and 0.048, each under 0.05; together 0.0913, under 0.1.
  expect(told(far)).toEqual([]);
  // By hand: 5/8 over 13 is 0.048, three times that 0.144: over 0.1 between the first bay and the last.
  const four = await checked(
    `${screen(['118-1/2"', '242-1/2"'], ['2 bays', '4 bays'], narrow, upright)}measured bank { bay 1 clear 54-15/16"; bay 2 clear 55-9/16"; bay 3 clear 56-3/16"; bay 4 clear 56-13/16" }\n`,
  );
  const [same, ...more] = told(four);
  expect(more).toEqual([]);
  expect([same?.at.path, same?.args.first, same?.args.second, same?.args.beside]).toEqual([
    'Measured:bank/MeasuredBay:4',
    'bay 1',
    'bay 4',
    0,
  ]);
  expect(same && messageOf(same)).toContain('in bay 1 and 19/32" in bay 4: over 3/32" is seen');
});

it('tells upright patterns of two runs that meet at a post, each with its run', async () => {
  const base = screen(['  fill rows\n', `  fill rows\n  flip upright; rails bar\n  fit gaps 1/4" to 3/4"\n`]);
  const meeting = async (length: string) => {
    const { open } = await checked(
      `${base}run brook {\n  after bank turn 90\n  length ${length}; posts stake, 2 bays; height 50"; bottom 2-1/2"\n  slats on front face; fill rows; flip upright; rails bar; fit gaps 1/4" to 3/4"\n}\n`,
    );
    return checkLayout(open.layout, open.job).filter(({ code }) => code === 'gaps-differ');
  };
  expect(await meeting('118-1/2"')).toEqual([]);
  const [told, ...more] = await meeting('122-1/2"');
  expect(more).toEqual([]);
  expect([told?.args.first, told?.args.second, told?.args.beside]).toEqual([
    'bay 2 of bank',
    'bay 1 of brook',
    1,
  ]);
});
