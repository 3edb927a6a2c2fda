import type {
  Band,
  EndRule,
  FlatStock,
  FlipSpec,
  GateSpec,
  InfillSpec,
  Job,
  Mounting,
  Origin,
  PatternSpec,
  PostSpacing,
  PostStock,
  Remedy,
  RunSpec,
  ScrewsLook,
  Sourced,
} from '../../language/model/index.ts';
import { IMPERIAL, inches, type Measure, type Ticks } from '../../language/units/index.ts';

const URI = 'file:///specs/made.slat';

/** An origin in one made-up file. */
export function originOf(path: string, why: Origin['why'] = 'stated'): Origin {
  return { uri: URI, path, why };
}

export function sourced<T>(value: T, path = '', why: Origin['why'] = 'stated'): Sourced<T> {
  return { value, origin: originOf(path, why) };
}

/** Flat stock of one kind or another; a board unless said otherwise. */
export function board(
  name: string,
  width: Ticks,
  thickness: Ticks,
  kind: 'board' | 'rail' | 'cleat' = 'board',
): FlatStock {
  return {
    kind,
    name,
    origin: originOf(`stock ${name}`),
    lengths: [],
    width: sourced(width, `stock ${name}/width`),
    thickness: sourced(thickness, `stock ${name}/thickness`),
  };
}

export function ripOf(name: string, parent: FlatStock, width: Ticks): FlatStock {
  return { ...board(name, width, parent.thickness.value), kind: 'rip', parent };
}

export function postOf(name: string, along: Ticks, through: Ticks): PostStock {
  return {
    kind: 'post',
    name,
    origin: originOf(`stock ${name}`),
    lengths: [],
    along: sourced(along, `stock ${name}/along`),
    through: sourced(through, `stock ${name}/through`),
  };
}

export function patternOf(
  name: string,
  repeat: readonly FlatStock[],
  parts: { readonly gap: Ticks; readonly edgeGap?: Ticks; readonly end?: EndRule },
): PatternSpec {
  const path = `pattern ${name}`;
  return {
    name,
    origin: originOf(path),
    repeat: repeat.map((stock) => sourced(stock, `${path}/repeat/${stock.name}`)),
    gap: sourced(parts.gap, `${path}/gap`),
    edgeGap: sourced(parts.edgeGap ?? 0, `${path}/edge-gap`),
    end: sourced<EndRule>(parts.end ?? { kind: 'anywhere' }, `${path}/end`),
  };
}

export interface InfillParts {
  readonly pattern: PatternSpec;
  readonly flip?: Partial<FlipSpec>;
  readonly remedies?: readonly Remedy[];
  readonly mounting?: Mounting;
  readonly screws?: ScrewsLook;
  readonly cleat?: FlatStock;
  readonly endGap?: Ticks;
}

export function infillOf(path: string, parts: InfillParts): InfillSpec {
  return {
    pattern: parts.pattern,
    fill: originOf(`${path}/fill`),
    flip: {
      upright: false,
      topEdge: 'left',
      over: false,
      endForEnd: false,
      origin: originOf(`${path}/flip`),
      ...parts.flip,
    },
    fit: {
      remedies: (parts.remedies ?? []).map((remedy) => sourced(remedy, `${path}/fit`)),
      origin: originOf(`${path}/fit`),
    },
    ...(parts.screws ? { screws: sourced(parts.screws, `${path}/screws`) } : {}),
    mounting: sourced<Mounting>(parts.mounting ?? { kind: 'between' }, `${path}/slats`),
    cleat: parts.cleat && sourced(parts.cleat, `${path}/cleats`),
    endGap: sourced(parts.endGap ?? 0, `${path}/end-gap`),
  };
}

export interface GateParts extends InfillParts {
  readonly name: string;
  readonly opening: Ticks;
  readonly station: Ticks;
  readonly hinges?: 'left' | 'right';
  readonly hingeGap?: Ticks;
  readonly latchGap?: Ticks;
  readonly post: PostStock;
  readonly frame: FlatStock;
  /** The frame's stock when not said; null for none. */
  readonly brace?: FlatStock | null;
  readonly bottom?: Band;
  readonly height?: Band;
}

export function gateOf(run: string, parts: GateParts): GateSpec {
  const path = `run ${run}/gate ${parts.name}`;
  const brace = parts.brace === undefined ? parts.frame : parts.brace;
  return {
    name: parts.name,
    origin: originOf(path),
    opening: sourced(parts.opening, `${path}/opening`),
    station: sourced(parts.station, `${path}/opening`),
    hinges: sourced(parts.hinges ?? 'left', `${path}/hinges`),
    hingeGap: sourced(parts.hingeGap ?? inches(1 / 4), `${path}/hinge-gap`),
    latchGap: sourced(parts.latchGap ?? inches(1 / 2), `${path}/latch-gap`),
    post: sourced(parts.post, `${path}/posts`),
    frame: sourced(parts.frame, `${path}/frame`),
    brace: brace === null ? undefined : sourced(brace, `${path}/brace`),
    bottom: parts.bottom && sourced(parts.bottom, `${path}/bottom`),
    height: parts.height && sourced(parts.height, `${path}/height`),
    infill: infillOf(path, { mounting: { kind: 'face', face: 'front' }, ...parts }),
  };
}

export interface RunParts extends InfillParts {
  readonly name?: string;
  readonly length: Ticks;
  readonly post: PostStock;
  readonly spacing: PostSpacing;
  readonly height: Ticks | Band;
  readonly bottom: Ticks | Band;
  readonly embed?: Ticks;
  readonly tops?: Ticks;
  readonly ground?: Ticks;
  readonly rail?: FlatStock;
  readonly gates?: readonly GateParts[];
  readonly measure?: Measure;
}

export function runOf(parts: RunParts): RunSpec {
  const name = parts.name ?? 'bank';
  const path = `run ${name}`;
  return {
    name,
    origin: originOf(path),
    seenFrom: sourced('garden', `${path}/seen-from`),
    length: sourced(parts.length, `${path}/length`),
    post: sourced(parts.post, `${path}/posts`),
    spacing: sourced(parts.spacing, `${path}/posts`),
    embed: parts.embed === undefined ? undefined : sourced(parts.embed, `${path}/embed`),
    tops: sourced(parts.tops ?? 0, `${path}/tops`),
    height: sourced(bandOf(parts.height), `${path}/height`),
    bottom: sourced(bandOf(parts.bottom), `${path}/bottom`),
    ground: sourced(parts.ground ?? 0, `${path}/ground`),
    rail: parts.rail && sourced(parts.rail, `${path}/rails`),
    infill: infillOf(path, parts),
    gates: (parts.gates ?? []).map((gate) => gateOf(name, gate)),
    measure: parts.measure ?? IMPERIAL,
  };
}

export function jobOf(runs: Job['runs']): Job {
  const [first] = runs;
  const measure = first && 'measure' in first ? first.measure : IMPERIAL;
  return {
    uri: URI,
    origin: originOf('job'),
    measure: sourced(measure, 'job/measure'),
    privacy: {},
    site: {},
    thresholds: [],
    accepted: [],
    viewers: [],
    places: [],
    hides: [],
    options: [],
    measuredStock: [],
    paperwork: { approvals: [] },
    rules: [],
    sightTriangles: [],
    saw: {},
    quote: {
      tasks: [],
      prices: [],
      extras: [],
      overhead: undefined,
      markup: undefined,
      margin: undefined,
      tax: undefined,
    },
    onHand: [],
    stock: [],
    runs,
    problems: [],
  };
}

const bandOf = (value: Ticks | Band): Band =>
  typeof value === 'number' ? { low: value, high: value } : value;
