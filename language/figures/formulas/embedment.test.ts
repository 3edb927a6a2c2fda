import { expect, it } from 'vitest';
import { ISOLATED_POLE, soilOf } from '../../standards/index.ts';
import { bearingAtThird, depthFromTrial, embedmentDepth, heldDepth } from './embedment.ts';

const CLASS_4 = soilOf(4).lateral;

it('sets a post of a fence as a published library of formulas does', () => {
  // Pinned example for IBC 1807.3: 200 lb at 4 ft, 0.5 ft wide, 150 psf/ft; 4.333 ft doubled, 5.739 ft not, 2.830 ft held.
  const post = { load: 200, arm: 4, width: 0.5, bearing: CLASS_4 };
  const doubled = { ...post, bearing: CLASS_4 * ISOLATED_POLE.value };
  expect(embedmentDepth(doubled)).toBeCloseTo(4.333, 3);
  expect(bearingAtThird(4.333, doubled.bearing)).toBeCloseTo(433.3, 1);
  expect(embedmentDepth(post)).toBeCloseTo(5.739, 3);
  expect(heldDepth(doubled)).toBeCloseTo(2.83, 3);
});

it('sets a large pier', () => {
  // Unit test of an open-source structural library (2006 IBC): 5 400 lb at 37.25 ft, 6 ft, 200 psf/ft: 11.83 ft; held 8.93 ft;
  // 9.58 ft wide (their tolerance 0.1) for a depth of 10 ft.
  const pier = { load: 5_400, arm: 37.25, width: 6, bearing: soilOf(3).lateral };
  expect(embedmentDepth(pier)).toBeCloseTo(11.83, 2);
  expect(heldDepth(pier)).toBeCloseTo(8.93, 2);
  expect(Math.abs(embedmentDepth({ ...pier, width: 9.58 }) - 10)).toBeLessThan(0.1);
});

it('takes a trial depth in SI as a published sheet does', () => {
  // IBC 2009, SI: 1.33 kN at 8.00 m, b = 0.849 m, 31.4 kPa per m, trial 1.55 m: S1 16.223 kPa, asks for 1.52 m.
  const post = { load: 1.33, arm: 8, width: 0.849, bearing: 31.4 };
  expect(bearingAtThird(1.55, 31.4)).toBeCloseTo(16.223, 3);
  expect(depthFromTrial(post, 1.55)).toBeCloseTo(1.52, 2);
  expect(embedmentDepth(post)).toBeCloseTo(1.531, 2);
});

it('takes a sign footing as a permit record does', () => {
  // 1 740 lb at 4.17 ft, 5.5 ft wide, class 4 doubled, trial 4 ft: S1 400 psf, asks for 3.97 ft.
  const footing = { load: 1_740, arm: 4.17, width: 5.5, bearing: 2 * CLASS_4 };
  expect(bearingAtThird(4, footing.bearing)).toBe(400);
  // Its A is printed 1.9 for 1.851; 2 %.
  expect(depthFromTrial(footing, 4) / 3.97).toBeCloseTo(1, 1);
});

it('sets posts of a sign as an engineering discussion does', () => {
  // 480 lb at 5 ft, 1.5 ft of concrete, 100 psf/ft not doubled: "almost 6.5 ft"; hand-converged 6.440 ft.
  const post = { load: 480, arm: 5, width: 1.5, bearing: soilOf(5).lateral };
  expect(embedmentDepth(post)).toBeCloseTo(6.44, 2);
  expect(embedmentDepth({ ...post, bearing: 200 })).toBeCloseTo(4.877, 2);
});

it('sets a pile in soil', () => {
  // A public library of formulas: 1 200 lb at 6 ft, 1 ft wide, 150 psf/ft: 9.70 ft.
  expect(embedmentDepth({ load: 1_200, arm: 6, width: 1, bearing: 150 })).toBeCloseTo(9.7, 2);
  expect(embedmentDepth({ load: 1_200, arm: 8, width: 1, bearing: 150 })).toBeCloseTo(10.205, 2);
});

it('finds a trial depth too little', () => {
  // 3 000 lb at 8 ft, 1 ft wide, 150 psf/ft times 1.33, trial 6 ft: A = 17.6 ft, asks for 23.99 ft.
  const post = { load: 3_000, arm: 8, width: 1, bearing: 150 * 1.33 };
  expect((2.34 * 3_000) / bearingAtThird(6, post.bearing)).toBeCloseTo(17.594, 2);
  expect(depthFromTrial(post, 6)).toBeCloseTo(23.99, 1);
});

it('answers nothing for no load, and goes deeper for more', () => {
  const post = { load: 0, arm: 4, width: 1, bearing: 150 };
  expect(embedmentDepth(post)).toBe(0);
  const depths = [50, 100, 500, 5_000].map((load) => embedmentDepth({ ...post, load }));
  expect(depths).toEqual([...depths].sort((a, b) => a - b));
});
