import { describe, expect, it } from 'vitest';
import { openJob } from '../../../tests/jobs/index.ts';
import { inches, toInches } from '../../units/index.ts';
import { keepsWithin } from '../working.ts';
import { workingLines } from '../working-lines.ts';
import { workingsOf } from '../workings.ts';
import {
  embedment,
  gateFigures,
  holesOf,
  largestSpan,
  movements,
  postBendings,
  slatFigures,
  solidityOf,
  windOn,
} from './index.ts';

const SITE = 'wind 115 mph, exposure B, by ASCE 7-16; soil class 4';

/** Six feet high to the ground, 24 ft long, posts 6 ft on center, as good as closed. */
function text(site = SITE, changes: readonly (readonly [string, string])[] = []): string {
  const whole = `job "Long side" { measure inches to 1/16"; ${site} }
material pine { species southern-pine }
board plank { width 5-15/16"; thickness 1"; made of pine; lengths 16'; span at most 8' }
post stake { along 3-1/2"; through 3-1/2"; made of pine; lengths 16' }
rail bar { width 3-1/2"; thickness 1-1/2"; made of pine }
pattern rows { repeat plank; gap 1/16"; end anywhere; fit gaps 0" to 1/8" }
run side {
  length 291-1/2"
  posts stake, 4 bays
  height 72"; bottom 0"
  hole 12" diameter
  slats on front face; joints at every post
  fill rows
}
`;
  return changes.reduce((held, [from, to]) => {
    if (!held.includes(from)) throw new Error(`no ${from}`);
    return held.replace(from, to);
  }, whole);
}

async function opened(source = text()) {
  const { job, layout } = await openJob(source);
  const run = layout.runs[0];
  if (!run) throw new Error('no run');
  return { job, layout, run };
}

describe('a closed screen on the ground', () => {
  // Hand-worked with the coefficients of ASCE 7-16: q = 0.00256 Kz 0.85 115^2; B/s = 4, Cf 1.35, G 0.85. By the rounded Kz
  // of the table, 0.57, p = 18.823 psf and 11.294 psf at allowable stress; a post with 6 ft takes 406.57 lb at 3.3 ft. By the
  // formula of the table Kz is 0.5747, 0.8 % more.
  it('takes 11.3 psf', async () => {
    const { run, job } = await opened();
    const { pressure, rise, solidity } = windOn(run, job);
    expect(solidity).toBeGreaterThan(0.98);
    expect(pressure / (11.294 * (0.5747 / 0.57))).toBeCloseTo(1, 2);
    expect(rise).toBe(0.05);
  });

  it('bends a post by 1 342 ft-lb, which a 4x4 of southern pine does not bear', async () => {
    const { run, job } = await opened();
    const [bending] = postBendings(run, job);
    const { load, used = 0, clearThatDoes = 0 } = bending ?? {};
    if (!load) throw new Error('no post');
    expect(toInches(load.tributary)).toBeCloseTo(72, 0);
    expect(load.arm).toBeCloseTo(39.6, 1);
    expect((load.force * load.arm) / 12 / (1341.7 * (0.5747 / 0.57))).toBeCloseTo(1, 2);
    // 1 760 psi x 7.1458 in3 / 12 = 1 048 ft-lb (NDS Supplement 4B, wet, wind).
    expect(used / ((1341.7 * (0.5747 / 0.57)) / 1048)).toBeCloseTo(1, 1);
    // The spacing that just does, put in its place, just does.
    const { run: closer, job: same } = await opened(
      text(SITE, [
        ['posts stake, 4 bays', `posts stake, at most ${Math.floor(toInches(clearThatDoes))}" clear`],
      ]),
    );
    expect(postBendings(closer, same)[0]?.used).toBeLessThanOrEqual(1);
  });

  it('asks for posts 4.2 ft deep in sand, 12 in across', async () => {
    const { run, job } = await opened();
    const found = embedment(run, job);
    // Hand-worked: 406.57 lb at 3.3 ft, 1 ft, 150 psf/ft doubled: 4.202 ft.
    expect(toInches(found?.byFormula ?? 0) / 12).toBeCloseTo(4.21, 1);
    expect(found?.soilStated).toBe(true);
    expect([found?.thirdOfWhole, found?.thirdOfHeight]).toEqual([inches(36), inches(24)]);
  });

  it('is told of with every input, its source and its limit', async () => {
    const { layout, job } = await opened();
    const workings = workingsOf(layout, job);
    const codes = new Set(workings.map(({ code }) => code));
    for (const code of [
      'wind-pressure',
      'slat-bending',
      'slat-deflection',
      'slat-sag',
      'moisture-movement',
      'post-bending',
      'embedment',
      'holes',
    ])
      expect(codes).toContain(code);
    for (const working of workings) {
      expect(working.basis.length, working.code).toBeGreaterThan(0);
      expect(Number.isFinite(working.figure.value), working.code).toBe(true);
      for (const system of ['imperial', 'metric'] as const)
        expect(workingLines(working, system).join('\n')).not.toMatch(/NaN|undefined|Infinity|\[object/);
    }
    expect(workings.filter((working) => keepsWithin(working) === false).map(({ code }) => code)).toEqual(
      expect.arrayContaining(['post-bending', 'embedment']),
    );
  });
});

it('moves the right way: wider gaps, closer posts, a lower screen, more wind', async () => {
  const used = async (source: string) => {
    const { run, job } = await opened(source);
    return postBendings(run, job)[0]?.used ?? 0;
  };
  const base = await used(text());
  const open: readonly [string, string][] = [
    ['width 5-15/16"', 'width 3"'],
    ['gap 1/16"', 'gap 3"'],
    ['fit gaps 0" to 1/8"', 'fit gaps 2" to 4"'],
  ];
  expect(await used(text(SITE, open))).toBeLessThan(base);
  expect(await used(text(SITE, [['4 bays', '5 bays']]))).toBeLessThan(base);
  expect(await used(text(SITE, [['height 72"', 'height 60"']]))).toBeLessThan(base);
  expect(await used(text('wind 130 mph, exposure B, by ASCE 7-16'))).toBeGreaterThan(base);
  expect(await used(text('wind 115 mph, exposure C, by ASCE 7-16'))).toBeGreaterThan(base);
});

it('guesses no wind: it takes 0.6 x 16 psf and says what it is', async () => {
  const { run, job } = await opened(text(''));
  const { pressure, stated, working } = windOn(run, job);
  expect(pressure).toBeCloseTo(9.6, 9);
  expect(stated).toBe(false);
  expect(working.title).toContain('no wind is stated');
  expect(working.notes[0]).toContain('no forecast');
});

it('takes a stated pressure as it is, in either system', async () => {
  const { run, job } = await opened(text('wind pressure 0.5 kPa'));
  expect(windOn(run, job).pressure).toBeCloseTo(500 / 47.88026, 4);
});

it('never falls under the least pressure of the standard, and takes an old speed for nominal', async () => {
  const weak = await opened(text('wind 60 mph, exposure B, by ASCE 7-16'));
  expect(windOn(weak.run, weak.job).pressure).toBeCloseTo(9.6, 9);
  // ASCE 7-05 speeds are nominal: 90 mph there is about 115 sqrt 0.6 = 89 mph.
  const nominal = await opened(text('wind 89.08 mph, exposure B, by ASCE 7-05'));
  const { run, job } = await opened();
  expect(windOn(nominal.run, nominal.job).pressure).toBeCloseTo(windOn(run, job).pressure, 1);
});

it('reckons a screen half open by its closed area', async () => {
  const open: readonly [string, string][] = [
    ['width 5-15/16"', 'width 3"'],
    ['gap 1/16"', 'gap 3"'],
    ['fit gaps 0" to 1/8"', 'fit gaps 2" to 4"'],
  ];
  const { run, job } = await opened(text(SITE, open));
  const wind = windOn(run, job);
  const solidity = solidityOf(run);
  expect(solidity).toBeGreaterThan(0.48);
  expect(solidity).toBeLessThan(0.6);
  // Hand-worked: q G 1.6 = 22.308 psf on the closed area at Kz 0.57, 0.6 of it in service; over the floor.
  expect(wind.onSlats / (0.6 * 22.308 * (0.5747 / 0.57))).toBeCloseTo(1, 2);
  expect(wind.pressure).toBeCloseTo(wind.onSlats * solidity, 9);
});

it('bends slats as the rule of 72 times the thickness has it', async () => {
  // The rule: 15 psf, L/180, E 1.1 million psi: L = 72 t (5 w L^4 / 384 E I).
  const { job } = await opened(`job "x" { }\nmaterial soft { stiffness 1100000 psi }
board slat { width 3-1/2"; thickness 3/4"; made of soft }\n${text('').replace(/^job.*\n/, '')}`);
  const slat = job.stock.find(({ name }) => name === 'slat');
  if (slat?.kind !== 'board') throw new Error('no slat');
  expect(largestSpan(slat, 15, 180).span / (72 * 0.75)).toBeCloseTo(1, 1);
});

it('finds deflection, and sag of a narrow slat in the long run', async () => {
  const narrow: readonly [string, string][] = [
    [
      'material pine { species southern-pine }',
      'material pine { species western-redcedar; stiffness 1110000 psi; density 23 lb/ft3 }',
    ],
    ['width 5-15/16"; thickness 1"', 'width 1-1/2"; thickness 3/4"'],
    ['fit gaps 0" to 1/8"', 'fit gaps 0" to 1/2"'],
  ];
  const { run, job } = await opened(text('wind pressure 15 psf', narrow));
  const [slat] = slatFigures(run, job);
  if (!slat) throw new Error('no slat');
  const span = toInches(slat.span);
  const { onSlats } = windOn(run, job);
  // By hand: 5 p L^4 12 / (384 E t^3).
  expect(slat.deflection.figure.value).toBeCloseTo(
    (60 * (onSlats / 144) * span ** 4) / (384 * 1_110_000 * 0.75 ** 3),
    6,
  );
  // 5 w L^4 / 384 E I with 1.5 times the weight and twice the sag.
  const weight = (1.5 * 23 * 1.5 * 0.75) / 1728;
  expect(slat.sag?.figure.value).toBeCloseTo(
    (2 * 5 * weight * span ** 4) / (384 * 1_110_000 * ((0.75 * 1.5 ** 3) / 12)),
    6,
  );
});

it('holds figures to the limits that the job sets', async () => {
  const usual = await opened();
  const [before] = slatFigures(usual.run, usual.job);
  const strict = await opened(text(`${SITE}; threshold slat-bends 240 times`));
  const [after] = slatFigures(strict.run, strict.job);
  expect([before?.deflection.limit?.name, after?.deflection.limit?.name]).toEqual([
    'L/120, common practice',
    'L/240, the job',
  ]);
  expect(after?.deflection.limit?.value).toBeCloseTo((before?.deflection.limit?.value ?? 0) / 2, 9);
  const off = `${text(`${SITE}; threshold post-off-line 1/2"`)}measured side { post 3 off 1/4" toward front }\n`;
  const line = await opened(off);
  const found = workingsOf(line.layout, line.job).find(({ code }) => code === 'post-line');
  expect(found?.limit?.value).toBe(0.5);
});

it('swells and shrinks gaps from the day of fitting', async () => {
  const { run, job } = await opened(text(`${SITE}; fitted at 18 % moisture`));
  const [movement] = movements(run, job);
  // Southern pine, 0.00265 for each percent (Wood Handbook Table 13-5): 5.9375 x 0.00265 x 10 from 18 to 8 %.
  expect((movement?.widest ?? 0) - (movement?.gap ?? 0)).toBeCloseTo(5.9375 * 0.00265 * 10, 6);
  expect(movement?.narrowest).toBeCloseTo(movement?.gap ?? 0, 9);
});

it('sees no joint where slats on a face lie in one bay alone', async () => {
  const metal = (length: string, bays: string) =>
    opened(
      `job { measure inches to 1/16"; fitted at 40 °F }
material alloy { kind aluminum }
board blade { width 4"; thickness 1"; wall 1/16"; made of alloy }
post stake { along 3-1/2"; through 3-1/2" }
pattern rows { repeat blade; gap 1/2"; end anywhere; fit gaps 1/4" to 1" }
run side { length ${length}; posts stake, ${bays}; height 5'; bottom 2"; slats on front face; joints at every post; fill rows }
`,
    );
  const one = await metal("6'", '1 bays');
  expect(movements(one.run, one.job)).toEqual([]);
  const two = await metal("12'", '2 bays');
  expect(movements(two.run, two.job).map(({ of }) => of)).toEqual(['joint gap']);
});

it('fills its holes', async () => {
  const { run, job } = await opened();
  // Five holes of 12 in around 3-1/2 in posts, 36 in deep: (113.097 - 12.25) x 36 x 5 / 1728 = 10.505 ft3, with 10 % 11.556.
  expect(holesOf(run, job)?.working.figure.value).toBeCloseTo(11.556, 2);
  expect(holesOf(run, job)?.cover).toBeCloseTo(3.525, 3);
});

it('weighs a gate and counts its hinges', async () => {
  const gate = `gate wicket in side { opening 40" from 75"; hinges on left; frame bar; slats on front face; flip upright; brace none }\n`;
  const { run, job } = await opened(text(SITE, [['4 bays', '5 bays']]) + gate);
  const [figures] = gateFigures(run, job);
  if (!figures) throw new Error('no gate');
  const { leaf, dry, wet, hinges, workings } = figures;
  // Southern pine: 0.51 x 62.4 x 1.12 = 35.64 lb/ft3; slats over the whole leaf 1 in thick, stiles, two rails.
  const [width, height] = [toInches(leaf.width), toInches(leaf.height)];
  const slats = run.pieces.filter(({ role, gate: of }) => role === 'slat' && of === 'wicket');
  const faces = slats.reduce((sum, { cut }) => sum + toInches(cut.width) * toInches(cut.longPoint), 0);
  const frame = 3.5 * 1.5 * (2 * height + 2 * (width - 7));
  expect(dry).toBeCloseTo(((faces + frame) * 35.643) / 1728, 0);
  expect(wet).toBeCloseTo(1.5 * dry, 9);
  expect(hinges).toBe(3);
  // Moments about the bottom hinge: W b/2 over what is between hinges, 6 and 10 in from the ends.
  expect(workings[0]?.figure.value).toBeCloseTo((wet * width) / 2 / (height - 16), 6);
});
