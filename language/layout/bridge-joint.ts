import { type Bridge, levelAt, type RunSpec } from '../model/index.ts';
import { LONGEST, type Ticks } from '../units/index.ts';
import { reachAt } from './bay-edges.ts';
import { fillerBoards } from './bridge-filler.ts';
import { panelLine, panelTrouble } from './bridge-panel.ts';
import type { Flat } from './corner.ts';
import { fixedPosts } from './fixed-posts.ts';
import { roomBetween } from './holds.ts';
import type { Range } from './infill.ts';
import { type SharedPost, sharedPost } from './joints.ts';
import type { RunLayout } from './layout.ts';
import { thickestSlat } from './lines.ts';
import { postDepth } from './post-pieces.ts';

/** What a run needs to know of the one before it, to close the offset between their planes. */
export interface BridgeJoint {
  readonly after: string;
  /** Where this run begins, in the frame of the run before. */
  readonly at: Flat;
  /** The last post of that run, in its own frame. */
  readonly post: SharedPost;
  /** Bottom and top of what fills its last bay, and the ground at its end, from the datum. */
  readonly reach: Range;
  readonly ground: Ticks;
  /** Whether posts stand one behind the other, slats square to the runs between them; else side by side. */
  readonly inLine: boolean;
  readonly trouble?: BridgeTrouble;
}

/** Why an offset is not closed as asked; `needs` and `room` are lengths, `on` the space that would do. */
export interface BridgeTrouble {
  readonly why:
    | 'upright'
    | 'turns'
    | 'split'
    | 'thickness'
    | 'closed'
    | 'space'
    | 'wide'
    | 'no-space'
    | 'cleats'
    | 'narrow'
    | 'sharp'
    | 'depth'
    | 'heights';
  readonly needs?: Ticks;
  readonly room?: Ticks;
  readonly on?: Ticks;
}

/** Where two posts stand beside an offset, in the frame of the run that follows. */
export interface Offset {
  /** Through the runs. */
  readonly before: Range;
  readonly own: Range;
  /** 1 where the run that follows stands farther back, -1 where it stands farther forward. */
  readonly way: 1 | -1;
  /** From post to post, square to the runs; less than nothing where they stand side by side. */
  readonly clear: Ticks;
}

/** How `second` meets the run it comes after where it closes the offset; that one is laid out. */
export function bridgeJoint(first: RunLayout, second: RunSpec): BridgeJoint | undefined {
  const { placement } = second;
  const post = sharedPost(first);
  const own = firstPost(second);
  if (placement?.kind !== 'on' || !placement.bridge || !placement.step || !post || !own) return undefined;
  const step = placement.step.value;
  const offset = offsetOf([post.y[0] - step, post.y[1] - step], own.y, step);
  const stated = placement.gap.origin.why === 'stated' ? placement.gap.value : undefined;
  const along = { post: post.x[1] - post.x[0], own: own.along };
  const stand = standOf(placement.bridge, { first: first.spec, second, offset, stated, along });
  const last = first.bays.at(-1);
  const x = stand.inLine ? post.x[0] + Math.floor((along.post - along.own) / 2) : post.x[1] + stand.on;
  return {
    after: placement.run,
    at: [x, step],
    post,
    reach: (last && reachAt(first, last.number, last.to)) ?? [first.bottom, first.top],
    ground: levelAt(first.groundLine, post.x[1]),
    inLine: stand.inLine,
    ...(stand.trouble ? { trouble: stand.trouble } : {}),
  };
}

/** What the run before an offset needs to know of the one that closes it. */
export interface BridgedEnd {
  /** 1 where that run stands farther back, -1 where it stands farther forward. */
  readonly way: 1 | -1;
  /** Taken by a panel along the runs, which the last post bears half the wind of. */
  readonly space: Ticks;
}

/** How `second` closes the offset from the run before it. */
export function bridgedEnd({ placement }: RunSpec): BridgedEnd | undefined {
  if (placement?.kind !== 'on' || !placement.bridge || !placement.step) return undefined;
  const { bridge, step, gap } = placement;
  const way = step.value > 0 ? 1 : -1;
  return { way, space: bridge.kind === 'panel' ? gap.value : 0 };
}

export function offsetOf(before: Range, own: Range, step: Ticks): Offset {
  const way = step > 0 ? 1 : -1;
  return { before, own, way, clear: way === 1 ? own[0] - before[1] : before[0] - own[1] };
}

function firstPost(spec: RunSpec): { readonly along: Ticks; readonly y: Range } | undefined {
  const fixed = fixedPosts(spec, {});
  const post = 'posts' in fixed ? fixed.posts[0] : undefined;
  return post && { along: post.to - post.from, y: postDepth(spec, post) };
}

interface Around {
  readonly first: RunSpec;
  readonly second: RunSpec;
  readonly offset: Offset;
  /** The space between the runs, where it is stated. */
  readonly stated: Ticks | undefined;
  readonly along: { readonly post: Ticks; readonly own: Ticks };
}

interface Standing {
  readonly inLine: boolean;
  /** From face to face of posts that stand side by side. */
  readonly on: Ticks;
  readonly trouble?: BridgeTrouble;
}

function standOf(bridge: Bridge, around: Around): Standing {
  // Slats stand between its halves at the very side that would hold something.
  if ([around.first, around.second].some(({ infill }) => infill.mounting.value.kind === 'split'))
    return { inLine: false, on: around.stated ?? 0, trouble: { why: 'split' } };
  switch (bridge.kind) {
    case 'return':
      return returnStand(around);
    case 'filler': {
      const { thickness, width } = bridge.board.value;
      const beside = besideBy(around, thickness.value);
      if (beside.trouble || fillerBoards(around.offset, width.value, around.second.measure.step))
        return beside;
      return { ...beside, trouble: { why: 'wide', needs: around.offset.clear } };
    }
    case 'panel':
      return panelStand(around);
  }
}

/** Between the posts where slats of both runs are held so and there is room; else between their sides. */
function returnStand(around: Around): Standing {
  const { first, second, offset, stated, along } = around;
  const { infill } = second;
  if (infill.flip.upright) return { inLine: false, on: stated ?? 0, trouble: { why: 'upright' } };
  if (infill.mounting.value.kind === 'alternate')
    return { inLine: false, on: stated ?? 0, trouble: { why: 'turns' } };
  const thicknesses = new Set(infill.pattern.repeat.map(({ value }) => value.thickness.value));
  const thickest = thickestSlat(infill);
  const between = [first, second].every((run) => run.infill.mounting.value.kind === 'between');
  const held = infill.cleat !== undefined && infill.endGap.value < infill.cleat.value.width.value;
  if (
    stated === undefined &&
    between &&
    held &&
    thickest < Math.min(along.post, along.own) &&
    offset.clear >= roomBetween(infill)
  )
    return { inLine: true, on: 0 };
  const beside = besideBy(around, thickest);
  if (beside.trouble || thicknesses.size < 2) return beside;
  return { ...beside, trouble: { why: 'thickness' } };
}

/** Posts side by side, as far from one another as what lies on the side of both is thick. */
function besideBy({ stated, offset }: Around, thickness: Ticks): Standing {
  if (stated === undefined && offset.clear <= 0) return { inLine: false, on: 0, trouble: { why: 'closed' } };
  const on = stated ?? thickness;
  if (on === thickness) return { inLine: false, on };
  return { inLine: false, on, trouble: { why: 'space', needs: thickness, room: on, on: thickness } };
}

function panelStand({ second, offset, stated }: Around): Standing {
  const on = stated ?? 0;
  const tell = (trouble: BridgeTrouble): Standing => ({ inLine: false, on, trouble });
  if (second.infill.flip.upright) return tell({ why: 'upright' });
  if (second.infill.mounting.value.kind === 'alternate') return tell({ why: 'turns' });
  if (!second.infill.cleat) return tell({ why: 'cleats' });
  const { step } = second.measure;
  const troubleAt = (space: Ticks) => panelTrouble(second, offset, panelLine(offset, space));
  const trouble = on > 0 ? troubleAt(on) : undefined;
  if (on > 0 && !trouble) return { inLine: false, on };
  const does = leastMark((space) => !troubleAt(space), step);
  if (does === undefined) return tell({ why: trouble ?? troubleAt(LONGEST) ?? 'no-space', room: on });
  return tell({ why: trouble ?? 'no-space', room: on, needs: does, on: does });
}

/**
 * The least mark of the tape that does, of what does at every greater one too: farther on a panel only stands flatter.
 * Undefined where none does.
 */
function leastMark(does: (at: Ticks) => boolean, step: Ticks): Ticks | undefined {
  let marks = 1;
  while (!does(marks * step)) {
    if (marks * step > LONGEST) return undefined;
    marks *= 2;
  }
  let short = Math.floor(marks / 2);
  while (marks - short > 1) {
    const middle = Math.floor((short + marks) / 2);
    if (does(middle * step)) marks = middle;
    else short = middle;
  }
  return marks * step;
}
