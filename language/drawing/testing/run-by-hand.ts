/** Runs laid out by hand, for the tests of this folder: no fit, no cut lists, only what is drawn. */
import type { Bay, Leaf, Piece, PostMark, Role, RunLayout } from '../../layout/index.ts';
import type {
  FlatStock,
  GateSpec,
  InfillSpec,
  Origin,
  PostStock,
  RunSpec,
  Sourced,
} from '../../model/index.ts';
import { IMPERIAL, inches, type Measure, type Ticks } from '../../units/index.ts';

export interface HandGate {
  readonly bay: number;
  readonly name: string;
  readonly hinges: 'left' | 'right';
  readonly upright: boolean;
}

export interface HandRun {
  readonly name?: string;
  readonly side?: string;
  readonly measure?: Measure;
  /** Clear widths of the bays. */
  readonly bays: readonly Ticks[];
  readonly post?: Ticks;
  readonly bottom?: Ticks;
  readonly widths: readonly Ticks[];
  readonly gap: Ticks;
  readonly upright?: boolean;
  readonly onFace?: boolean;
  readonly ground?: Ticks;
  readonly tops?: Ticks;
  readonly gate?: HandGate;
}

const origin: Origin = { uri: 'file:///by-hand.slat', path: 'run', why: 'stated' };
const said = <T>(value: T): Sourced<T> => ({ value, origin });
const board: FlatStock = {
  name: 'board',
  origin,
  kind: 'board',
  lengths: [],
  width: said(inches(5.5)),
  thickness: said(inches(0.75)),
};
const postStock: PostStock = {
  name: 'post',
  origin,
  kind: 'post',
  lengths: [],
  along: said(inches(3.5)),
  through: said(inches(3.5)),
};

function infill(upright: boolean, onFace: boolean, gap: Ticks): InfillSpec {
  const pattern = {
    name: 'plain',
    origin,
    repeat: [said(board)],
    gap: said(gap),
    edgeGap: said(0),
    end: said({ kind: 'anywhere' } as const),
  };
  return {
    pattern,
    flip: { upright, topEdge: 'left', over: false, endForEnd: false, origin },
    fit: { remedies: [], origin },
    mounting: said(onFace ? { kind: 'face', face: 'front' } : { kind: 'between' }),
    endGap: said(0),
    fill: origin,
  };
}

type Span = readonly [Ticks, Ticks];

/** A box of a piece. */
export function boxPiece(
  key: string,
  role: Role,
  [x0, x1]: Span,
  [y0, y1]: Span,
  [z0, z1]: Span,
  rest: Partial<Piece> = {},
): Piece {
  const cut = {
    stock: 'board',
    width: 1,
    thickness: 1,
    ripped: false,
    longPoint: 1,
    shortPoint: 1,
    ends: [
      { miter: 0, bevel: 0 },
      { miter: 0, bevel: 0 },
    ] as const,
  };
  const end = (x: Ticks) =>
    [
      [x, y0, z0],
      [x, y1, z0],
      [x, y1, z1],
      [x, y0, z1],
    ] as const;
  const solid = { vertices: [...end(x0), ...end(x1)] };
  return {
    key,
    label: key,
    role,
    run: key.split('/')[0] ?? '',
    side: 'middle',
    cut,
    solid,
    supports: [],
    from: [],
    ...rest,
  };
}

/** Slat after slat of `widths` with gaps, from 0 on; the last may end a hair before `reach`. */
export function slatSpans(widths: readonly Ticks[], gap: Ticks, reach: Ticks): Span[] {
  const spans: Span[] = [];
  let at = 0;
  for (let i = 0; at < reach && i < 500; i++) {
    const width = widths[i % widths.length] ?? reach;
    if (at + width > reach) break;
    spans.push([at, at + width]);
    at += width + gap;
  }
  return spans;
}

export function runByHand(hand: HandRun): RunLayout {
  const name = hand.name ?? 'bank';
  const measure = hand.measure ?? IMPERIAL;
  const post = hand.post ?? inches(3.5);
  const half = post / 2;
  const ground = hand.ground ?? 0;
  const upright = hand.upright ?? false;
  const onFace = hand.onFace ?? false;
  const bottom = ground + (hand.bottom ?? inches(2));
  const reach = inches(70);
  const level = slatSpans(hand.widths, hand.gap, reach);
  const high = upright ? reach : (level[level.length - 1]?.[1] ?? 0);
  const top = bottom + high;
  const postTop = top + (hand.tops ?? 0);
  const foot = ground - inches(30);
  const thick = inches(0.75);
  const slatY: Span = onFace ? [-half - thick, -half] : [-thick / 2, thick / 2];
  const posts: PostMark[] = [];
  const bays: Bay[] = [];
  const pieces: Piece[] = [];
  let x = 0;
  for (const [i, clear] of [...hand.bays, 0].entries()) {
    const number = i + 1;
    const key = `${name}/p${number}`;
    posts.push({ number, key, from: x, to: x + post });
    pieces.push(boxPiece(key, 'post', [x, x + post], [-half, half], [foot, postTop]));
    x += post;
    if (i === hand.bays.length) break;
    const gate = hand.gate?.bay === number ? hand.gate.name : undefined;
    bays.push({ number, key: `${name}/b${number}`, from: x, to: x + clear, clear, gate });
    if (gate === undefined) pieces.push(...bayPieces(`${name}/b${number}`, number, x, x + clear));
    x += clear;
  }

  function bayPieces(key: string, bay: number, from: Ticks, to: Ticks): Piece[] {
    const own: Piece[] = [];
    const spans = upright ? slatSpans(hand.widths, hand.gap, to - from) : level;
    for (const [i, [a, b]] of spans.entries()) {
      const c = `${key}/c${String(i + 1).padStart(2, '0')}`;
      const rest = { bay, course: i + 1, side: onFace ? ('front' as const) : ('middle' as const) };
      own.push(
        upright
          ? boxPiece(c, 'slat', [from + a, from + b], slatY, [bottom, top], rest)
          : boxPiece(
              c,
              'slat',
              onFace ? [from - half, to + half] : [from, to],
              slatY,
              [top - b, top - a],
              rest,
            ),
      );
    }
    for (const side of onFace || upright ? [] : (['front', 'back'] as const)) {
      const y: Span = side === 'front' ? [-1.5 * thick, -0.5 * thick] : [0.5 * thick, 1.5 * thick];
      const rest = { bay, side };
      own.push(
        boxPiece(`${key}/cleat-left-${side}`, 'cleat', [from, from + thick], y, [bottom, top], rest),
        boxPiece(`${key}/cleat-right-${side}`, 'cleat', [to - thick, to], y, [bottom, top], rest),
      );
    }
    if (upright) {
      const rail = inches(3.5);
      own.push(
        boxPiece(`${key}/rail-bottom`, 'rail', [from, to], [-thick, thick], [bottom, bottom + rail], { bay }),
        boxPiece(`${key}/rail-top`, 'rail', [from, to], [-thick, thick], [top - rail, top], { bay }),
      );
    }
    return own;
  }

  const leaves: Leaf[] = [];
  const gateBay = bays.find((bay) => bay.gate !== undefined);
  if (hand.gate && gateBay) {
    const { leaf, pieces: own } = leafByHand(hand, hand.gate, gateBay, name, bottom, top);
    leaves.push(leaf);
    pieces.push(...own);
  }
  const spec: RunSpec = {
    name,
    origin,
    seenFrom: said(hand.side ?? 'garden'),
    length: said(x),
    post: said(postStock),
    spacing: said({ kind: 'bays', count: bays.length }),
    tops: said(hand.tops ?? 0),
    height: said({ low: top - ground, high: top - ground }),
    bottom: said({ low: bottom - ground, high: bottom - ground }),
    ground: said(ground),
    infill: infill(upright, onFace, hand.gap),
    gates: leaves.map((leaf) => leaf.spec),
    measure,
  };
  return {
    key: name,
    hash: '',
    spec,
    joints: {},
    borrowed: [],
    temporary: { pieces: [], braced: [], blocked: [] },
    posts,
    bays,
    postMoves: [],
    walls: [],
    leans: new Map(),
    offs: new Map(),
    groundLine: [
      { x: 0, z: ground },
      { x, z: ground },
    ],
    edges: new Map(),
    reach: new Map(bays.map(({ number }) => [number, [bottom, top]])),
    ground,
    bottom,
    top,
    postTop,
    embed: said(inches(30)),
    courses: new Map(),
    leaves,
    pieces,
    openings: [],
    fits: [],
    problems: [],
    sound: true,
  };
}

function leafByHand(
  hand: HandRun,
  gate: HandGate,
  bay: Bay,
  run: string,
  bottom: Ticks,
  top: Ticks,
): { leaf: Leaf; pieces: Piece[] } {
  const key = `${run}/${gate.name}`;
  const [hingeGap, latchGap] = [inches(0.25), inches(0.5)];
  const left = gate.hinges === 'left';
  const x0 = bay.from + (left ? hingeGap : latchGap);
  const x1 = bay.to - (left ? latchGap : hingeGap);
  const stock = inches(3.5);
  const deep = inches(1.5);
  const thick = inches(0.75);
  const frame: Span = [0, deep];
  const rest = { gate: gate.name };
  const stile = (side: string, x: Span) =>
    boxPiece(`${key}/stile-${side}`, 'stile', x, frame, [bottom, top], rest);
  const inner: Span = [x0 + stock, x1 - stock];
  const rail = (side: string, z: Span) => boxPiece(`${key}/rail-${side}`, 'rail', inner, frame, z, rest);
  const [low, high] = [bottom + stock, top - stock];
  const [hingeX, latchX] = left ? inner : [inner[1], inner[0]];
  const toward = left ? 1 : -1;
  // A brace with its ends cut to the corners, so that it does not fill its box.
  const face = (y: Ticks) =>
    [
      [hingeX, y, low],
      [hingeX + toward * stock, y, low],
      [latchX, y, high],
      [latchX - toward * stock, y, high],
    ] as const;
  const brace: Piece = {
    ...boxPiece(`${key}/brace`, 'brace', inner, frame, [low, high], rest),
    solid: { vertices: [...face(0), ...face(deep)] },
  };
  const spans = slatSpans(hand.widths, hand.gap, gate.upright ? x1 - x0 : top - bottom);
  const slats = spans.map(([a, b], i) =>
    boxPiece(
      `${key}/c${String(i + 1).padStart(2, '0')}`,
      'slat',
      gate.upright ? [x0 + a, x0 + b] : [x0, x1],
      [-thick, 0],
      gate.upright ? [bottom, top] : [top - b, top - a],
      { ...rest, course: i + 1, side: 'front' },
    ),
  );
  const spec: GateSpec = {
    name: gate.name,
    origin,
    opening: said(bay.clear),
    station: said(bay.from),
    hinges: said(gate.hinges),
    opensTo: said('garden'),
    hingeGap: said(hingeGap),
    latchGap: said(latchGap),
    post: said(postStock),
    frame: said(board),
    infill: infill(gate.upright, true, hand.gap),
  };
  const leaf: Leaf = {
    gate: gate.name,
    spec,
    x0,
    x1,
    z0: bottom,
    z1: top,
    width: x1 - x0,
    height: top - bottom,
    bay: bay.number,
  };
  return {
    leaf,
    pieces: [
      stile('hinge', left ? [x0, inner[0]] : [inner[1], x1]),
      stile('latch', left ? [inner[1], x1] : [x0, inner[0]]),
      rail('bottom', [bottom, low]),
      rail('top', [high, top]),
      brace,
      ...slats,
    ],
  };
}
