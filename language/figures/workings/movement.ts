import { jointGapOf, type RunLayout } from '../../layout/index.ts';
import { type FlatStock, facesOf, type Job } from '../../model/index.ts';
import {
  FIBER_SATURATION,
  LUMBER_SHRINKAGE,
  MATERIAL_CLASSES,
  type Published,
  UNNAMED_WOOD,
} from '../../standards/index.ts';
import { toInches } from '../../units/index.ts';
import { moistureMovement, thermalMovement } from '../formulas/index.ts';
import { slatJointsOf } from '../slat-joints.ts';
import type { Working } from '../working.ts';
import { amount, fromOf, inchesOf, input, step } from './amounts.ts';
import { stocksOf } from './slats.ts';

/** Between which a screen outdoors swings (common practice): percent of moisture, degrees Fahrenheit in the sun. */
const SEASONS = { moisture: [8, 18], temperature: [0, 130] } as const;

/** How a stock of slats moves from the day of fitting, in inches; positive is growth. */
export interface Movement {
  readonly stock: FlatStock;
  readonly of: 'gap' | 'end gap' | 'joint gap';
  /** The gap as built, at its widest and at its narrowest. */
  readonly gap: number;
  readonly narrowest: number;
  readonly widest: number;
  /** From a stated day; else over the whole swing. */
  readonly stated: boolean;
  readonly working: Working;
}

/** Wood across its width, against the gap; everything else along its length, against the end gap. */
export function movements(run: RunLayout, job: Job): readonly Movement[] {
  return stocksOf(run.spec.infill).flatMap((stock) => {
    const wood = (stock.material?.kind.value ?? 'wood') === 'wood';
    return (wood ? acrossGrain(run, job, stock) : alongSlat(run, job, stock)) ?? [];
  });
}

function acrossGrain(run: RunLayout, job: Job, stock: FlatStock): Movement | undefined {
  const gap = narrowestGap(run);
  if (gap === undefined) return undefined;
  const fitted = job.site.fitted?.moisture;
  const species = stock.material?.species?.value;
  const coefficient = species?.movement?.tangential ?? UNNAMED_WOOD.tangential;
  const [dry, wet] = SEASONS.moisture;
  const saturated = FIBER_SATURATION.percent;
  const from = Math.min(fitted?.value ?? dry, saturated);
  const driest = Math.min(dry, from);
  const wettest = Math.max(wet, from);
  const width = toInches(stock.width.value);
  const grows = moistureMovement(width, coefficient, from, wettest);
  const shrinks = moistureMovement(width, coefficient, from, driest);
  const narrowest = fitted ? gap - grows : gap - moistureMovement(width, coefficient, dry, wet);
  const widest = fitted ? gap - shrinks : gap + moistureMovement(width, coefficient, dry, wet);
  const basis: Published[] = [species?.movement ?? UNNAMED_WOOD, LUMBER_SHRINKAGE];
  return {
    stock,
    of: 'gap',
    gap,
    narrowest,
    widest,
    stated: fitted !== undefined,
    working: {
      code: 'moisture-movement',
      title: `Gaps as ${stock.name} swells and shrinks`,
      where: { origin: run.spec.infill.fill, label: `${run.spec.name}, ${stock.name}`, run: run.key },
      formula: 'Δ = b C (M2 - M1)',
      inputs: [
        input('width', 'b', inchesOf(stock.width.value), 'stated'),
        input(
          'change for each percent of moisture',
          'C',
          amount(coefficient, ''),
          species?.called ?? 'species not stated: as pine',
        ),
        input(
          'moisture on the day of fitting',
          'M1',
          fitted ? amount(fitted.value, '%') : 'not stated',
          fitted ? 'stated' : 'the whole swing is shown both ways',
        ),
        input('swing outdoors', 'M2', `${dry} to ${wet} %`, 'common practice'),
        input('gap as built', 'g', amount(gap, 'in'), 'as laid out, the narrowest'),
      ],
      steps: [
        step('at its wettest the gap is', amount(narrowest, 'in')),
        step('at its driest the gap is', amount(widest, 'in')),
      ],
      figure: amount(narrowest, 'in'),
      limit: { name: 'closed', is: 'at least', ...amount(0, 'in') },
      basis,
      notes: [
        'Flat-sawn boards; quarter-sawn ones move about half as much. Along the grain wood hardly moves.',
      ],
    },
  };
}

function alongSlat(run: RunLayout, job: Job, stock: FlatStock): Movement | undefined {
  const kind = stock.material?.kind.value;
  if (!kind || kind === 'wood') return undefined;
  const slats = run.pieces.filter((piece) => piece.role === 'slat' && piece.cut.stock === stock.name);
  const longest = Math.max(0, ...slats.map(({ cut }) => toInches(cut.longPoint)));
  if (longest === 0) return undefined;
  const { expansion, called } = MATERIAL_CLASSES[kind];
  const fitted = job.site.fitted?.temperature;
  const [cold, hot] = SEASONS.temperature;
  // The slat is taken to move both ways from its middle. Between posts each end has its gap; over a post two ends share one.
  const onFace = facesOf(run.spec.infill.mounting.value).length > 0 && !run.spec.infill.flip.upright;
  // Where none meets another, nothing is in its way.
  if (onFace && slatJointsOf(run).length === 0) return undefined;
  const gap = onFace ? toInches(jointGapOf(run.spec)) : 2 * toInches(run.spec.infill.endGap.value);
  const gapAt = (onFace ? run.spec.slatJoints?.gap : undefined)?.origin ?? run.spec.infill.endGap.origin;
  const from = fitted?.value ?? cold;
  const grows = thermalMovement(longest, expansion.value, from, Math.max(hot, from));
  const shrinks = thermalMovement(
    longest,
    expansion.value,
    fitted?.value ?? hot,
    Math.min(cold, fitted?.value ?? cold),
  );
  return {
    stock,
    of: onFace ? 'joint gap' : 'end gap',
    gap,
    narrowest: gap - grows,
    widest: gap - shrinks,
    stated: fitted !== undefined,
    working: {
      code: 'thermal-movement',
      title: `End gaps as ${stock.name} grows warm and cold`,
      where: {
        origin: gapAt,
        label: `${run.spec.name}, ${stock.name}`,
        run: run.key,
      },
      formula: 'ΔL = α L ΔT',
      inputs: [
        input('longest slat', 'L', amount(longest, 'in'), 'as laid out'),
        input('expansion', 'α', amount(expansion.value, '/°F'), called),
        input(
          'on the day of fitting',
          'T1',
          fitted ? amount(fitted.value, '°F') : 'not stated',
          fitted ? 'stated' : 'the whole swing is shown both ways',
        ),
        input('swing outdoors', 'T2', `${cold} to ${hot} °F`, 'common practice'),
        input(onFace ? 'joint gap' : 'both end gaps', '', amount(gap, 'in'), fromOf(gapAt)),
      ],
      steps: [step('it grows by', amount(grows, 'in')), step('it shrinks by', amount(-shrinks, 'in'))],
      figure: amount(gap - grows, 'in'),
      limit: { name: 'closed', is: 'at least', ...amount(0, 'in') },
      basis: [expansion],
      notes: ['Makers publish their own figures and gaps; theirs count.'],
    },
  };
}

/** Of the gaps between slats of one face, in inches. */
function narrowestGap(run: RunLayout): number | undefined {
  const upright = run.spec.infill.flip.upright;
  const sizes = run.openings
    .filter(({ gate, between }) => gate === undefined && between)
    .map((o) => toInches(upright ? o.x1 - o.x0 : o.z1 - o.z0));
  return sizes.length > 0 ? Math.min(...sizes) : undefined;
}
