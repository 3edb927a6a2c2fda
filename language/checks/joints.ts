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

/** Runs the offset between which is closed by slats, a return or a panel, so that their lines go on over it. */
export function bridgedBySlats({ runs }: Layout): readonly Omit<Meeting, 'turn'>[] {
  const byName = new Map(runs.map((run) => [run.spec.name, run]));
  return runs.flatMap((second): Omit<Meeting, 'turn'>[] => {
    const { placement } = second.spec;
    const { bridge } = second.joints;
    if (placement?.kind !== 'on' || !placement.bridge || placement.bridge.kind === 'filler') return [];
    const first = byName.get(placement.run);
    return first?.sound && second.sound && bridge && !bridge.trouble ? [{ first, second }] : [];
  });
}

/** The bay of slats next to the shared post; undefined where a gate hangs there. */
export function bayBeside({ bays }: RunLayout, end: 'first' | 'last'): number | undefined {
  const bay = end === 'first' ? bays[0] : bays.at(-1);
  return bay?.gate === undefined ? bay?.number : undefined;
}
