import { expect, it } from 'vitest';
import { inches } from '../units/index.ts';
import { jobOf, RUN, STOCK } from './testing/job-of.ts';

const site = async (...statements: string[]) => (await jobOf(`job { ${statements.join('; ')} }`)).site;

it('takes nothing for granted of a place it is told nothing of', async () => {
  expect(await site()).toEqual({});
});

it('reads wind by speed, exposure and standard, in either system', async () => {
  expect((await site('wind 115 mph, exposure B, by ASCE 7-16')).wind).toMatchObject({
    kind: 'speed',
    speed: 115,
    exposure: 'B',
    edition: 'ASCE 7-16',
    origin: { path: 'Job/WindStatement' },
  });
  // 0.447 04 m/s to the mile an hour.
  const metric = (await site('wind 50 m/s, exposure D, by ASCE 7-22')).wind;
  expect(metric?.kind === 'speed' && metric.speed).toBeCloseTo(50 / 0.44704, 9);
});

it('reads wind as a pressure', async () => {
  expect((await site('wind pressure 15 psf')).wind).toMatchObject({ kind: 'pressure', pressure: 15 });
  const metric = (await site('wind pressure 0.5 kPa')).wind;
  // 47.88026 Pa to the psf.
  expect(metric?.kind === 'pressure' && metric.pressure).toBeCloseTo(500 / 47.88026, 4);
});

it('reads soil, frost and the day of fitting', async () => {
  expect(await site('soil clay', 'frost 36"', 'fitted at 14 % moisture, 20 °C')).toMatchObject({
    soil: { value: 5 },
    frost: { value: inches(36) },
    fitted: { moisture: { value: 14 }, temperature: { value: 68 } },
  });
  expect(await site('soil class 3')).toMatchObject({ soil: { value: 3 } });
});

it('lets a run have a soil, a frost and holes of its own', async () => {
  const text = `run bank {${RUN} soil sand; hole 12" diameter, gravel 4"; slats on front face }`;
  const { runs } = await jobOf(`job { soil clay; frost 30" }\n${STOCK}\n${text}`);
  expect(runs[0]).toMatchObject({
    soil: { value: 4 },
    frost: { value: inches(30) },
    hole: { diameter: { value: inches(12) }, gravel: { value: inches(4), origin: { why: 'stated' } } },
  });
});

it.each([
  ['wind 115 psf, exposure B, by ASCE 7-16', 'amount-unclear'],
  ['wind 900 mph, exposure B, by ASCE 7-16', 'amount-unclear'],
  ['wind pressure 115 mph', 'amount-unclear'],
  ['wind 115 mph, exposure A, by ASCE 7-16', 'unknown-word'],
  ['wind 115 mph, exposure B, by ASCE 7-93', 'unknown-word'],
  ['soil sandy', 'unknown-word'],
  ['soil class 9', 'unknown-word'],
  ['fitted at 140 % moisture', 'impossible-size'],
  ['fitted at 20 mph', 'amount-unclear'],
])('tells what is wrong with `%s`', async (statement, code) => {
  expect((await jobOf(`job { ${statement} }`)).problems.map(({ code }) => code)).toEqual([code]);
});

it('reads materials by species, grade and their own values', async () => {
  const text = `material siberian { species larch; grade 1; bending 10 MPa; stiffness 12 GPa; density 590 kg/m3 }
board slat { width 4"; thickness 1"; made of siberian; wall 1/8" }`;
  const { stock } = await jobOf(text);
  expect(stock[0]).toMatchObject({
    wall: { value: inches(1 / 8) },
    material: { kind: { value: 'wood' }, species: { value: { word: 'larch' } }, grade: { value: 'No.1' } },
  });
  // 6 894.757 Pa to the psi, 16.018 46 kg/m3 to the lb/ft3.
  expect(stock[0]?.material?.bending?.value).toBeCloseTo(10e6 / 6894.757, 2);
  expect(stock[0]?.material?.stiffness?.value).toBeCloseTo(12e9 / 6894.757, 0);
  expect(stock[0]?.material?.density?.value).toBeCloseTo(590 / 16.01846, 4);
});
