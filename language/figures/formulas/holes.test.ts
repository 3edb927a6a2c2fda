import { expect, it } from 'vitest';
import { BAGS, CONCRETE_WASTE, METRIC_BAGS } from '../../standards/index.ts';
import { bagsFor, coverOf, coverOffMiddle, holeVolumes, mostOffMiddle } from './holes.ts';

const yieldOf = (pounds: number) => BAGS.find((bag) => bag.pounds === pounds)?.yields ?? 0;

it('fills a hole as a published example does', () => {
  // 10 in x 30 in around a 3-1/2 in post: 1.3635 - 0.2127 = 1.1509 ft3; with 10 % 1.266 ft3: 4 bags of 50 lb, 3 of 60 or 80.
  const { concrete } = holeVolumes(10, 30, 0, 3.5 ** 2);
  expect(holeVolumes(10, 30, 0, 0).concrete).toBeCloseTo(1.3635, 4);
  expect(concrete).toBeCloseTo(1.1509, 4);
  const ordered = concrete * (1 + CONCRETE_WASTE.value);
  expect(ordered).toBeCloseTo(1.266, 3);
  expect([50, 60, 80].map((pounds) => bagsFor(ordered, yieldOf(pounds)))).toEqual([4, 3, 3]);
});

it('fills a hole around a full 4 x 4', () => {
  // Hand-worked: 1.3635 less 16 x 30 / 1728 = 1.086 ft3, 2.41 bags of 60 lb.
  const { concrete } = holeVolumes(10, 30, 0, 16);
  expect(concrete).toBeCloseTo(1.086, 3);
  expect(concrete / yieldOf(60)).toBeCloseTo(2.41, 2);
  expect(bagsFor(concrete, yieldOf(60))).toBe(3);
});

it('fills a pier', () => {
  // 12 in x 2 ft 9 in: 2.16 ft3, printed 2.15; 3.6 bags of 80 lb, 4 to buy.
  const { concrete } = holeVolumes(12, 33, 0, 0);
  expect(concrete).toBeCloseTo(2.16, 2);
  expect(bagsFor(concrete, yieldOf(80))).toBe(4);
});

it('fills metric holes, by the hole and by the job', () => {
  // Hand-worked: (0.07069 - 0.0081) x 0.91 = 0.05695 m3, 6.15 bags of 20 kg; a larger one 0.11872 m3, 12.82. Two of each:
  // by the hole 7 + 7 + 13 + 13 = 40, by the job with 10 % 42.
  const m3 = (diameter: number, depth: number, area: number) =>
    holeVolumes(diameter / 0.0254, depth / 0.0254, 0, area / 0.0254 ** 2).concrete * 0.3048 ** 3;
  const [small, large] = [m3(0.3, 0.91, 0.09 * 0.09), m3(0.4, 1.05, 0.14 * 0.09)];
  expect([small, large]).toEqual([expect.closeTo(0.05695, 5), expect.closeTo(0.11872, 5)]);
  const bag = 1 / METRIC_BAGS.value;
  expect([small, large].map((volume) => bagsFor(volume, bag))).toEqual([7, 13]);
  expect(bagsFor(2 * (small + large) * (1 + CONCRETE_WASTE.value), bag)).toBe(42);
});

it('covers the corner of a post', () => {
  // By Pythagoras: half of 12 less half the diagonal of 3-1/2 square.
  expect(coverOf(12, 3.5, 3.5)).toBeCloseTo(6 - 3.5 / Math.SQRT2, 12);
});

it('finds the corner nearest the edge of the hole of a post that stands off its middle', () => {
  // By Pythagoras: 1.75 + 2.5 = 4.25 along, 1.75 across: sqrt(18.0625 + 3.0625) = 4.596; 6 less that is 1.404.
  expect(6 - coverOffMiddle(12, 3.5, 3.5, 2.5)).toBeCloseTo(4.596, 3);
  expect(coverOffMiddle(12, 3.5, 3.5, 2.5)).toBeCloseTo(1.404, 3);
  expect(coverOffMiddle(12, 5.5, 3.5, 0)).toBeCloseTo(coverOf(12, 5.5, 3.5), 12);
});

it('finds how far a post may stand off the middle and keep its cover', () => {
  // The other way round: sqrt(4.596^2 - 1.75^2) - 1.75 = 2.5.
  expect(mostOffMiddle(12, 3.5, 3.5, 1.404)).toBeCloseTo(2.5, 3);
  // sqrt(3.5^2 - 1.75^2) - 1.75 = 3.031 - 1.75 = 1.281; none where the hole is too narrow as it is.
  expect(mostOffMiddle(12, 3.5, 3.5, 2.5)).toBeCloseTo(1.281, 3);
  expect(mostOffMiddle(9, 3.5, 3.5, 2.5)).toBeLessThan(0);
  for (const [along, through] of [
    [3.5, 5.5],
    [5.5, 3.5],
  ] as const)
    expect(coverOffMiddle(14, along, through, mostOffMiddle(14, along, through, 2.5))).toBeCloseTo(2.5, 9);
});
