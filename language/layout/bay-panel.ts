import {
  type FlatStock,
  facesOf,
  type Problem,
  type RunSpec,
  type ScreenFace,
  standsBetween,
} from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import { roomOf } from './as-built.ts';
import { jointGapOf } from './face-ends.ts';
import type { Filled } from './fit-infill.ts';
import type { Stand } from './follow-ground.ts';
import { centered, cleatProblems, roomBetween } from './holds.ts';
import { heightAt, type Incline } from './incline.ts';
import { cutWithin, type HeldEnd, type Hold, type Panel, type Range } from './infill.ts';
import { bayLabel, railLabel } from './labels.ts';
import type { Opening } from './layout.ts';
import { levelReach, type Reach } from './level-reach.ts';
import { type Line, thickestOf } from './lines.ts';
import { makeBoard } from './make-board.ts';
import type { About } from './make-piece.ts';
import { makeSloped, type Racking, slopedOver } from './make-racked.ts';
import { openingsOf, rackedOpening } from './openings.ts';
import type { Piece } from './piece.ts';
import { endInset, grooveFor, pocketOf, pocketProblems } from './pockets.ts';
import { backHalfKey, postDepth } from './post-pieces.ts';
import type { PlacedBay } from './posts.ts';
import { geometryProblem } from './problems.ts';
import { isRacked, rackingOf } from './racks.ts';

/** A bay that slats fill: its rails, if it has them, the panel, and where one sees through. */
export interface BayPlan {
  readonly rails: readonly Piece[];
  /** One, or the front and the back where both have slats; none where slats lie on posts (see `faceSlats`). */
  readonly panels: readonly Panel[];
  readonly openings: readonly Opening[];
}

/** Plans a bay from its lines and the bottom and top of its infill. */
export function planBay(
  spec: RunSpec,
  bayPlaced: PlacedBay,
  { lines, back }: Pick<Filled, 'lines' | 'back'>,
  stand: Pick<Stand, 'z' | 'rack' | 'low'>,
): BayPlan {
  const { upright } = spec.infill.flip;
  const placed = upright ? squared(bayPlaced) : bayPlaced;
  const { bay } = placed;
  const racking = stand.rack && rackingOf(stand.rack);
  // Racked, all heights are those at one station, from which pieces go up or down with the slope.
  const z: Range = stand.rack ? [stand.rack.bottom.z, stand.rack.top.z] : stand.z;
  const rails = upright ? railsOf(spec, placed, z, racking, thickestOf(lines)) : [];
  const x: Range = [bay.from, bay.to];
  const free: Range = upright ? insideRails(spec, z, racking) : z;
  const sight = {
    key: bay.key,
    bay: bay.number,
    upright,
    lines,
    back,
    cavity: facePlane(spec, 'back') - facePlane(spec, 'front'),
    span: upright ? x : z,
    x,
    z: free,
  };
  const openings = openingsOf(sight);
  if (liesOnPosts(spec)) return { rails, panels: [], openings };
  const panel: Panel = {
    run: spec.name,
    bay: bay.number,
    key: bay.key,
    label: bayLabel(bay.number),
    upright,
    lines,
    ...(upright ? uprightReach(spec, z, racking) : levelReach(spec, placed)),
    step: spec.measure.step,
    hold: holdOf(spec, placed, lines, free, { ...stand, z }, facesOf(spec.infill.mounting.value)[0]),
    ...(racking ? { racking } : {}),
    from: [spec.infill.fill, spec.origin],
  };
  const behind = back && {
    ...panel,
    lines: back,
    hold: holdOf(spec, placed, back, free, { ...stand, z }, 'back'),
    behind: true,
  };
  return {
    rails,
    panels: behind ? [panel, behind] : [panel],
    openings: racking ? openings.map((opening) => rackedOpening(opening, racking)) : openings,
  };
}

/** The bay as the rectangle within it. */
function squared(placed: PlacedBay): PlacedBay {
  const [from, to] = roomOf(placed.bay);
  return { ...placed, bay: { ...placed.bay, from, to, clear: to - from } };
}

/** Reasons why no bay of the run can be filled as asked, or this or that one cannot. */
export function bayProblems(
  spec: RunSpec,
  bays: readonly PlacedBay[],
  z: Range,
  thickest: Ticks,
): readonly Problem[] {
  const shown = (ticks: Ticks) => formatLength(ticks, spec.measure);
  const { flip, mounting, endGap } = spec.infill;
  const between = standsBetween(mounting.value);
  const cleated = mounting.value.kind === 'between';
  const height = shown(z[1] - z[0]);
  if (flip.upright && mounting.value.kind === 'split')
    return [geometryProblem('split-upright', mounting.origin, { run: spec.name, hint: 'slats in grooves' })];
  if (isRacked(spec) && pocketOf(mounting.value, 0))
    return [geometryProblem('pockets-racked', mounting.origin, { run: spec.name })];
  if (flip.upright && !spec.rail) return [geometryProblem('rails-missing', flip.origin, { run: spec.name })];
  const [front] = centered(thickest);
  if (flip.upright && spec.rail) {
    const rail = spec.rail.value;
    const needs = 2 * rail.width.value + (between ? roomBetween(spec.infill) : 1);
    const holder = {
      name: rail.name,
      y: centered(rail.thickness.value),
      room: rail.width.value,
      sides: 1,
      wall: rail.wall,
    } as const;
    return [
      ...pocketProblems(spec.infill, [holder], thickest, spec.measure),
      ...(cleated ? cleatProblems(spec.infill, [holder], thickest, front, spec.measure) : []),
      ...(z[1] - z[0] < needs
        ? [geometryProblem('too-low-for-rails', spec.height.origin, { height, needs: shown(needs) })]
        : []),
    ];
  }
  if (between) {
    const posts = new Map(
      bays.flatMap(({ left, right }) => [left, right]).map((post) => [post.stock.name, post]),
    );
    const needs = roomBetween(spec.infill);
    const holders = [...posts.values()].map(({ stock, ...post }) => ({
      name: stock.name,
      y: postDepth(spec, { stock, ...post }),
      room: stock.along.value,
      sides: sidesOf(bays, stock.name),
      wall: stock.wall,
    }));
    return [
      ...pocketProblems(spec.infill, holders, thickest, spec.measure),
      ...(cleated ? cleatProblems(spec.infill, holders, thickest, front, spec.measure) : []),
      ...bays.flatMap(({ bay }) => {
        const [from, to] = roomOf(bay);
        const args = { bay: bay.number, clear: shown(to - from), needs: shown(needs) };
        return to - from < needs ? [geometryProblem('bay-too-narrow', spec.spacing.origin, args)] : [];
      }),
    ];
  }
  const uneven = depthProblem(spec, bays);
  if (uneven) return [uneven];
  const { name, along } = spec.post.value;
  const gap = jointGapOf(spec);
  if (gap < along.value) return [];
  const args = { gap: shown(gap), holder: name, width: shown(along.value) };
  return [geometryProblem('end-gap-too-wide', (spec.slatJoints?.gap ?? endGap).origin, args)];
}

/** Whether a post of this stock has slats at both of its sides. */
function sidesOf(bays: readonly PlacedBay[], stock: string): 1 | 2 {
  const right = new Set(bays.map(({ right: post }) => post.mark.key));
  return bays.some(({ left }) => left.stock.name === stock && right.has(left.mark.key)) ? 2 : 1;
}

/** Slats on both faces lie on every post only where all are of one depth. */
function depthProblem(spec: RunSpec, bays: readonly PlacedBay[]): Problem | undefined {
  const { value: mounting, origin } = spec.infill.mounting;
  if (facesOf(mounting).length < 2) return undefined;
  const usual = spec.post.value.through.value;
  const odd = bays
    .flatMap(({ left, right }) => [left, right])
    .find(({ stock }) => stock.through.value !== usual)?.stock;
  if (!odd) return undefined;
  const shown = (ticks: Ticks) => formatLength(ticks, spec.measure);
  const args = { post: odd.name, depth: shown(odd.through.value), usual: shown(usual) };
  return geometryProblem('post-depths', origin, args);
}

function holdOf(
  spec: RunSpec,
  placed: PlacedBay,
  lines: readonly Line[],
  inner: Range,
  { z, low }: Pick<Stand, 'z' | 'low'>,
  face: ScreenFace | undefined,
): Hold {
  const { bay, left, right } = placed;
  const { infill } = spec;
  const { upright } = infill.flip;
  const x: Range = [bay.from, bay.to];
  const pocket = pocketOf(infill.mounting.value, thickestOf(lines));
  if (infill.mounting.value.kind === 'split') {
    const holders = [left, right].map(({ mark }) => ({
      keys: [mark.key, backHalfKey(mark.key)] as const,
      x: [mark.from, mark.to] as const,
    }));
    return { kind: 'split', front: centered(thickestOf(lines))[0], holders };
  }
  if (face || !(infill.cleat || pocket)) {
    const holders = [
      { key: railKey(placed, 'bottom'), x, z: [z[0], inner[0]] as const },
      { key: railKey(placed, 'top'), x, z: [inner[1], z[1]] as const },
    ];
    return { kind: 'face', face: face ?? 'front', plane: facePlane(spec, face ?? 'front'), holders };
  }
  const ends: readonly [HeldEnd, HeldEnd] = upright
    ? [
        { name: 'bottom', at: inner[0], holder: railKey(placed, 'bottom') },
        { name: 'top', at: inner[1], holder: railKey(placed, 'top') },
      ]
    : [
        {
          name: 'left',
          at: bay.from,
          holder: left.mark.key,
          lean: left.lean,
          ...footOf(infill.cleat?.value, low, bay.from, 1),
        },
        {
          name: 'right',
          at: bay.to,
          holder: right.mark.key,
          lean: right.lean,
          ...footOf(infill.cleat?.value, low, bay.to, -1),
        },
      ];
  const span = upright ? x : z;
  if (pocket) {
    const { value } = infill.mounting;
    return {
      kind: 'pocket',
      pocket,
      ...(value.kind === 'channels' ? { channel: value.channel } : {}),
      ends,
      ...(placed.faces && !upright ? { faces: [placed.faces.left, placed.faces.right] } : {}),
      span,
    };
  }
  if (!infill.cleat) throw new Error(`no cleats in ${spec.name}`);
  const [front] = centered(thickestOf(lines));
  return { kind: 'between', front, cleat: infill.cleat, ends, span };
}

/** Above a course that follows the ground, cleats end with it, across all of their width. */
function footOf(
  cleat: FlatStock | undefined,
  low: Incline | undefined,
  face: Ticks,
  inward: 1 | -1,
): Pick<HeldEnd, 'foot'> {
  if (!low || !cleat) return {};
  const inner = heightAt(low, face + inward * cleat.width.value);
  return { foot: Math.ceil(Math.max(heightAt(low, face), inner)) };
}

/** Where the face is that slats lie on: of the posts, or of the rails when slats are upright. */
export function facePlane({ infill, rail, post }: RunSpec, face: 'front' | 'back'): Ticks {
  const holder = infill.flip.upright ? rail?.value.thickness : post.value.through;
  const y = centered(holder?.value ?? 0);
  return y[face === 'front' ? 0 : 1];
}

function insideRails({ rail }: RunSpec, z: Range, racking?: Racking): Range {
  const width = Math.ceil((rail?.value.width.value ?? 0) * slopedOver(racking?.rise ?? 0));
  return [z[0] + width, z[1] - width];
}

function uprightReach(spec: RunSpec, z: Range, racking?: Racking): Reach {
  // What the tape takes of racked slats is taken at the bottom, so that their tops are in one line.
  if (!standsBetween(spec.infill.mounting.value)) return { reach: z, flush: racking ? 'end' : 'start' };
  const gap = endInset(spec.infill);
  const inner = insideRails(spec, z, racking);
  return { reach: [inner[0] + gap, inner[1] - gap], flush: 'middle' };
}

/** Whether level slats lie on a face of the posts: their boards may go on over them. */
export function liesOnPosts({ infill }: RunSpec): boolean {
  return !infill.flip.upright && facesOf(infill.mounting.value).length > 0;
}

/** Where upright slats end in grooves, those are all along the rails. */
function railsOf(
  spec: RunSpec,
  placed: PlacedBay,
  z: Range,
  racking: Racking | undefined,
  thickest: Ticks,
): readonly Piece[] {
  const { bay, left, right } = placed;
  const { rail } = spec;
  if (!rail) return [];
  const { name, width, thickness } = rail.value;
  const inner = insideRails(spec, z, racking);
  const { step } = spec.measure;
  const y = centered(thickness.value);
  return (['top', 'bottom'] as const).map((end) => {
    const about: About = {
      key: railKey(placed, end),
      label: railLabel(bayLabel(bay.number), end),
      role: 'rail',
      run: spec.name,
      bay: bay.number,
      side: 'middle',
      supports: [left.mark.key, right.mark.key],
      from: [rail.origin, rail.value.origin, spec.origin],
    };
    if (racking) {
      const top = end === 'top' ? z[1] : inner[0];
      return makeSloped(
        about,
        { name },
        { x: [bay.from, bay.to], y, top, width: width.value },
        racking,
        step,
      );
    }
    const x = cutWithin([bay.from, bay.to], step, 'middle');
    const side = end === 'top' ? 'end' : 'start';
    const groove = grooveFor(spec.infill.mounting.value, thickest, y[0], { side, from: 0 });
    return makeBoard(about, { name, ...(groove ? { grooves: [groove] } : {}) }, false, {
      x,
      y,
      z: end === 'top' ? [inner[1], z[1]] : [z[0], inner[0]],
    });
  });
}

const railKey = ({ bay }: PlacedBay, end: 'top' | 'bottom'): string => `${bay.key}/rail-${end}`;
