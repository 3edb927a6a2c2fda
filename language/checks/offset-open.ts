import { bridgeJoint, isInBay, type Piece, type RunLayout, spellAfter } from '../layout/index.ts';
import type { Bridge, FlatStock, Job, Placement, RunSpec } from '../model/index.ts';
import { ceilToStep, formatLength, inches, mm } from '../units/index.ts';
import { GEOMETRY, type LimitedLayoutCheck, thresholdOf } from './define.ts';
import type { Finding, Fix } from './finding.ts';
import { bayBeside } from './joints.ts';
import { replaceAt } from './written-change.ts';

type Apart = Extract<Placement, { kind: 'on' }>;

/** An offset between two runs that nothing closes, so that one looks through beside the slats. */
export const offsetOpen: LimitedLayoutCheck = {
  kind: {
    code: 'offset-open',
    severity: 'information',
    stage: 'layout',
    basis: GEOMETRY,
    threshold: {
      is: 'length',
      imperial: inches(1 / 8),
      metric: mm(3),
      says: 'opening between two runs in planes apart from which on one is told',
    },
    message: (a) =>
      `Between ${a.first} and ${a.second} the offset is open by ${a.opening}: who looks past the posts sees through there. ` +
      'Close it by a return, a filler or a panel, or leave it so if that is meant.',
  },
  check: (layout, job) => {
    const limit = thresholdOf(job, offsetOpen.kind);
    const byName = new Map(layout.runs.map((run) => [run.spec.name, run]));
    return layout.runs.flatMap((second): Finding[] => {
      const { placement } = second.spec;
      if (placement?.kind !== 'on' || !placement.step || placement.bridge || !second.sound) return [];
      const first = byName.get(placement.run);
      const opening = first?.sound ? openingOf(first, second) : 0;
      if (!first || opening < limit) return [];
      return [
        {
          code: 'offset-open',
          at: placement.origin,
          args: {
            first: first.spec.name,
            second: second.spec.name,
            opening: formatLength(Math.round(opening), job.measure.value),
          },
          fixes: bridges(first, second, placement, job),
        },
      ];
    });
  },
};

/** Shortest way on the plan between what stands at the end of one run and at the beginning of the other; boxes along the runs. */
function openingOf(first: RunLayout, second: RunLayout): number {
  const { placement } = second.spec;
  if (placement?.kind !== 'on') return 0;
  const by = [first.spec.length.value + placement.gap.value, placement.step?.value ?? 0];
  const [one, other] = [boxAt(first, 'last'), boxAt(second, 'first')];
  if (!one || !other) return 0;
  const apart = ([0, 1] as const).map((axis) => {
    const off = by[axis] ?? 0;
    return Math.max(0, other[axis][0] + off - one[axis][1], one[axis][0] - other[axis][1] - off);
  });
  return Math.hypot(...apart);
}

type Box = readonly [x: readonly [number, number], y: readonly [number, number]];

/** Of the post there, with the slats that lie on its faces. */
function boxAt(run: RunLayout, end: 'first' | 'last'): Box | undefined {
  const key = (end === 'first' ? run.posts[0] : run.posts.at(-1))?.key;
  const bay = bayBeside(run, end);
  // All of it, where it is of two halves.
  const post = [...run.borrowed, ...run.pieces].filter(
    (piece) => piece.role === 'post' && (piece.key === key || piece.key.startsWith(`${key}/`)),
  );
  if (post.length === 0) return undefined;
  const faces = run.pieces.filter(
    (piece) => piece.role === 'slat' && piece.side !== 'middle' && bay !== undefined && isInBay(piece, bay),
  );
  const range = (axis: 0 | 1, pieces: readonly Piece[]) => {
    const all = pieces.flatMap(({ solid }) => solid.vertices.map((vertex) => vertex[axis]));
    return [Math.min(...all), Math.max(...all)] as const;
  };
  return [range(0, post), range(1, [...post, ...faces])];
}

/** Every kind of bridge that can be built there, as the text states it. */
function bridges(first: RunLayout, second: RunLayout, placement: Apart, job: Job): readonly Fix[] {
  const { spec } = second;
  const { origin } = placement;
  const can = (closed: Apart): boolean => {
    const joint = bridgeJoint(first, { ...spec, placement: closed });
    return joint !== undefined && joint.trouble === undefined;
  };
  const asReturn: Apart = { ...placement, bridge: { kind: 'return', origin } };
  const board = boardsOf(spec, job).find((each) => can({ ...placement, bridge: fillerOf(each, origin) }));
  const clear = spec.measure.step * Math.round((second.bays[0]?.clear ?? 0) / spec.measure.step);
  const off = Math.abs(placement.step?.value ?? 0);
  const on =
    placement.gap.value > 0 ? placement.gap.value : Math.max(clear, ceilToStep(off, spec.measure.step));
  const asPanel: Apart = {
    ...placement,
    gap: { value: on, origin: { ...origin, why: 'stated' } },
    bridge: { kind: 'panel', origin },
  };
  const fix = (title: string, closed: Apart): Fix => ({
    title,
    changes: [replaceAt(origin, spellAfter(closed, spec.measure))],
  });
  return [
    ...(can(asReturn) ? [fix('Close it by a return, slats square to both runs', asReturn)] : []),
    ...(board
      ? [fix(`Close it by a filler of ${board.name}`, { ...placement, bridge: fillerOf(board, origin) })]
      : []),
    ...(can(asPanel)
      ? [fix(`Close it by a panel ${formatLength(on, spec.measure)} long, at an angle`, asPanel)]
      : []),
  ];
}

function fillerOf(board: FlatStock, origin: Apart['origin']): Bridge {
  return { kind: 'filler', board: { value: board, origin }, origin };
}

/** The run's own slats first, then every board of the file, narrowest first. */
function boardsOf({ infill }: RunSpec, job: Job): readonly FlatStock[] {
  const own = infill.pattern.repeat.map(({ value }) => value);
  const all = job.stock.flatMap((stock) => (stock.kind === 'board' || stock.kind === 'rip' ? [stock] : []));
  return [...own, ...all.sort((a, b) => a.width.value - b.width.value)];
}
