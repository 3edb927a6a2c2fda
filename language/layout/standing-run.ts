import type { Problem, RunSpec } from '../model/index.ts';
import { formatLength } from '../units/index.ts';
import { alternateProblem } from './alternate-boards.ts';
import { asBuilt, roomOf } from './as-built.ts';
import { fillBays } from './fill-bays.ts';
import { standsOf } from './follow-ground.ts';
import type { Joints } from './joints.ts';
import { type PlacedPosts, placePosts } from './posts.ts';
import { geometryProblem } from './problems.ts';
import { sizeProblems } from './sizes.ts';

/** A run whose posts stand: as planned, or as measured. */
export interface StandingRun {
  /** With its length and openings as they are. */
  readonly spec: RunSpec;
  readonly placed: PlacedPosts;
  readonly problems: readonly Problem[];
}

/** Places the posts of a run, where they were measured if they were; or tells why none can be placed. */
export function standingRun(stated: RunSpec, joints: Joints): StandingRun | readonly Problem[] {
  const sizes = sizeProblems(stated);
  if (sizes.length > 0) return sizes;
  const corner = cornerProblems(stated, joints);
  if (corner.length > 0) return corner;
  const mixed = alternateProblem(stated.infill);
  if (mixed) return [mixed];
  const planned = placePosts(stated, joints);
  if (!('posts' in planned)) return planned;
  if (!stated.measured) return { spec: stated, placed: planned, problems: [] };

  const infills = fillBays(stated, planned, joints.lines);
  const { bottom, height } = infills.ends;
  const ground = stated.ground.value;
  const built = asBuilt(stated, planned, standsOf(stated, planned.bays, infills), [
    ground + bottom,
    ground + height,
  ]);
  const closed = built.placed.bays.find(({ bay }) => roomOf(bay)[1] - roomOf(bay)[0] <= 0);
  if (!closed) return built;
  const own = stated.measured.bays.find(({ number }) => number === closed.bay.number);
  const shown = (ticks: number) => formatLength(ticks, stated.measure);
  const args = { bay: closed.bay.number, clear: shown(0), needs: shown(stated.measure.step) };
  return [geometryProblem('bay-too-narrow', (own ?? stated.measured).origin, args)];
}

function cornerProblems(spec: RunSpec, { start }: Joints): readonly Problem[] {
  if (!start?.trouble || spec.placement?.kind !== 'after') return [];
  const { corner } = spec.placement;
  const args = { first: start.after, second: spec.name, corner: corner.value, why: start.trouble };
  return [geometryProblem('corner-slats', corner.origin, args)];
}
