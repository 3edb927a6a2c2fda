import type { Layout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import { type Takeoff, takeoffOf } from '../takeoff/index.ts';

const first = new WeakMap<Layout, Takeoff>();

/** The first takeoff of a layout, which is there at once; nothing is sought beyond it, so that typing never waits. */
export function firstTakeoff(layout: Layout, job: Job): Takeoff {
  const held = first.get(layout);
  if (held) return held;
  const takeoff = takeoffOf(layout, job, () => true);
  first.set(layout, takeoff);
  return takeoff;
}
