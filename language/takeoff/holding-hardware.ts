import type { Piece, RunLayout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import { formatLength, IMPERIAL, inches, METRIC, mm, roundToStep, type Ticks } from '../units/index.ts';
import type { Item } from './hardware.ts';

/** Between bolts of a split post, at most (common practice). */
const BOLTS_APART = { imperial: inches(24), metric: mm(600) };

/** Blocks between slats in grooves and channels, by their size: the gap, the slat's thickness, and into the pocket. */
export function spacers(pieces: readonly Piece[], { measure }: Job): readonly Item[] {
  const bySize = new Map<string, number>();
  for (const { role, cut } of pieces) {
    if (role !== 'spacer') continue;
    // Upright their grain goes the other way; a gap that is spread differs by less than a mark of the tape.
    const size = [cut.width, cut.thickness, cut.longPoint]
      .map((ticks) => formatLength(roundToStep(ticks, measure.value.step), measure.value))
      .join(' by ');
    bySize.set(size, (bySize.get(size) ?? 0) + 1);
  }
  return [...bySize].map(([size, net]) => ({
    name: 'spacer',
    what: `spacers ${size}`,
    net,
    count: net,
    unit: '',
    rule: 'one at each end of every gap between slats in grooves or channels: as high as the gap, as thick as the slat, as long as the groove is deep; from offcuts',
  }));
}

/** Bolts that draw the halves of split posts together, by what they go through. */
export function bolts(runs: readonly RunLayout[], metric: boolean): readonly Item[] {
  const apart = BOLTS_APART[metric ? 'metric' : 'imperial'];
  const byGrip = new Map<Ticks, number>();
  for (const run of runs) {
    if (run.spec.infill.mounting.value.kind !== 'split') continue;
    const byKey = new Map(run.pieces.map((piece) => [piece.key, piece]));
    for (const { key, from, to } of run.posts) {
      const half = byKey.get(key);
      if (!half) continue;
      const beside = run.bays.filter((bay) => bay.to === from || bay.from === to);
      const reach = beside.flatMap(({ number }) => run.reach.get(number) ?? []);
      const high = reach.length > 0 ? Math.max(...reach) - Math.min(...reach) : 0;
      const ys = half.solid.vertices.map(([, y]) => y);
      const grip = 2 * Math.max(0, -Math.min(...ys));
      byGrip.set(grip, (byGrip.get(grip) ?? 0) + Math.max(2, Math.ceil(high / apart) + 1));
    }
  }
  const measure = metric ? METRIC : { ...IMPERIAL, unit: 'inches' as const };
  return [...byGrip].map(([grip, net]) => ({
    name: 'bolt',
    what: `bolts with nut and two washers through ${formatLength(roundToStep(grip, measure.step), measure)}`,
    net,
    count: net,
    unit: '',
    rule: 'through both halves of each split post, 24" (600 mm) apart at most over the height of the slats, two at least (common practice)',
  }));
}

/** Cables of gates by their length. */
export function cables(pieces: readonly Piece[], { measure }: Job): readonly Item[] {
  const byLength = new Map<string, number>();
  for (const { role, cut } of pieces) {
    if (role !== 'cable') continue;
    const length = formatLength(cut.longPoint, measure.value);
    byLength.set(length, (byLength.get(length) ?? 0) + 1);
  }
  return [...byLength].map(([length, net]) => ({
    name: 'cable',
    what: `gate cables with turnbuckle and eyes, ${length} from corner to corner`,
    net,
    count: net,
    unit: '',
    rule: 'one a leaf, or one in every space between its rails',
  }));
}
