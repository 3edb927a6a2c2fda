import { type InfillSpec, type Mounting, type Problem, type Sourced, standsBetween } from '../model/index.ts';
import { floorToStep, formatLength, type Measure, spellLength, type Ticks } from '../units/index.ts';
import { centered } from './holds.ts';
import type { Range } from './infill.ts';
import type { Groove } from './piece.ts';
import { geometryProblem } from './problems.ts';

/** What an end of a slat goes into: a groove in its holder, or a channel on it. */
export interface Pocket {
  /** From its mouth to its bottom. */
  readonly depth: Ticks;
  /** Through the screen. */
  readonly y: Range;
  /** How far its bottom is off the holder's face, toward the slats; into a groove it is less than nothing. */
  readonly inset: Ticks;
}

/** The pockets of slats so thick at the most; undefined where they end in none. */
export function pocketOf(mounting: Mounting, thickest: Ticks): Pocket | undefined {
  if (mounting.kind === 'grooves') {
    const { depth, width, room } = mounting;
    return { depth: depth.value, y: centered(width?.value ?? thickest + room), inset: 0 - depth.value };
  }
  if (mounting.kind !== 'channels') return undefined;
  const { width, thickness, wall } = mounting.channel.value;
  return {
    depth: width.value - wall.value,
    y: centered(thickness.value - 2 * wall.value),
    inset: wall.value,
  };
}

/** How far a slat's end is off the face of what holds it: less than nothing where it goes into that. */
export function endInset({ mounting, endGap }: Pick<InfillSpec, 'mounting' | 'endGap'>): Ticks {
  if (!standsBetween(mounting.value)) return 0;
  return endGap.value + (pocketOf(mounting.value, 0)?.inset ?? 0);
}

/** The groove for slats so thick in one side of a holder that begins at `front` through the screen. */
export function grooveFor(
  mounting: Mounting,
  thickest: Ticks,
  front: Ticks,
  place: Pick<Groove, 'side' | 'from' | 'to'>,
): Groove | undefined {
  const pocket = mounting.kind === 'grooves' ? pocketOf(mounting, thickest) : undefined;
  if (!pocket) return undefined;
  const { y, depth } = pocket;
  return { ...place, at: y[0] - front, width: y[1] - y[0], depth };
}

/** What pockets are cut into or lie on. */
export interface PocketHolder {
  readonly name: string;
  /** Where it is through the screen. */
  readonly y: Range;
  /** Across the groove's mouth: how much there is to go into, and from how many sides. */
  readonly room: Ticks;
  readonly sides: 1 | 2;
  /** Of a tube. */
  readonly wall?: Sourced<Ticks>;
}

/** Reasons why slats cannot end in the pockets asked for. */
export function pocketProblems(
  { mounting, endGap }: InfillSpec,
  holders: readonly PocketHolder[],
  thickest: Ticks,
  measure: Measure,
): readonly Problem[] {
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  const { value } = mounting;
  const pocket = pocketOf(value, thickest);
  if (!pocket) return [];
  const found: Problem[] = [];
  const wide = pocket.y[1] - pocket.y[0];
  const channel = value.kind === 'channels' ? value.channel : undefined;
  if (thickest > wide) {
    const origin = (value.kind === 'grooves' ? value.width?.origin : channel?.origin) ?? mounting.origin;
    const hint = value.kind === 'grooves' ? spellLength(thickest + value.room, measure) : '';
    const args = { slat: shown(thickest), room: shown(wide), in: channel?.value.name ?? '', hint };
    found.push(geometryProblem('slat-too-thick', origin, args));
  }
  if (endGap.value >= pocket.depth) {
    const holder = channel?.value.name ?? 'groove';
    const args = { gap: shown(endGap.value), holder, width: shown(pocket.depth) };
    found.push(geometryProblem('end-gap-too-wide', endGap.origin, args));
  }
  if (value.kind === 'grooves') found.push(...grooveProblems(value, mounting, holders, pocket, measure));
  return found;
}

/** One of each kind, at the holder that bears it least. */
function grooveProblems(
  { depth }: Extract<Mounting, { kind: 'grooves' }>,
  { origin }: Sourced<Mounting>,
  holders: readonly PocketHolder[],
  { y }: Pocket,
  measure: Measure,
): readonly Problem[] {
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  const found: Problem[] = [];
  const tube = holders.find(({ wall }) => wall !== undefined);
  if (tube)
    found.push(geometryProblem('groove-in-tube', origin, { holder: tube.name, hint: 'slats in channels' }));
  const deep = holders.find(({ room, sides }) => sides * depth.value >= room);
  if (deep && !tube) {
    const args = {
      holder: deep.name,
      depth: shown(depth.value),
      room: shown(deep.room),
      sides: deep.sides,
      // Half of the wood stays.
      hint: spellLength(floorToStep(deep.room / 2 / deep.sides, measure.step), measure),
    };
    found.push(geometryProblem('groove-too-deep', depth.origin, args));
  }
  const thin = holders.find((holder) => y[0] <= holder.y[0] || y[1] >= holder.y[1]);
  if (thin) {
    const args = {
      holder: thin.name,
      thickness: shown(thin.y[1] - thin.y[0]),
      width: shown(y[1] - y[0]),
    };
    found.push(geometryProblem('groove-too-wide', origin, args));
  }
  return found;
}
