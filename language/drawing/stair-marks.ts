import type { Frame, RunLayout } from '../layout/index.ts';
import type { DeckSpec } from '../model/index.ts';
import { type Ticks, toMm } from '../units/index.ts';
import { BEHIND_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { hundredth, linePath, rectPath } from './path-text.ts';
import { type At, alongside, moved, planAxes } from './plan-axes.ts';
import type { Group, Label } from './view.ts';

/** Strokes of an arrow's head, in letters: along the arrow, and off it. */
const HEAD = [0.8, 0.3] as const;

/** Where the edge of a deck is, off the middle of the posts: at the outer face of its rim. */
export function nosingOf({ post, deck }: Pick<RunLayout['spec'], 'post' | 'deck'>): Ticks {
  const half = post.value.through.value / 2;
  return deck?.hold.value === 'inside-frame' ? half + deck.rim.value : 0 - half;
}

/** How far from the middle of the posts the stairs of a deck reach; 0 without stairs. */
export function stairsReach({ post, deck }: Pick<RunLayout['spec'], 'post' | 'deck'>): Ticks {
  const flights = (deck?.stairs ?? []).map(({ risers, going }) => (risers - 1) * going);
  return flights.length === 0 ? 0 : nosingOf({ post, deck }) + Math.max(...flights);
}

/** Steps of stairs as one sees them from behind; dashed where the deck hides them. `foot` is the lowest, down the sheet. */
export function stairsElevation(
  run: RunLayout,
  { stairs = [], surface }: DeckSpec,
  behind: boolean,
): { readonly groups: readonly Group[]; readonly foot: number } {
  const top = 0 - toMm(surface.value);
  let [path, foot] = ['', Number.NEGATIVE_INFINITY];
  for (const { from, to, down, risers } of stairs) {
    const levels = Array.from({ length: risers + 1 }, (_, step) => top + (toMm(down) * step) / risers);
    for (const [step, high] of levels.slice(0, -1).entries())
      path += rectPath(toMm(from), high, toMm(to), levels[step + 1] ?? high);
    foot = Math.max(foot, top + toMm(down));
  }
  const groups =
    path === '' ? [] : [lineGroup(`${run.key}/stairs`, behind ? 'slat-far' : 'hidden', path, BEHIND_ALL - 3)];
  return { groups, foot };
}

/** Nosings and sides of stairs from above, and an arrow that points the way down. Undefined for a deck without. */
export function stairsPlan(run: RunLayout, frame: Frame, letter: number): Part | undefined {
  const { spec } = run;
  const stairs = spec.deck?.stairs ?? [];
  if (stairs.length === 0) return undefined;
  const axes = planAxes(frame);
  const edge = nosingOf(spec);
  let [treads, arrows] = ['', ''];
  const points: At[] = [];
  const labels = stairs.map(({ from, to, risers, going }, index): Label => {
    const end = edge + (risers - 1) * going;
    for (let step = 0; step < risers; step++)
      treads += linePath(...axes.at(from, edge + step * going), ...axes.at(to, edge + step * going));
    for (const x of [from, to]) treads += linePath(...axes.at(x, edge), ...axes.at(x, end));
    points.push(axes.at(from, end), axes.at(to, end), axes.at(from, edge), axes.at(to, edge));
    const middle = (from + to) / 2;
    const [tail, head] = [axes.at(middle, edge), axes.at(middle, end)];
    const back = moved(head, axes.back, -HEAD[0] * letter);
    arrows += linePath(...tail, ...head);
    for (const side of [-1, 1])
      arrows += linePath(...moved(back, axes.along, side * HEAD[1] * letter), ...head);
    const [x, y] = moved(axes.at(middle, end), axes.back, 0.8 * letter);
    return {
      ...alongside(axes.back),
      key: `${run.key}/plan/stairs-${index + 1}`,
      text: `down ${risers} ${risers === 1 ? 'step' : 'steps'}`,
      x: hundredth(x),
      y: hundredth(y),
      kind: 'note',
      priority: 14,
      room: 0,
      roomFor: 'length',
    };
  });
  return {
    groups: [
      lineGroup(`${run.key}/plan/stairs`, 'hatch', treads, BEHIND_ALL),
      lineGroup(`${run.key}/plan/stairs-down`, 'dimension', arrows, BEHIND_ALL),
    ],
    labels,
    bounds: [
      Math.min(...points.map(([x]) => x)),
      Math.min(...points.map(([, y]) => y)),
      Math.max(...points.map(([x]) => x)),
      Math.max(...points.map(([, y]) => y)),
    ],
  };
}
