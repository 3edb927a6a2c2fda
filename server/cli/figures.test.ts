import { expect, it } from 'vitest';
import { folderWith, runHere, SHED } from './testing/run-here.ts';

it('prints each calculation with formula, inputs, steps, figure, limit and what it rests on', async () => {
  const { code, out } = await runHere(folderWith({ 'shed.slat': SHED }), 'figures', 'shed.slat');
  expect(code).toBe(0);
  for (const part of [
    'side, wind: Wind pressure for screening: no wind is stated',
    'comes to 9.6 psf',
    'fb = P h / S',
    'by the formula = ',
    'rests on IBC, 1807.3.2.1, Eq. 18-1 (seen in the text itself)',
    'ask your local authority',
  ])
    expect(out).toContain(part);
  expect(out).not.toMatch(/NaN|undefined|\[object/);
});

it('prints the same as JSON, in the units of the job', async () => {
  const files = folderWith({ 'shed.slat': SHED.replace(/job[^{]*\{[^}]*\}/, 'job { measure mm to 1 mm }') });
  const { code, out } = await runHere(files, 'figures', 'shed.slat', '--json');
  expect(code).toBe(0);
  const { version, figures } = JSON.parse(out);
  expect(version).toBe(1);
  const wind = figures.find((one: { code: string }) => one.code === 'wind-pressure');
  // 9.6 psf x 47.88026 Pa.
  expect(wind.figure).toEqual({ value: expect.closeTo(0.45965, 5), unit: 'kPa' });
  expect(wind.limit).toBeNull();
  const post = figures.find((one: { code: string }) => one.code === 'post-bending');
  expect(post).toMatchObject({ keeps: expect.any(Boolean), limit: { is: 'at most', unit: 'MPa' } });
  for (const one of figures) {
    expect(one.inputs.length, one.title).toBeGreaterThan(0);
    expect(one.basis[0], one.title).toMatchObject({
      source: expect.any(String),
      confirmed: expect.any(String),
    });
  }
});

it('says which run it has no figures for', async () => {
  const broken = `${SHED}\nrun wing { length 3' }\n`;
  const { code, error } = await runHere(folderWith({ 'shed.slat': broken }), 'figures', 'shed.slat');
  expect(code).toBe(1);
  expect(error).toContain('run wing cannot be worked out');
});
