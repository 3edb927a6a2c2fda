import type { GateSpec, Problem, RunSpec } from '../model/index.ts';
import { type BuiltEnds, type LeafPlan, planLeaf } from './gate-leaf.ts';
import type { Course } from './layout.ts';
import { halvesOf, mirrored } from './leaf-pair.ts';
import type { PlacedBay } from './posts.ts';

/**
 * Plans the leaf of a gate, or both of a pair: the active one first, then the passive one, with the active one's lines
 * mirrored where both are equally wide. What stands in the way of both alike is told once.
 */
export function planLeaves(
  spec: RunSpec,
  gate: GateSpec,
  placed: PlacedBay,
  number: number,
  built: BuiltEnds,
  courses: readonly Course[],
): { plans: readonly LeafPlan[]; problems: readonly Problem[] } {
  const halves = halvesOf(gate, placed);
  if (!halves) {
    const { plan, problems } = planLeaf(spec, gate, placed, number, built, courses);
    return { plans: plan ? [plan] : [], problems };
  }
  const [first, second] = halves;
  const active = planLeaf(spec, first.gate, first.placed, number, built, courses);
  const filled = second.gate.half?.mirrors ? active.plan?.filled : undefined;
  if (second.gate.half?.mirrors && !filled) return { plans: [], problems: active.problems };
  const { leaf } = active.plan ?? {};
  // Mirrored edge to edge: the far edges of the two leaves add up to twice the middle between them.
  const as =
    filled &&
    leaf &&
    ((x: readonly [number, number]) => {
      const sum = leaf.x0 < x[0] ? leaf.x0 + x[1] : leaf.x1 + x[0];
      return mirrored(filled, second, sum);
    });
  const passive = planLeaf(spec, second.gate, second.placed, number, built, courses, as);
  const told = new Set(active.problems.map(({ code }) => code));
  return {
    plans: [active.plan, passive.plan].filter((plan) => plan !== undefined),
    problems: [...active.problems, ...passive.problems.filter(({ code }) => !told.has(code))],
  };
}
