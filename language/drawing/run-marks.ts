import type { RunLayout } from '../layout/index.ts';
import { toMm } from '../units/index.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { circlePath, hundredth } from './path-text.ts';
import { MIDDLE } from './place-labels.ts';
import type { Label } from './view.ts';

const NOTE = {
  anchor: 'middle',
  turn: 0,
  kind: 'note',
  roomFor: 'length',
} as const;

/** Numbers of posts and bays, names of gates, under the ground. `ground` and `foot` are heights on the sheet. */
export function runMarks(run: RunLayout, ground: number, foot: number, letter: number): Part {
  const row = foot + 1.7 * letter;
  const posts = run.posts.map(
    (post): Label => ({
      ...NOTE,
      key: `${post.key}/number`,
      text: String(post.number),
      x: hundredth(toMm((post.from + post.to) / 2)),
      y: hundredth(row),
      shift: [0, -MIDDLE],
      kind: 'mark',
      priority: 35,
      room: 0,
    }),
  );
  const bays = run.bays.flatMap((bay): Label[] => {
    const leaf = run.leaves.find((one) => one.bay === bay.number);
    const common = {
      ...NOTE,
      x: hundredth(toMm((bay.from + bay.to) / 2)),
      y: hundredth(ground),
      room: hundredth(toMm(bay.clear)),
    };
    if (!leaf) {
      const key = `${bay.key}/number`;
      return [{ ...common, key, text: `bay ${bay.number}`, shift: [0, -2], priority: 50 }];
    }
    const gate = leaf.spec.half?.of ?? leaf.gate;
    const key = `${run.key}/gate-${gate}`;
    const opens = leaf.spec.opensTo?.value;
    return [
      { ...common, key: `${key}/name`, text: `gate ${gate}`, shift: [0, -2], priority: 33 },
      ...(opens === undefined
        ? []
        : [
            {
              ...common,
              key: `${key}/opens`,
              text: `opens to ${opens}`,
              shift: [0, -3.3] as const,
              priority: 51,
            },
          ]),
    ];
  });
  return {
    groups: [],
    labels: [...posts, ...bays],
    bounds: [0, ground, toMm(run.spec.length.value), Math.max(row + letter, ground + 4 * letter)],
  };
}

/** A dot on the line of posts where station 0 is: where the tape is hooked. */
export function stationZero(prefix: string, line: number, letter: number): Part {
  return {
    groups: [
      lineGroup(`${prefix}/station-0`, 'scale-bar', circlePath(0, line, 0.24 * letter), BEFORE_ALL - 1),
    ],
    labels: [
      {
        ...NOTE,
        key: `${prefix}/station-0/text`,
        text: 'station 0',
        anchor: 'end',
        x: 0,
        y: hundredth(line),
        shift: [-0.9, -MIDDLE],
        priority: 34,
        room: 0,
      },
    ],
    bounds: [-6 * letter, line - letter, 0, line + letter],
  };
}
