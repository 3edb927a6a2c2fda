import type { Frame, RunLayout } from '../layout/index.ts';
import { formatDegrees } from '../units/index.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { circlePath, hundredth, linePath } from './path-text.ts';
import { type At, moved, planAxes } from './plan-axes.ts';
import type { Label } from './view.ts';

const TEXT = { anchor: 'middle', turn: 0, room: 0, roomFor: 'length' } as const;

/** The inside angle where a run comes after another, written in it; nothing where it goes straight on. */
export function cornerAngle(run: RunLayout, frame: Frame, letter: number): readonly Label[] {
  const { start } = run.joints;
  const first = run.posts[0];
  if (!start || !first || start.turn === 0) return [];
  const axes = planAxes(frame);
  const before = planAxes({ origin: frame.origin, bearing: frame.bearing + start.turn });
  const inward: At = [axes.along[0] - before.along[0], axes.along[1] - before.along[1]];
  const long = Math.hypot(...inward);
  const middle = axes.at((first.from + first.to) / 2, (start.corner.depth[0] + start.corner.depth[1]) / 2);
  // Sharp corners leave room for it only farther in.
  const inside = 180 - Math.abs(start.turn);
  const off = Math.min(14, 4.8 / Math.sin((inside * Math.PI) / 360));
  const [x, y] = moved(middle, [inward[0] / long, inward[1] / long], off * letter);
  return [
    {
      ...TEXT,
      key: `${run.key}/plan/angle`,
      text: formatDegrees(inside),
      x: hundredth(x),
      y: hundredth(y),
      shift: [0, -0.36],
      kind: 'dimension',
      priority: 11,
    },
  ];
}

/** The point the job's places are measured from. */
export function datumPoint(letter: number): Part {
  const r = 0.5 * letter;
  const arm = 0.9 * letter;
  const path = circlePath(0, 0, r) + linePath(-arm, 0, arm, 0) + linePath(0, -arm, 0, arm);
  return {
    groups: [lineGroup('%plan/datum', 'dimension', path, BEFORE_ALL - 1)],
    labels: [
      {
        ...TEXT,
        key: '%plan/datum',
        text: 'datum point',
        anchor: 'end',
        x: 0,
        y: 0,
        shift: [-1.3, -1.8],
        kind: 'note',
        priority: 13,
      },
    ],
    bounds: [-8.5 * letter, -arm, arm, 2.2 * letter],
  };
}

/** A plain arrow to the north, beside the datum point, so that it stays where it is whatever the runs do. */
export function northArrow(letter: number): Part {
  const x = -3 * letter;
  const [top, foot] = [-5 * letter, -0.6 * letter];
  const path =
    linePath(x, foot, x, top) +
    linePath(x, top, x - 0.6 * letter, top + 1.5 * letter) +
    linePath(x, top, x + 0.6 * letter, top + 1.5 * letter);
  return {
    groups: [lineGroup('%plan/north', 'tick', path, BEFORE_ALL)],
    labels: [
      {
        ...TEXT,
        key: '%plan/north',
        text: 'N',
        x: hundredth(x),
        y: hundredth(top),
        shift: [0, 0.5],
        kind: 'note',
        priority: 5,
      },
    ],
    bounds: [x - letter, top - 1.6 * letter, x + letter, foot],
  };
}
