import type { Layout, RunLayout } from '../layout/index.ts';

/** Two runs that meet, laid out. */
export interface Meeting {
  readonly first: RunLayout;
  readonly second: RunLayout;
  /** Degrees, 0 straight on. */
  readonly turn: number;
}

/** Runs that meet at a post, both of them built. */
export function meetingsOf({ runs, joints }: Layout): readonly Meeting[] {
  const byKey = new Map(runs.map((run) => [run.key, run]));
  return joints.flatMap(({ first, second, turn }): Meeting[] => {
    const [one, other] = [byKey.get(first), byKey.get(second)];
    return one && other ? [{ first: one, second: other, turn }] : [];
  });
}

/** The bay of slats next to the shared post; undefined where a gate hangs there. */
export function bayBeside({ bays }: RunLayout, end: 'first' | 'last'): number | undefined {
  const bay = end === 'first' ? bays[0] : bays.at(-1);
  return bay?.gate === undefined ? bay?.number : undefined;
}
