import { deckMembers, type Frame, type RunLayout } from '../layout/index.ts';
import type { DeckSpec } from '../model/index.ts';
import { inches, toMm } from '../units/index.ts';
import { ground, PAST_GROUND } from './ground.ts';
import { BEHIND_ALL, lineGroup } from './line-group.ts';
import { around, type Part } from './part.ts';
import { hundredth, linePath, rectPath } from './path-text.ts';
import { planAxes } from './plan-axes.ts';
import { stairsElevation } from './stair-marks.ts';
import { pastEnds } from './wall-marks.ts';

/** How far back joists are shown on the plan. */
export const DECK_SHOWN = inches(10);

/**
 * The deck under a run, seen from the front: boards, rim and ends of joists and blocking, and the ground below. Its
 * name stands at the right, where no chain goes down; so at the other end in what is `behind`, turned afterward.
 */
export function deckElevation(run: RunLayout, deck: DeckSpec, letter: number, behind: boolean): Part {
  const length = toMm(run.spec.length.value);
  const [before, after] = pastEnds(run, 1.2 * letter);
  const [x0, x1] = [0 - before, length + after];
  const [top, rim, foot] = [
    deck.surface.value,
    deck.surface.value - deck.boards.value,
    deck.surface.value - deck.boards.value - deck.joist.depth,
  ].map((z) => -toMm(z)) as [number, number, number];
  let members = '';
  for (const { kind, x } of deckMembers(deck)) {
    const [low, high] = [toMm(x[0]), toMm(x[1])];
    members += rectPath(low, rim, high, foot);
    // Blocking is crossed, as a section across the grain.
    if (kind === 'blocking') members += linePath(low, rim, high, foot) + linePath(low, foot, high, rim);
  }
  const below = deck.ground && -toMm(deck.ground.value);
  const earth =
    below === undefined
      ? []
      : [
          ground(
            run.key,
            [
              [0, below],
              [length, below],
            ],
            letter,
            pastEnds(run, PAST_GROUND * letter),
          ),
        ];
  const stairs = stairsElevation(run, deck, behind);
  return {
    groups: [
      lineGroup(
        `${run.key}/deck`,
        'ground',
        rectPath(x0, top, x1, rim) + rectPath(x0, rim, x1, foot),
        BEHIND_ALL - 2,
      ),
      lineGroup(`${run.key}/deck-joists`, 'hatch', members, BEHIND_ALL - 2),
      ...stairs.groups,
      ...earth.flatMap(({ groups }) => groups),
    ],
    labels: [
      {
        key: `${run.key}/deck/name`,
        text: `deck ${deck.name}`,
        x: hundredth(behind ? x0 : x1),
        y: hundredth((rim + foot) / 2),
        anchor: behind ? 'end' : 'start',
        turn: 0,
        shift: [behind ? -0.5 : 0.5, -0.36],
        kind: 'note',
        priority: 34,
        room: 0,
        roomFor: 'length',
      },
    ],
    bounds: around([x0, top, x1, Math.max(foot, stairs.foot)], ...earth.map(({ bounds }) => bounds)),
  };
}

/** The rim, joists and blocking from above. The deck lies at the front of the run; inside the frame, its rim behind the posts. */
export function deckPlan(run: RunLayout, deck: DeckSpec, frame: Frame): Part {
  const axes = planAxes(frame);
  const half = run.spec.post.value.through.value / 2;
  const inside = deck.hold.value === 'inside-frame';
  const rim = inside ? [half, half + deck.rim.value] : [-half - deck.rim.value, -half];
  const [inner = 0, outer = 0] = rim;
  const rect = (x0: number, x1: number, y0: number, y1: number) => {
    const corners = [axes.at(x0, y0), axes.at(x1, y0), axes.at(x1, y1), axes.at(x0, y1)];
    return corners.map((at, i) => linePath(...at, ...(corners[(i + 1) % 4] ?? at))).join('');
  };
  const length = run.spec.length.value;
  const members = deckMembers(deck).map(({ kind, x }) =>
    rect(x[0], x[1], inner - (kind === 'blocking' ? DECK_SHOWN / 2 : DECK_SHOWN), inner),
  );
  const far = [
    axes.at(0, inner - DECK_SHOWN),
    axes.at(length, inner - DECK_SHOWN),
    axes.at(0, outer),
    axes.at(length, outer),
  ];
  const [xs, ys] = [far.map(([x]) => x), far.map(([, y]) => y)];
  return {
    groups: [
      lineGroup(`${run.key}/plan/deck`, 'ground', rect(0, length, inner, outer), BEHIND_ALL),
      lineGroup(`${run.key}/plan/deck-joists`, 'hatch', members.join(''), BEHIND_ALL),
    ],
    labels: [],
    bounds: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)],
  };
}
