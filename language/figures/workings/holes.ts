import { backHalfKey, isBackHalf, type RunLayout } from '../../layout/index.ts';
import { type HoleSpec, isMetric, type Job } from '../../model/index.ts';
import { BAGS, CONCRETE_WASTE, COVER, HOLE_WIDTHS, METRIC_BAGS } from '../../standards/index.ts';
import { convert, type Ticks, toInches } from '../../units/index.ts';
import { boxOf } from '../box.ts';
import { bagsFor, coverOf, coverOffMiddle, holeVolumes, mostOffMiddle } from '../formulas/index.ts';
import type { Working } from '../working.ts';
import { amount, fromOf, inchesOf, input, step } from './amounts.ts';
import { footingLevel, heldByDeck } from './posts.ts';

/** The holes of a run: what goes into them, and how a post sits in one. */
export interface Holes {
  readonly count: number;
  /** Around the largest post, inches. */
  readonly cover: number;
  /** The hole over the widest side of the largest post. */
  readonly times: number;
  readonly widest: Ticks;
  /** In cubic feet: concrete with the allowance, and gravel. */
  readonly concrete: number;
  readonly gravel: number;
  readonly bag: ConcreteBag;
  /** How far every post may stand off the middle of its hole and keep its cover, inches; less than 0 where none does. */
  readonly off: number;
  readonly working: Working;
  readonly offWorking: Working;
}

/** A bag of concrete as it is sold where the job is measured: what it is called, and the cubic feet it yields. */
export interface ConcreteBag {
  readonly name: string;
  readonly yields: number;
}

const SIXTY_POUNDS = BAGS.find(({ pounds }) => pounds === 60);

function bagOf(job: Job): ConcreteBag {
  return isMetric(job.measure.value)
    ? { name: '20 kg', yields: convert({ value: 1 / METRIC_BAGS.value, unit: 'm3' }, 'ft3') }
    : { name: '60 lb', yields: SIXTY_POUNDS?.yields ?? 0 };
}

/** Undefined where no hole is stated. */
export function holesOf(run: RunLayout, job: Job): Holes | undefined {
  const { hole } = run.spec;
  const posts = run.pieces.filter((piece) => piece.role === 'post' && !isBackHalf(piece));
  const behind = new Map(run.pieces.filter(isBackHalf).map((piece) => [piece.key, piece]));
  if (!hole || posts.length === 0 || heldByDeck(run)) return undefined;
  const metric = isMetric(job.measure.value);
  const bag = bagOf(job);
  const diameter = toInches(hole.diameter.value);
  let off: { readonly most: number; readonly along: number; readonly through: number } | undefined;
  let [concrete, gravel, byHole, cover, times, widest] = [
    0,
    0,
    0,
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    0,
  ];
  for (const post of posts) {
    const half = behind.get(backHalfKey(post.key));
    const { low } = boxOf(post);
    const { high } = boxOf(half ?? post);
    const wood = toInches(post.cut.width) * toInches(post.cut.thickness) * (half ? 2 : 1);
    const [along, through] = [toInches(high[0] - low[0]), toInches(high[1] - low[1])];
    const depth = toInches(footingLevel(run, Math.round((low[0] + high[0]) / 2)) - low[2]);
    const volumes = holeVolumes(diameter, depth, toInches(hole.gravel.value), half ? wood : along * through);
    concrete += volumes.concrete;
    gravel += volumes.gravel;
    byHole += bagsFor(volumes.concrete, bag.yields);
    cover = Math.min(cover, coverOf(diameter, along, through));
    const most = mostOffMiddle(diameter, along, through, COVER.value);
    if (!off || most < off.most) off = { most, along, through };
    times = Math.min(times, diameter / Math.max(along, through));
    widest = Math.max(widest, high[0] - low[0], high[1] - low[1]);
  }
  if (!off) return undefined;
  const ordered = concrete * (1 + CONCRETE_WASTE.value);
  return {
    count: posts.length,
    cover,
    times,
    widest,
    concrete: ordered,
    gravel,
    bag,
    off: off.most,
    offWorking: offWorkingOf(run, hole, off),
    working: {
      code: 'holes',
      title: 'Concrete and gravel of the holes',
      where: { origin: hole.diameter.origin, label: `${run.spec.name}, holes`, run: run.key },
      formula: 'V = (π D² / 4 - post) d',
      inputs: [
        input('diameter', 'D', inchesOf(hole.diameter.value), fromOf(hole.diameter.origin)),
        input('gravel below the post', '', inchesOf(hole.gravel.value), fromOf(hole.gravel.origin)),
        input('holes', 'n', amount(posts.length, ''), 'posts of this run'),
        input('allowance', '', amount(100 * CONCRETE_WASTE.value, '%'), 'common practice'),
        input('a bag yields', '', amount(bag.yields, 'ft3'), `${bag.name}, printed on the bag`),
      ],
      steps: [
        step('concrete of all holes, posts taken off', amount(concrete, 'ft3')),
        step('gravel of all holes', amount(gravel, 'ft3')),
        step('with the allowance', amount(ordered, 'ft3')),
        step(`bags of ${bag.name}, rounded up at each hole, for the crew`, amount(byHole, '')),
        step(
          `bags of ${bag.name} for the job, with the allowance, rounded up once`,
          amount(bagsFor(ordered, bag.yields), ''),
        ),
        step('concrete around the corner of a post', amount(cover, 'in')),
      ],
      figure: amount(ordered, 'ft3'),
      basis: [CONCRETE_WASTE, HOLE_WIDTHS, COVER, metric || !SIXTY_POUNDS ? METRIC_BAGS : SIXTY_POUNDS],
      notes: [
        'Bags by the hole and by the job differ; order by the greater. Have buried lines marked before you dig.',
      ],
    },
  };
}

/** How far the post that has least room may stand off the middle of its hole. */
function offWorkingOf(
  run: RunLayout,
  hole: HoleSpec,
  { most, along, through }: { readonly most: number; readonly along: number; readonly through: number },
): Working {
  const diameter = toInches(hole.diameter.value);
  return {
    code: 'hole-cover',
    title: 'How far a post may stand off the middle of its hole',
    where: { origin: hole.diameter.origin, label: `${run.spec.name}, holes`, run: run.key },
    formula: 'e = √((D / 2 - c)² - (b / 2)²) - a / 2',
    inputs: [
      input('diameter', 'D', inchesOf(hole.diameter.value), fromOf(hole.diameter.origin)),
      input('post along the run', 'a', amount(along, 'in'), 'as laid out, the least room'),
      input('post through it', 'b', amount(through, 'in'), 'as laid out'),
      input('concrete around the corners', 'c', amount(COVER.value, 'in'), 'common practice'),
    ],
    steps: [
      step('concrete around a corner, in the middle', amount(coverOf(diameter, along, through), 'in')),
      step(
        'that of a post a half inch off, along the run or across it',
        amount(coverOffMiddle(diameter, along, through, 0.5), 'in'),
      ),
    ],
    figure: amount(Math.max(0, most), 'in'),
    basis: [COVER],
    notes: [
      most < 0
        ? 'The hole is too narrow as it is: not even in its middle does the post keep so much.'
        : 'Along the run or across it, whichever leaves less; the other way e is worked out with a and b changed about.',
    ],
  };
}
