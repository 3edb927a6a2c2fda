import type { RunLayout } from '../../layout/index.ts';
import type { Job } from '../../model/index.ts';
import {
  EMBEDMENT,
  HOLE_WIDTHS,
  ISOLATED_POLE,
  soilOf,
  THIRD_OF_HEIGHT,
  THIRD_OF_WHOLE,
  WEAKEST_SOIL,
} from '../../standards/index.ts';
import { inches, type Ticks, toInches } from '../../units/index.ts';
import { boxOf } from '../box.ts';
import { bearingAtThird, embedmentDepth } from '../formulas/index.ts';
import type { Working } from '../working.ts';
import { amount, fromOf, inchesOf, input, step } from './amounts.ts';
import { heldByDeck, type PostLoad, postLoads } from './posts.ts';
import { oncePerRun } from './remember.ts';

/** How deep the post of a run stands that lacks the most, and how deep each rule would have it. */
export interface Embedded {
  readonly load: PostLoad;
  readonly depth: Ticks;
  /** Of the highest slat above grade at the post. */
  readonly above: Ticks;
  /** One third of the whole post: half of what is above ground. */
  readonly thirdOfWhole: Ticks;
  readonly thirdOfHeight: Ticks;
  readonly frost?: Ticks;
  /** By the formula, isolated posts. */
  readonly byFormula: Ticks;
  readonly soilStated: boolean;
  readonly soil: string;
  readonly working: Working;
}

/** The post that lacks the most against the formula; undefined for a run without posts of its own in the ground. */
export const embedment = oncePerRun(workOutDepth);

function workOutDepth(run: RunLayout, job: Job): Embedded | undefined {
  if (heldByDeck(run)) return undefined;
  const pieces = new Map(run.pieces.map((piece) => [piece.key, piece]));
  let worst: Embedded | undefined;
  for (const load of postLoads(run, job)) {
    const piece = pieces.get(load.mark.key);
    if (!piece) continue;
    const { low } = boxOf(piece);
    const found = embeddedOf(run, load, Math.round(load.ground) - low[2]);
    if (!worst || found.byFormula - found.depth > worst.byFormula - worst.depth) worst = found;
  }
  return worst;
}

function embeddedOf(run: RunLayout, load: PostLoad, depth: Ticks): Embedded {
  const { soil, frost, hole } = run.spec;
  const bearing = soilOf(soil?.value ?? WEAKEST_SOIL);
  const doubled = bearing.lateral * ISOLATED_POLE.value;
  const width = hole ? toInches(hole.diameter.value) : HOLE_WIDTHS.value * toInches(load.stock.along.value);
  const post = { load: load.force, arm: load.arm / 12, width: width / 12, bearing: doubled };
  const needed = embedmentDepth(post);
  const single = embedmentDepth({ ...post, bearing: bearing.lateral });
  // What stands above ground as the builder counts it: to the top of the slats.
  const top = Math.round(load.top - load.ground);
  const [whole, height] = [Math.round(top / 2), Math.round(top * THIRD_OF_HEIGHT.value)];
  return {
    load,
    depth,
    above: top,
    thirdOfWhole: whole,
    thirdOfHeight: height,
    ...(frost ? { frost: frost.value } : {}),
    byFormula: inches(needed * 12),
    soilStated: soil !== undefined,
    soil: bearing.material,
    working: {
      code: 'embedment',
      title: 'Depth of posts in the ground',
      where: {
        origin: run.embed.origin.why === 'stated' ? run.embed.origin : run.spec.post.origin,
        label: `${run.spec.name}, post ${load.mark.number}`,
        run: run.key,
        pieces: [load.mark.key],
      },
      formula: 'd = 0.5 A (1 + √(1 + 4.36 h / A)), A = 2.34 P / (S1 b), S1 at d / 3',
      inputs: [
        input('depth as built', '', inchesOf(depth), fromOf(run.embed.origin)),
        input('wind on the post', 'P', amount(load.force, 'lb'), load.wind.working.title),
        input('its arm above grade', 'h', amount(load.arm, 'in'), 'as laid out'),
        input(
          'width of the footing',
          'b',
          amount(width, 'in'),
          hole ? 'stated' : `not stated: ${HOLE_WIDTHS.value} times the post, common practice`,
        ),
        input(
          'soil',
          '',
          bearing.material,
          soil ? `class ${bearing.class}, stated` : 'not stated: the weakest class',
        ),
        input('lateral bearing by depth', '', amount(bearing.lateral, 'psf/ft'), 'IBC Table 1806.2'),
        input(
          'isolated post',
          '',
          amount(ISOLATED_POLE.value, ''),
          'IBC 1806.3.4: half an inch at grade does no harm',
        ),
      ],
      steps: [
        step('S1 at a third of the depth', amount(bearingAtThird(needed, doubled), 'psf')),
        step('by the formula', amount(needed * 12, 'in')),
        step('by the formula without the doubling', amount(single * 12, 'in')),
        step('one third of the whole post: half the height above ground', inchesOf(whole)),
        step('one third of the height above ground', inchesOf(height)),
        ...(frost ? [step('frost', inchesOf(frost.value))] : []),
      ],
      figure: inchesOf(depth),
      limit: { name: 'by the formula', is: 'at least', ...amount(needed * 12, 'in') },
      basis: [EMBEDMENT, bearing, ISOLATED_POLE, THIRD_OF_WHOLE],
      notes: [
        'Builders go by one third of the post and seldom by the formula, which asks for more; both are shown. Where a permit drawing is asked, the formula counts.',
        ...(frost ? [] : ['Frost is not stated: state `frost` with the depth your local authority names.']),
      ],
    },
  };
}
