import type { Problem, RunSpec } from '../model/index.ts';
import { bayProblems, planBay } from './bay-panel.ts';
import { fillBays } from './fill-bays.ts';
import { planLeaf } from './gate-leaf.ts';
import { hashOf } from './hash.ts';
import { type Panel, panelPieces, type Range } from './infill.ts';
import type { Course, FitResult, Leaf, Opening, RunLayout } from './layout.ts';
import { coursesOf, thickestOf } from './lines.ts';
import { runKey } from './names.ts';
import type { Piece } from './piece.ts';
import { embedOf, postPieces } from './post-pieces.ts';
import { placePosts } from './posts.ts';
import { geometryProblem, MOST_PIECES } from './problems.ts';
import { sizeProblems } from './sizes.ts';

/**
 * Lays out one run: posts and bays first, then what fills them, then posts as long as that needs. Pure; the
 * hash tells whether it would come out the same again.
 *
 * Impossible geometry is told in `problems`. Where it keeps posts or bays from being built there are no pieces
 * and the layout is not `sound`; where it is a gate leaf's alone, only that leaf is missing.
 */
export function layOutRun(spec: RunSpec, hash: string = hashOf(spec)): RunLayout {
  const sizes = sizeProblems(spec);
  if (sizes.length > 0) return unsound(spec, hash, sizes);
  const placed = placePosts(spec);
  if (!('posts' in placed)) return unsound(spec, hash, placed);

  const infills = fillBays(spec, placed);
  const { bottom, height } = infills.ends;
  const ground = spec.ground.value;
  const z: Range = [ground + bottom, ground + height];
  const filled = placed.bays.filter(({ gate }) => !gate);
  const thickest = Math.max(0, ...infills.all.map(({ lines }) => thickestOf(lines)));
  const troubles = filled.length > 0 ? bayProblems(spec, filled, z, thickest) : [];
  if (troubles.length > 0) return unsound(spec, hash, troubles);

  const problems: Problem[] = [];
  const courses = new Map<number, readonly Course[]>();
  const openings: Opening[] = [];
  const pieces: Piece[] = [];
  const leaves: Leaf[] = [];
  const fits: FitResult[] = infills.all.map(({ result }) => result);
  const panels: Panel[] = [];
  let gates = 0;
  for (const bay of placed.bays) {
    const { number } = bay.bay;
    const infill = infills.of(bay);
    if (bay.gate) {
      const { plan, problems: found } = planLeaf(spec, bay.gate, bay, ++gates, infills.ends);
      problems.push(...found);
      if (!plan) continue;
      leaves.push(plan.leaf);
      fits.push(plan.fit);
      pieces.push(...plan.frame);
      openings.push(...plan.openings);
      panels.push(plan.panel);
      courses.set(number, coursesOf(plan.panel.lines, plan.panel.upright));
    } else if (infill) {
      const plan = planBay(spec, bay, infill.lines, z);
      pieces.push(...plan.rails);
      openings.push(...plan.openings);
      panels.push(plan.panel);
      courses.set(number, infill.courses);
    }
  }
  const count = placed.posts.length + pieces.length + panels.reduce((sum, panel) => sum + sizeOf(panel), 0);
  if (count > MOST_PIECES) {
    const args = { count, most: MOST_PIECES };
    return unsound(spec, hash, [geometryProblem('too-many-pieces', spec.origin, args)]);
  }
  for (const panel of panels) for (const piece of panelPieces(panel)) pieces.push(piece);

  const top = z[1];
  const postTop = top + spec.tops.value;
  const embed = embedOf(spec, postTop - ground);
  return {
    ...bare(spec, hash),
    sound: true,
    posts: placed.posts.map(({ mark }) => mark),
    bays: placed.bays.map(({ bay }) => bay),
    bottom: z[0],
    top,
    postTop,
    embed,
    courses,
    leaves,
    pieces: [...postPieces(spec, placed.posts, ground - embed.value, postTop), ...pieces],
    openings,
    fits,
    problems,
  };
}

const sizeOf = ({ lines, hold }: Panel): number => lines.length + (hold.kind === 'between' ? 4 : 0);

function bare(spec: RunSpec, hash: string): RunLayout {
  const ground = spec.ground.value;
  return {
    key: runKey(spec.name),
    hash,
    spec,
    sound: false,
    frame: { origin: [0, 0, 0], bearing: 0 },
    posts: [],
    bays: [],
    ground,
    bottom: ground,
    top: ground,
    postTop: ground,
    embed: embedOf(spec, 0),
    courses: new Map(),
    leaves: [],
    pieces: [],
    openings: [],
    fits: [],
    problems: [],
  };
}

function unsound(spec: RunSpec, hash: string, problems: readonly Problem[]): RunLayout {
  return { ...bare(spec, hash), problems };
}
