import { groundLine, type InfillSpec, type Problem, type RunSpec } from '../model/index.ts';
import { formatLength } from '../units/index.ts';
import { coverPosts } from './battens.ts';
import { bayProblems, liesOnPosts, planBay } from './bay-panel.ts';
import { closeOffset } from './bridge.ts';
import { dressPosts } from './dress-posts.ts';
import { faceSlats } from './face-slats.ts';
import { fillBays, type Infills } from './fill-bays.ts';
import { fillersOf } from './fillers.ts';
import { type Stand, standsOf } from './follow-ground.ts';
import { planLeaves } from './gate-leaves.ts';
import { groundProblems } from './ground-problems.ts';
import { hashOf } from './hash.ts';
import { reachOfIncline } from './incline.ts';
import { type Panel, panelPieces, type Range } from './infill.ts';
import type { Joints } from './joints.ts';
import { kickBoard, narrowestKick } from './kick-board.ts';
import type { BayEdges, Course, FitResult, Leaf, Opening, RunLayout } from './layout.ts';
import { coursesOf, thickestOf } from './lines.ts';
import { linesTrouble } from './lines-as.ts';
import { runKey } from './names.ts';
import type { Piece } from './piece.ts';
import { atMeasuredEnds, plannedSpec } from './planned-spec.ts';
import { pocketOf } from './pockets.ts';
import { borrowedPost, embedOf, gateEmbedOf, postPieces, standingPosts } from './post-pieces.ts';
import type { PlacedBay, PlacedPosts } from './posts.ts';
import { geometryProblem, MOST_PIECES } from './problems.ts';
import { rackingOf, rackProblems } from './racks.ts';
import { standingRun } from './standing-run.ts';
import { stiffAlong, stiffen } from './stiffeners.ts';
import { NO_TEMPORARY, temporaryOf } from './temporary.ts';
import { wallsOf } from './walls.ts';

/**
 * Lays out one run: posts and bays first, then what fills them, then posts as long as that needs. Pure; the
 * hash tells whether it would come out the same again.
 *
 * Impossible geometry is told in `problems`. Where it keeps posts or bays from being built there are no pieces
 * and the layout is not `sound`; where it is a gate leaf's alone, only that leaf is missing.
 */
export function layOutRun(given: RunSpec, hash: string = hashOf(given), joints: Joints = {}): RunLayout {
  const stated = atMeasuredEnds(given);
  const standing = standingRun(stated, joints);
  if (!('placed' in standing)) return { ...bare(stated, hash, joints), problems: standing };
  const { spec, placed } = standing;
  const unsound = (problems: readonly Problem[]) => ({ ...bare(spec, hash, joints), problems });
  const infills = fillBays(spec, placed, joints.lines);
  const { bottom, height } = infills.ends;
  const ground = spec.ground.value;
  const z: Range = [ground + bottom, ground + height];
  const filled = placed.bays.filter(({ gate }) => !gate);
  const thickest = Math.max(0, ...infills.all.map(({ lines }) => thickestOf(lines)));
  const troubles = filled.length > 0 ? bayProblems(spec, filled, z, thickest) : [];
  if (troubles.length > 0) return unsound(troubles);

  const count = countOf(placed, infills, piecesOfLine(spec.infill));
  if (count > MOST_PIECES) return unsound([tooMany(spec, count)]);
  const stands = standsOf(spec, placed.bays, infills);
  const steep = rackProblems(spec, stands);
  if (steep.length > 0) return unsound(steep);
  const content = fillAll(spec, placed.bays, stands, infills, count);
  const posts = standingPosts(spec, placed, stands);
  const linePosts = posts.filter(({ post }) => !gateEmbedOf(post));
  const deepest = (linePosts.length > 0 ? linePosts : posts).reduce(
    (most, { embed }) => (embed.value > most.value ? embed : most),
    embedOf(spec, 0),
  );
  const upright = postPieces(spec, posts);
  const dressing = dressPosts(spec, posts, placed.bays, content.reach);
  const walls = wallsOf(given);
  const fillers = fillersOf(spec, walls, placed.posts, placed.bays, content);
  const covers = coverPosts(spec, placed.posts, content.pieces);
  const planned = planOf(given, joints);
  // Posts that were measured stand; what set them was cut to the plan.
  const setting = planned.planned
    ? { temporary: planned.planned.temporary, problems: [] }
    : temporaryOf(spec, joints, posts, placed.bays, walls);
  const bridged = closeOffset(spec, joints, placed, stands, content);
  return {
    ...bare(spec, hash, joints),
    ...planned,
    walls,
    sound: true,
    posts: placed.posts.map(({ mark }) => mark),
    bays: placed.bays.map(({ bay }) => bay),
    leans: new Map(placed.posts.flatMap(({ mark, lean }) => (lean ? [[mark.key, lean]] : []))),
    offs: new Map(placed.posts.flatMap(({ mark, off }) => (off ? [[mark.key, off]] : []))),
    postMoves: placed.moves,
    bottom: z[0],
    top: z[1],
    postTop: Math.max(...posts.map((post) => post.z[1])),
    embed: deepest,
    ...content,
    problems: [
      ...groundProblems(stated),
      ...linesProblems(stated, joints),
      ...standing.problems,
      ...placed.clashes,
      ...content.problems,
      ...dressing.problems,
      ...covers.problems,
      ...bridged.problems,
      ...setting.problems,
    ],
    temporary: setting.temporary,
    pieces: [
      ...upright,
      ...dressing.pieces,
      ...fillers,
      ...content.pieces,
      ...covers.pieces,
      ...bridged.pieces,
    ],
    borrowed: joints.start ? [borrowedPost(spec, joints.start)] : bridged.borrowed,
  };
}

/** Where it or its boards were measured, what would have been built. */
function planOf(spec: RunSpec, joints: Joints): Pick<RunLayout, 'planned'> {
  const plan = plannedSpec(spec);
  return plan ? { planned: layOutRun(plan, '', joints) } : {};
}

type Content = Pick<
  RunLayout,
  'courses' | 'reach' | 'edges' | 'leaves' | 'pieces' | 'openings' | 'fits' | 'problems'
>;

/** What bays and leaves hold. Leaves beyond the most that is laid out are left out. */
function fillAll(
  spec: RunSpec,
  bays: readonly PlacedBay[],
  stands: ReadonlyMap<number, Stand>,
  infills: Infills,
  ofBays: number,
): Content {
  const problems: Problem[] = [];
  const courses = new Map<number, readonly Course[]>();
  const reach = new Map<number, Range>();
  const edges = new Map<number, BayEdges>();
  const unkicked: number[] = [];
  const openings: Opening[] = [];
  const pieces: Piece[] = [];
  const leaves: Leaf[] = [];
  const fits: FitResult[] = infills.all.map(({ result }) => result);
  const slats: Piece[] = [];
  const onFaces = liesOnPosts(spec) ? stiffAlong(spec, bays, faceSlats(spec, bays, stands)) : undefined;
  let gates = 0;
  let count = ofBays;
  for (const placed of bays) {
    const stand = stands.get(placed.bay.number);
    if (!stand) continue;
    reach.set(placed.bay.number, stand.z);
    if (placed.gate) {
      if (count > MOST_PIECES) continue;
      // Heights of a leaf are above the ground where it hangs.
      const ends = { bottom: stand.z[0] - stand.ground, height: stand.z[1] - stand.ground };
      const there = { ...spec, ground: { ...spec.ground, value: stand.ground } };
      const beside = coursesBeside(spec, placed, stands);
      const { plans, problems: found } = planLeaves(there, placed.gate, placed, ++gates, ends, beside);
      problems.push(...found);
      count += piecesOfLine(placed.gate.infill) * plans.reduce((sum, { panels }) => sum + linesIn(panels), 0);
      if (count > MOST_PIECES) {
        problems.push(tooMany(placed.gate, count));
        continue;
      }
      for (const plan of plans) {
        leaves.push(plan.leaf);
        reach.set(placed.bay.number, [plan.leaf.z0, plan.leaf.z1]);
        fits.push(plan.fit);
        pieces.push(...plan.frame);
        openings.push(...plan.openings);
        for (const panel of plan.panels) for (const piece of panelPieces(panel)) slats.push(piece);
        const [first] = plan.panels;
        if (first) courses.set(placed.bay.number, coursesOf(first.lines, first.upright));
      }
    } else if (stand.filled) {
      const plan = planBay(spec, placed, stand.filled, stand);
      pieces.push(...plan.rails);
      openings.push(...plan.openings);
      if (stand.rack) edges.set(placed.bay.number, stand.rack);
      const racking = stand.rack && rackingOf(stand.rack);
      const bayPieces =
        onFaces?.get(placed.bay.number) ?? stiffen(spec, placed, plan.panels.flatMap(panelPieces), racking);
      problems.push(...bayPieces.problems);
      for (const piece of bayPieces.pieces) slats.push(piece);
      courses.set(placed.bay.number, stand.filled.courses);
      if (stand.low) edges.set(placed.bay.number, { bottom: stand.low });
      const kick = kickBoard(spec, placed, stand);
      if (kick) {
        pieces.push(kick.piece);
        const { from, to } = placed.bay;
        const [low] = reachOfIncline(kick.bottom, from, to);
        reach.set(placed.bay.number, [Math.floor(low), stand.z[1]]);
        const above = edges.get(placed.bay.number);
        if (above || kick.bottom.rise !== 0) edges.set(placed.bay.number, { ...above, bottom: kick.bottom });
      } else if (spec.kick) unkicked.push(placed.bay.number);
    }
  }
  for (const piece of slats) pieces.push(piece);
  if (spec.kick && unkicked.length > 0) {
    const least = formatLength(narrowestKick(spec.measure), spec.measure);
    const args = { bays: unkicked.join(', '), count: unkicked.length, least };
    problems.push(geometryProblem('kick-no-room', spec.kick.origin, args));
  }
  return { courses, reach, edges, leaves, pieces, openings, fits, problems };
}

/** Level courses of the bay left of a gate, or of the one right of it where that is none of slats. */
function coursesBeside(
  spec: RunSpec,
  { bay }: PlacedBay,
  stands: ReadonlyMap<number, Stand>,
): readonly Course[] {
  if (spec.infill.flip.upright) return [];
  const beside = [bay.number - 1, bay.number + 1].map((number) => stands.get(number)?.filled);
  return beside.find((filled) => filled !== undefined)?.courses ?? [];
}

/** Pieces of the run, those of its leaves left out: rails, cleats or channels of a bay and every line, with its spacers. */
function countOf({ posts, bays }: PlacedPosts, infills: Infills, each: number): number {
  return bays.reduce((sum, bay) => {
    const { lines = [], back = [] } = infills.of(bay) ?? {};
    return sum + each * (lines.length + back.length) + 6;
  }, posts.length);
}

/** Of every line: a slat, and in pockets a spacer at either end of the gap beside it. */
function piecesOfLine({ mounting, pattern }: InfillSpec): number {
  return pocketOf(mounting.value, 0) && pattern.gap.value > 0 ? 3 : 1;
}

const linesIn = (panels: readonly Panel[]): number =>
  panels.reduce((sum, { lines }) => sum + lines.length, 0);

function tooMany({ origin }: Pick<RunSpec, 'origin'>, count: number): Problem {
  return geometryProblem('too-many-pieces', origin, { count, most: MOST_PIECES });
}

/** A run that does not stand on the lines it is to go on with; it is fitted for itself then. */
function linesProblems(spec: RunSpec, { lines }: Joints): readonly Problem[] {
  const why = lines && linesTrouble(spec, lines);
  if (!why || !spec.linesAs) return [];
  return [geometryProblem('lines-elsewhere', spec.linesAs.origin, { run: spec.name, other: lines.run, why })];
}

function bare(spec: RunSpec, hash: string, joints: Joints): RunLayout {
  const ground = spec.ground.value;
  return {
    key: runKey(spec.name),
    hash,
    spec,
    sound: false,
    joints,
    posts: [],
    bays: [],
    leans: new Map(),
    offs: new Map(),
    postMoves: [],
    ground,
    bottom: ground,
    top: ground,
    postTop: ground,
    embed: embedOf(spec, 0),
    groundLine: groundLine(spec),
    walls: wallsOf(spec),
    reach: new Map(),
    edges: new Map(),
    courses: new Map(),
    leaves: [],
    pieces: [],
    temporary: NO_TEMPORARY,
    borrowed: [],
    openings: [],
    fits: [],
    problems: [],
  };
}
