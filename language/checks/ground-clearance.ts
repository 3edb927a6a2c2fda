import { aboveGround, type Bay, bottomEdge, type RunLayout } from '../layout/index.ts';
import { formatLength, inches, type Measure, mm, spellLength, type Ticks } from '../units/index.ts';
import { closingFixes } from './closing-fixes.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding, Fix } from './finding.ts';
import { replaceAt } from './written-change.ts';

/** A bay's lowest edge too near the ground, anywhere along the bay. */
export const clearanceLow: LimitedRunCheck = {
  kind: {
    code: 'clearance-low',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('2" (50 mm) under slats, so that they stay dry; 1" (25 mm) under a gate'),
    threshold: {
      is: 'length',
      imperial: inches(2),
      metric: mm(50),
      says: 'least clearance under slats; half of it under a gate',
    },
    message: (a) =>
      `Bay ${a.bay} comes within ${a.clearance} of the ground; ${a.limit} is usual. Raise the bottom, or take the ground down.`,
  },
  check: (run, job) => {
    const measure = job.measure.value;
    const least = thresholdOf(job, clearanceLow.kind);
    // A kick board is set near the ground on purpose, and there to be renewed.
    const kicked = new Set(run.pieces.flatMap(({ role, bay }) => (role === 'kick' ? [bay] : [])));
    return told(run, measure, 'clearance-low', ({ least: clearance }, bay) => {
      const limit = kicked.has(bay.number) ? 0 : bay.gate !== undefined ? least / 2 : least;
      return { clearance, limit, over: limit - clearance };
    });
  },
};

/** A gap under a bay that small animals get through and that looks unfinished. */
export const clearanceHigh: LimitedRunCheck = {
  kind: {
    code: 'clearance-high',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('no more than 6" (150 mm) under slats, and 4" (100 mm) where pets are kept in'),
    threshold: {
      is: 'length',
      imperial: inches(6),
      metric: mm(150),
      says: 'greatest clearance under slats',
    },
    message: (a) =>
      `Under bay ${a.bay} there is a gap of up to ${a.clearance}; more than ${a.limit} looks unfinished, and pets get through smaller ones. ` +
      'Lower the bottom, let the screen follow the ground another way with `slope`, or close the gap with a kick board.',
  },
  check: (run, job) => {
    const measure = job.measure.value;
    const limit = thresholdOf(job, clearanceHigh.kind);
    const judge: Judge = ({ most }) => ({ clearance: most, limit, over: most - limit });
    return told(run, measure, 'clearance-high', judge).map((finding) => ({
      ...finding,
      moreFixes: () => closingFixes(run, job, (other) => !worst(other, judge)),
    }));
  },
};

type Clearance = { readonly least: Ticks; readonly most: Ticks };
type Judged = { clearance: Ticks; limit: Ticks; over: Ticks };

type Judge = (clearance: Clearance, bay: Bay) => Judged;

/** The bay that is worst, if any is over: how far its lowest edge is above the ground anywhere along it is judged. */
function worst(run: RunLayout, judge: Judge): (Judged & { readonly bay: Bay }) | undefined {
  let found: (Judged & { bay: Bay }) | undefined;
  for (const bay of run.bays) {
    const edge = bottomEdge(run, bay.number);
    if (!edge) continue;
    const judged = judge(aboveGround(run, bay, edge), bay);
    // Less than half a mark of the tape is not seen, and would be told as the limit itself.
    const seen = judged.over >= run.spec.measure.step / 2;
    if (seen && (!found || judged.over > found.over)) found = { ...judged, bay };
  }
  return found;
}

function told(run: RunLayout, measure: Measure, code: string, judge: Judge): readonly Finding[] {
  const found = worst(run, judge);
  if (!found) return [];
  const args = {
    bay: found.bay.number,
    clearance: formatLength(found.clearance, measure),
    limit: formatLength(found.limit, measure),
  };
  const { bottom, ground } = run.spec;
  const fixes = found.bay.gate === undefined ? bottomAt(run, found.limit, code === 'clearance-low') : [];
  return [{ code, at: run.spec.levels ? ground.origin : bottom.origin, args, fixes }];
}

/**
 * The stated bottom put at the limit. Over falling ground that always clears it, since nothing comes nearer to
 * the ground than the bottom; a gap is closed so only over level ground.
 */
function bottomAt({ spec }: RunLayout, limit: Ticks, low: boolean): readonly Fix[] {
  const { origin } = spec.bottom;
  if (origin.why !== 'stated' || limit >= spec.height.value.low || (!low && spec.levels)) return [];
  const text = `bottom ${spellLength(limit, spec.measure)}`;
  return [{ title: `Write ${text}`, changes: [replaceAt(origin, text)] }];
}
