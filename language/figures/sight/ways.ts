import { bottomEdge, heightAt, type Incline, type Solid, topEdge, type Vec3 } from '../../layout/index.ts';
import { type GroundPoint, levelAt } from '../../model/index.ts';
import { FAR } from './far.ts';
import { inPlan, type PlacedRun } from './scene.ts';
import type { SceneWall } from './scene-walls.ts';

/** How a line of sight gets past a run. */
export type Way = 'gates' | 'through' | 'over' | 'under' | 'past';

/** Parts of the upright planes of runs: what a line of sight goes through there, by way; and the ground, which hides. */
export interface Gateways {
  readonly gates: readonly Solid[];
  readonly through: readonly Solid[];
  readonly over: readonly Solid[];
  readonly under: readonly Solid[];
  readonly ground: readonly Solid[];
}

/** The plane of the posts of each run, cut into what lies over, in, and under each bay, and the ground below. */
export function gatewaysOf(runs: readonly PlacedRun[]): Gateways {
  const found = { gates: [] as Solid[], through: [] as Solid[], over: [] as Solid[], under: [] as Solid[] };
  const ground: Solid[] = [];
  for (const placed of runs) {
    const { run } = placed;
    for (const [index, bay] of run.bays.entries()) {
      const low = bottomEdge(run, bay.number) ?? { at: 0, z: run.bottom, rise: 0 };
      const high = topEdge(run, bay.number) ?? { at: 0, z: run.top, rise: 0 };
      const before = run.bays[index - 1];
      const after = run.bays[index + 1];
      // From middle of post to middle of post, so that bays lie side by side.
      const from = before ? (before.to + bay.from) / 2 : endOf(placed, 'start');
      const to = after ? (bay.to + after.from) / 2 : endOf(placed, 'end');
      const ends = (line: Incline, a: number, b: number): Ends => [heightAt(line, a), heightAt(line, b)];
      const tops = ends(high, from, to);
      const panel = panelOf(placed, [from, to], ends(low, from, to), tops);
      (bay.gate === undefined ? found.through : found.gates).push(panel);
      found.over.push(panelOf(placed, [from, to], tops, [FAR, FAR]));
      for (const [a, b] of stretches(run.groundLine, from, to)) {
        const levels = [levelAt(run.groundLine, a), levelAt(run.groundLine, b)] as const;
        found.under.push(panelOf(placed, [a, b], levels, ends(low, a, b)));
        ground.push(panelOf(placed, [a, b], [-FAR, -FAR], levels));
      }
    }
  }
  return { ...found, ground };
}

/** Where a run ends for one who looks: at its end post, or at the wall past that. */
function endOf({ run, walls }: PlacedRun, at: SceneWall['side']): number {
  const wall = walls.find(({ side }) => side === at);
  return wall?.farthest ?? (at === 'start' ? 0 : run.spec.length.value);
}

/** Between two stations, cut where the ground breaks. */
function stretches(line: readonly GroundPoint[], from: number, to: number): (readonly [number, number])[] {
  const cuts = [from, ...line.map(({ x }) => x).filter((x) => x > from && x < to), to];
  return cuts.slice(1).map((cut, i) => [cuts[i] as number, cut] as const);
}

type Ends = readonly [number, number];

/** A flat part of a run's plane: both faces of the solid are one. */
function panelOf({ frame }: PlacedRun, [x0, x1]: Ends, low: Ends, high: Ends): Solid {
  const at = (x: number, z: number): Vec3 => inPlan(frame, [x, 0, z]);
  const corners = [at(x0, low[0]), at(x1, low[1]), at(x1, high[1]), at(x0, high[0])];
  return { vertices: [...corners, ...corners] };
}
