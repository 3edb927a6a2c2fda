import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type OpenJob, openJob, textAfter } from '../../tests/jobs/index.ts';
import { inches } from '../units/index.ts';
import { builtPanels } from './as-built.ts';
import { builtWays, isAsPlanned } from './as-built-ways.ts';

const STOCK = `job { measure inches to 1/16" }
board slat { width 3-1/2"; thickness 3/4" }
post stake { along 3-1/2"; through 3-1/2" }
rail bar { width 3-1/2"; thickness 1-1/2" }
`;

// Twelve slats of 3-1/2 and eleven gaps of 1/2 are 47-1/2, from 2-1/2 to 50.
const level = (measured: string, fit = 'fit gaps 3/8" to 3/4"') =>
  openJob(`${STOCK}pattern rows { repeat slat; gap 1/2"; end anywhere; ${fit} }
run bank { length 10'; posts stake, 2 bays; height 50"; bottom 2-1/2"; slats on front face; fill rows }
${measured}
`);

// Three bays of 55-1/2 clear: 14 slats and 13 gaps of 1/2.
const upright = (measured: string, fit = 'gaps 3/8" to 3/4"', job = '') =>
  openJob(`${STOCK.replace(' }\n', `${job} }\n`)}pattern rows { repeat slat; gap 1/2"; end anywhere }
run bank { length 180-1/2"; posts stake, 3 bays; height 50"; bottom 2-1/2"; rails bar; flip upright; slats on front face; fill rows; fit ${fit} }
${measured}
`);

const waysOf = (opened: OpenJob) => builtWays(opened.run(), opened.job);

it('has nothing to say where nothing was measured, or all as planned', async () => {
  expect(waysOf(await level(''))).toEqual([]);
  const [same] = waysOf(await level('measured board slat { width 3-1/2", 3-1/2" }'));
  expect(same && isAsPlanned(same)).toBe(true);
});

it('spreads narrow boards over the gaps as by hand', async () => {
  const [found] = waysOf(await level('measured board slat { width 3-7/16" }'));
  // By hand: 12 times 1/16 over 11 gaps is 3/44 more each: 0.0682, within 1/8 and over 1/16.
  expect(found?.built).toMatchObject({ closes: true, within: true, limit: inches(1 / 8) });
  expect((found?.built?.gapChange ?? 0) / inches(1)).toBeCloseTo(12 / 16 / 11, 5);
  // At the gap as planned: 12 slats of 3-7/16 and 11 gaps of 1/2 are 46-3/4, the bottom 3/4 higher.
  const ends = found?.ways.find(({ choice }) => choice.kind === 'move-ends');
  expect(ends).toMatchObject({ gapChange: 0, edgeChange: inches(0.75), within: true });
  expect(ends?.choice.bottom).toBe(inches(3.25));
  // Builders move the ends before they spread.
  expect(found?.ways.map(({ choice }) => choice.kind).slice(0, 2)).toEqual(['move-ends', 'gaps']);
});

it('holds bays of their own widths against the plan and one another', async () => {
  const opened = await upright(
    'measured bank { bay 1 clear 55-1/2"; bay 2 clear 56-1/8"; bay 3 clear 55-3/8" }',
  );
  const [found] = waysOf(opened);
  // By hand, over 13 gaps: bay 2 takes 5/8 more, bay 3 1/8 less; between them 3/4.
  const gaps = found?.built?.panels.map(({ gap }) => gap / inches(1)) ?? [];
  expect(gaps).toEqual([
    expect.closeTo(0.5, 5),
    expect.closeTo(0.5 + 0.625 / 13, 5),
    expect.closeTo(0.5 - 0.125 / 13, 5),
  ]);
  expect((found?.built?.between ?? 0) / inches(1)).toBeCloseTo(0.75 / 13, 5);
  // Bay 1 shows the gap as planned, so that 1/16 counts; 0.048 and 0.058 are below it.
  expect(found?.built).toMatchObject({ limit: inches(1 / 16), within: true });
});

it('takes a difference for seen when neighbors are farther apart than a sixteenth', async () => {
  const opened = await upright(
    'measured bank { bay 2 clear 56-1/2"; bay 3 clear 55-1/4"; bay 1 clear 55-1/2" }',
  );
  const [found] = waysOf(opened);
  // By hand: 1-1/4 over 13 gaps is 0.096 between bays 2 and 3, 1.54 times a sixteenth.
  expect(found?.built?.within).toBe(false);
  expect(found?.built?.seen).toBeCloseTo(1.25 / 13 / (1 / 16), 3);
});

it('takes for seen what the job says is', async () => {
  const text = 'measured bank { bay 2 clear 56-1/2"; bay 3 clear 55-1/4"; bay 1 clear 55-1/2" }';
  const opened = await upright(text, undefined, '; threshold gaps-differ 1/8"');
  // By hand: 1-1/4 over 13 gaps is 0.096, under an eighth.
  expect(waysOf(opened)[0]?.built).toMatchObject({ limit: inches(1 / 8), within: true });
});

it('keeps gaps and shares what is left between the edges where that is little', async () => {
  const opened = await upright(
    'measured bank { bay 1 clear 55-7/8"; bay 2 clear 55-1/2"; bay 3 clear 55-5/8" }',
    'move ends',
  );
  const [found] = waysOf(opened);
  // By hand: 3/8 over two edges is 3/16, within 1/4.
  expect(found?.built).toMatchObject({ gapChange: 0, edgeChange: inches(3 / 16), within: true });
  expect(found?.ways[0]?.built).toBe(true);
});

it('says what no longer closes, and what would close it', async () => {
  const [found] = waysOf(await level('measured board slat { width 3-7/16" }', ''));
  expect(found?.built).toBeUndefined();
  expect(found?.ways.length).toBeGreaterThan(1);
  expect(found?.ways.every(({ closes }) => closes)).toBe(true);
});

it('leaves a run that goes on with the lines of another to that one', async () => {
  const { layout } =
    await openJob(`${STOCK}pattern rows { repeat slat; gap 1/2"; end anywhere; fit gaps 3/8" to 3/4" }
run bank { length 10'; posts stake, 2 bays; height 50"; bottom 2-1/2"; slats on front face; fill rows }
run more { length 10'; posts stake, 2 bays; height 54"; bottom 2" to 6"; slats on front face; lines as bank; placed at 0", 20' }
measured board slat { width 3-7/16" }
`);
  expect(layout.runs.map((run) => [run.spec.name, builtPanels(run).length])).toEqual([
    ['bank', 1],
    ['more', 0],
  ]);
});

it('builds what each way promises when its edit is made, whatever was measured', async () => {
  const clear = fc.integer({ min: 54 * 16, max: 57 * 16 });
  const width = fc.integer({ min: 53, max: 58 });
  const fit = fc.constantFrom('gaps 3/8" to 3/4"', 'move ends', 'rip last', 'trim at bottom');
  let tried = 0;
  await fc.assert(
    fc.asyncProperty(fc.tuple(clear, clear, clear), width, fit, async (clears, wide, how) => {
      const bays = clears.map((sixteenths, at) => `bay ${at + 1} clear ${sixteenths}/16"`).join('; ');
      const text = `measured board slat { width ${wide}/16" }\nmeasured bank { ${bays.replaceAll(/(\d+)\/16"/g, (_, n) => `${Math.floor(n / 16)} ${n % 16}/16"`)} }`;
      const opened: OpenJob = await upright(
        text.replace(/width (\d+)\/16"/, (_, n) => `width ${Math.floor(n / 16)} ${n % 16}/16"`),
        how,
      );
      const [found] = waysOf(opened);
      const ways = found?.ways.filter((way) => !way.built && way.closes) ?? [];
      for (const way of ways.slice(0, 3)) {
        tried++;
        const again = (await openJob(textAfter(opened.document, way.changes))).run();
        const now = builtPanels(again).map(({ built: { choice } }) => [
          choice?.count,
          choice?.gap,
          choice?.lead,
        ]);
        expect(now).toEqual(way.panels.map(({ choice }) => [choice?.count, choice?.gap, choice?.lead]));
      }
    }),
    { numRuns: 8 },
  );
  expect(tried).toBeGreaterThan(2);
});
