import type { RunLayout, TextChange } from '../../layout/index.ts';
import { type FillWay, type FillWays, isMetric, type Job, type RunSpec } from '../../model/index.ts';
import { ceilToStep, formatLength, inches, mm, type Ticks } from '../../units/index.ts';
import { canTake, refilled, withBays } from './restate.ts';

/** A run stated otherwise, with the edits that do it and what they do in words. */
export interface Variant {
  readonly spec: RunSpec;
  readonly changes: readonly TextChange[];
  readonly says: readonly string[];
}

/** So far a gap may be from the stated one where no band is stated for it (common practice: 1/8 in, 3 mm). */
const USUAL_BAND = { imperial: inches(1 / 8), metric: mm(3) };
/** More gaps of one pattern than this are not tried; they are taken at even distances. */
const MOST_GAPS = 13;
/** So many more bays are tried, and fewer as long as there are any. */
const MORE_BAYS = 2;
const FEWER_BAYS = 2;

/**
 * Every pattern at every gap by marks of the tape within its band, in every count of bays: the run as it stands
 * first, then by how much is changed.
 */
export function variantsOf(run: RunLayout, stated: RunSpec, fills: FillWays, job: Job): readonly Variant[] {
  const bays = bayVariants(run, stated);
  const variants = fills.ways.flatMap((way) =>
    fillVariants(way, stated, fills, job).flatMap((filled) =>
      bays.map((bay): Variant => {
        const spec = bay.count === undefined ? filled.spec : withBays(filled.spec, bay.count);
        return { spec, changes: [...filled.changes, ...bay.changes], says: [...filled.says, ...bay.says] };
      }),
    ),
  );
  return variants.sort((a, b) => a.changes.length - b.changes.length);
}

type Part = Pick<Variant, 'changes' | 'says'>;

/** Stations, and what stands already, are not for choosing. */
function bayVariants(
  { bays }: RunLayout,
  { spacing, measured }: RunSpec,
): readonly (Part & { count?: number })[] {
  const asItStands = { changes: [], says: [] };
  const { value, origin } = spacing;
  if (origin.why !== 'stated' || value.kind === 'stations' || measured) return [asItStands];
  const now = bays.filter(({ gate }) => gate === undefined).length;
  // An upper limit gives the fewest bays already.
  const least = value.kind === 'at-most' ? now : Math.max(1, now - FEWER_BAYS);
  const counts = Array.from({ length: now + MORE_BAYS - least + 1 }, (_, at) => least + at);
  return [
    asItStands,
    ...counts
      .filter((count) => count !== now)
      .map((count) => {
        const text = `${count} ${count === 1 ? 'bay' : 'bays'}`;
        const change = {
          uri: origin.uri,
          path: origin.path,
          place: 'replace' as const,
          text: `${count} bays`,
        };
        return { count, changes: [change], says: [text] };
      }),
  ];
}

function fillVariants(way: FillWay, stated: RunSpec, { at }: FillWays, job: Job): readonly Variant[] {
  const plain = way.filled();
  if (!plain) return [];
  const found: Variant[] = [];
  if (way.own) found.push({ spec: stated, changes: [], says: [] });
  else if (canTake(stated, plain)) found.push(filledWith(undefined));
  for (const gap of gapsOf(plain, stated, job))
    found.push(...(canTake(stated, plain) ? [filledWith(gap)] : []));
  return found.filter((one) => one.spec.infill.pattern.repeat.length > 0);

  function filledWith(gap: Ticks | undefined): Variant {
    const filling = (gap === undefined ? plain : way.filled(gap)) ?? plain;
    const text = filling?.text ?? '';
    return {
      spec: filling ? refilled(stated, filling) : stated,
      changes: [{ uri: at.uri, path: at.path, place: 'replace', text }],
      says: [
        ...(way.own ? [] : [`pattern ${way.name}`]),
        ...(gap === undefined ? [] : [`gap ${formatLength(gap, job.measure.value)}`]),
      ],
    };
  }
}

/** Gaps by marks of the tape within the band of the pattern's fit, or about the stated gap; that one left out. */
function gapsOf(
  { pattern, fit }: NonNullable<ReturnType<FillWay['filled']>>,
  { infill, origin }: RunSpec,
  job: Job,
): readonly Ticks[] {
  const { step } = job.measure.value;
  const nominal = pattern.gap.value;
  const own = infill.fit.origin.path.startsWith(`${origin.path}/`) ? infill.fit : fit;
  const usual = USUAL_BAND[isMetric(job.measure.value) ? 'metric' : 'imperial'];
  const band = (own?.remedies ?? []).flatMap(({ value }) => (value.kind === 'gaps' ? [value] : []))[0] ?? {
    low: nominal - usual,
    high: nominal + usual,
  };
  const first = Math.max(step, ceilToStep(band.low, step));
  const most = Math.floor((band.high - first) / step) + 1;
  const stride = Math.max(1, Math.ceil(most / MOST_GAPS));
  const gaps: Ticks[] = [];
  for (let gap = first; gap <= band.high; gap += stride * step) if (gap !== nominal) gaps.push(gap);
  return gaps;
}
