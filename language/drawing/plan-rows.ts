import type { Frame, RunLayout } from '../layout/index.ts';
import { planAxes } from './plan-axes.ts';
import { outward, reachOf } from './plan-sides.ts';

/** A run where it stands. */
export interface Standing {
  readonly run: RunLayout;
  readonly frame: Frame;
}

/**
 * How much farther out than it asks for itself the dimensions of a run stand, by key, in ticks: those of runs that go
 * straight on from one another in planes apart share one line, that of the plane farthest out.
 */
export function asidesOf(standing: readonly Standing[]): ReadonlyMap<string, number> {
  const byName = new Map(standing.map((one) => [one.run.spec.name, one]));
  const rows = new Map<string, Standing[]>();
  for (const one of standing) {
    const row = `${firstOf(one, byName).run.key} ${outward(one.run)}`;
    const held = rows.get(row);
    if (held) held.push(one);
    else rows.set(row, [one]);
  }
  return new Map(
    [...rows.values()].flatMap((row) => {
      const outs = row.map(outOf);
      const farthest = Math.max(...outs);
      return row.map(({ run }, at): [string, number] => [run.key, Math.round(farthest - (outs[at] ?? 0))]);
    }),
  );
}

/** The run that the straight way to this one begins with. */
function firstOf(one: Standing, byName: ReadonlyMap<string, Standing>): Standing {
  let first = one;
  for (let tries = byName.size; tries > 0; tries--) {
    const { placement } = first.run.spec;
    const before = placement?.kind === 'on' && placement.step ? byName.get(placement.run) : undefined;
    if (!before) break;
    first = before;
  }
  return first;
}

/** How far out it reaches toward the side its dimensions stand on. */
function outOf({ run, frame }: Standing): number {
  const { back } = planAxes(frame);
  const [east, north] = frame.origin;
  const out = outward(run);
  return out * (east * back[0] - north * back[1]) + reachOf(run, out);
}
