import type { Placement } from '../model/index.ts';
import { axesOf, type Flat } from './corner.ts';
import type { Frame, RunLayout } from './layout.ts';

/** Where the first run stands when no place is stated and others come after it: at the datum point, going east. */
const UNSTATED: Frame = { origin: [0, 0, 0], bearing: 90 };

/**
 * Where runs stand on the plan, by key: those whose place is stated, and those that come after one that has a
 * place. Where no place is stated at all, the first run that others come after begins at the datum point; runs
 * that hang together with none of these have no place. Only here are coordinates rounded to nothing: they are floats.
 */
export function placesOf(runs: readonly RunLayout[]): ReadonlyMap<string, Frame> {
  const places = new Map<string, Frame>();
  for (const { key, spec } of runs) {
    const { placement } = spec;
    if (placement?.kind !== 'at') continue;
    const origin = [placement.east.value, placement.north.value, 0] as const;
    places.set(key, { origin, bearing: placement.bearing.value });
  }
  const followed = new Set(runs.flatMap((run) => followedBy(run) ?? []));
  if (places.size === 0) {
    const first = runs.find((run) => followedBy(run) === undefined && followed.has(run.spec.name));
    if (first) places.set(first.key, UNSTATED);
  }
  const byName = new Map(runs.map((run) => [run.spec.name, run]));
  // A run may stand in the text before the one it comes after.
  for (let waiting = runs.filter((run) => followedBy(run) !== undefined); waiting.length > 0; ) {
    const left = waiting.filter((run) => {
      const first = byName.get(followedBy(run) ?? '');
      const place = first && places.get(first.key);
      if (!place) return true;
      const { placement } = run.spec;
      const { start } = run.joints;
      if (placement?.kind === 'on') places.set(run.key, placeAfter(place, apart(first, run, placement), 0));
      else if (start) places.set(run.key, placeAfter(place, start.corner.at, start.turn));
      return false;
    });
    if (left.length === waiting.length) break;
    waiting = left;
  }
  return places;
}

/** The run it stands after, be it at that one's last post or with a space between. */
function followedBy({ spec: { placement }, joints: { start } }: RunLayout): string | undefined {
  return placement?.kind === 'on' ? placement.run : start?.after;
}

/** Where a run with a post of its own begins, in the frame of the one it goes on from. */
function apart(
  { spec }: RunLayout,
  { joints: { bridge } }: RunLayout,
  { gap, step }: Extract<Placement, { kind: 'on' }>,
): Flat {
  return bridge?.at ?? [spec.length.value + gap.value, step?.value ?? 0];
}

function placeAfter(first: Frame, at: Flat, turn: number): Frame {
  const [x, y] = toPlan(first, at[0], at[1]);
  return { origin: [x, y, first.origin[2]], bearing: (((first.bearing - turn) % 360) + 360) % 360 };
}

/** A point of a run's frame on the plan: east and north of the datum point, in ticks. */
export function toPlan({ origin, bearing }: Frame, x: number, y: number): Flat {
  const { along, back } = axesOf(90 - bearing);
  return [origin[0] + x * along[0] + y * back[0], origin[1] + x * along[1] + y * back[1]];
}
