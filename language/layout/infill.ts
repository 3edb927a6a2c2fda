import type { FlatStock, Origin, Sourced } from '../model/index.ts';
import { floorToStep, type Ticks } from '../units/index.ts';
import type { SlatEnd } from './corner.ts';
import type { Edge } from './edge.ts';
import { cleatLabel, slatLabel, trimLabel } from './labels.ts';
import type { PostLean } from './layout.ts';
import { type Line, thickestOf } from './lines.ts';
import { type Block, makeBoard } from './make-board.ts';
import { makeCutSlat } from './make-cut-slat.ts';
import { type About, leaned } from './make-piece.ts';
import { makePlumb, makeSloped, type Racking, slopedOver } from './make-racked.ts';
import { courseKey } from './names.ts';
import type { Piece } from './piece.ts';
import { channelsOf, type Pocketed, pocketPlaces, spacersOf } from './pocket-pieces.ts';

/** First and last of something along one axis. */
export type Range = readonly [low: Ticks, high: Ticks];

/** Slats on a face of what holds them. */
export interface OnFace {
  readonly kind: 'face';
  readonly face: 'front' | 'back';
  /** Where that face is, through the screen. */
  readonly plane: Ticks;
  /** What slats may lie on; each lies on those it covers. */
  readonly holders: readonly { readonly key: string; readonly x: Range; readonly z: Range }[];
}

/** Slats between two holders, held at each end by a cleat on the front and one on the back. */
export interface Between {
  readonly kind: 'between';
  /** Front of the slats, through the screen. Slats thinner than the thickest keep to the front. */
  readonly front: Ticks;
  readonly cleat: Sourced<FlatStock>;
  /** The faces that look at each other: left and right; upright, bottom and top. */
  readonly ends: readonly [low: HeldEnd, high: HeldEnd];
  /** Across the slats, how far cleats reach. */
  readonly span: Range;
}

/** Slats that run through posts of two halves, in the middle between them. */
export interface Clamped {
  readonly kind: 'split';
  /** Front of the slats, through the screen. Slats thinner than the thickest keep to the front. */
  readonly front: Ticks;
  /** The halves of each post in front and behind; slats are held by those they reach over. */
  readonly holders: readonly { readonly keys: readonly [front: string, back: string]; readonly x: Range }[];
}

export interface HeldEnd {
  readonly name: 'left' | 'right' | 'top' | 'bottom';
  readonly at: Ticks;
  readonly holder: string;
  /** Where its cleats end below, if not where the infill does: above a course that follows the ground. */
  readonly foot?: Ticks;
  /** Of a holder that is out of plumb. */
  readonly lean?: PostLean;
}

export type Hold = OnFace | Between | Pocketed | Clamped;

/** A bay or a gate leaf to be filled: one builder for both, level and upright. */
export interface Panel {
  readonly run: string;
  readonly gate?: string;
  /** None between two runs. */
  readonly bay?: number;
  /** The last of the bays it reaches through, where they are several. */
  readonly until?: number;
  readonly key: string;
  readonly label: string;
  readonly upright: boolean;
  readonly lines: readonly Line[];
  /** Lengthwise, the place of every slat, end gaps left out. */
  readonly reach: Range;
  /** Where a slat lies in its place when it is cut shorter. */
  readonly flush: Flush;
  readonly step: Ticks;
  readonly hold: Hold;
  /** Set for the back of two faces that both have slats. */
  readonly behind?: boolean;
  /** Where level slats on a face end at a corner instead, there cut to what they meet. */
  readonly ends?: { readonly low?: SlatEnd; readonly high?: SlatEnd };
  /** Where level slats end between or on posts that are out of plumb, end gaps left out. */
  readonly edges?: { readonly low: Edge; readonly high: Edge };
  /** Of a racked bay: heights are those at its station. Slats stand plumb and are sawn to the slope. */
  readonly racking?: Racking;
  /** Statements every piece follows from, after those of its line. */
  readonly from: readonly Origin[];
}

export type Flush = 'start' | 'middle' | 'end';

/** Slats and trim of a panel, with the cleats, or the channels and spacers, that hold them. */
export function panelPieces(panel: Panel): Piece[] {
  const { hold } = panel;
  const made =
    hold.kind === 'between' ? cleatsOf(panel, hold) : hold.kind === 'pocket' ? channelsOf(panel, hold) : [];
  const reach = cutWithin(panel.reach, panel.step, panel.flush);
  const origins = new Map<Line['from'], readonly Origin[]>();
  const originsOf = ({ from }: Line): readonly Origin[] => {
    const all = origins.get(from) ?? [...from, ...panel.from];
    origins.set(from, all);
    return all;
  };
  const place = placesOf(panel, made);
  for (const line of panel.lines) {
    const across: Range = [line.low, line.high];
    const long = panel.racking ? rackedReach(panel, panel.racking, line.high - line.low) : reach;
    const x = panel.upright ? across : long;
    const z = panel.upright ? long : across;
    const { y, supports } = place(line, x, z);
    const about: About = {
      run: panel.run,
      gate: panel.gate,
      bay: panel.bay,
      until: panel.until,
      ...namesOf(panel, line),
      role: line.kind,
      course: line.course,
      side: hold.kind === 'face' ? hold.face : 'middle',
      supports,
      from: originsOf(line),
    };
    const stock = { name: line.stock.name, ripped: line.ripped };
    if (panel.racking) {
      made.push(makePlumb(about, stock, { x, y, z }, panel.racking));
      continue;
    }
    const { taper } = line;
    if (panel.ends || panel.edges || taper) {
      const face = hold.kind === 'face' ? hold.face : 'front';
      const { step, flush, ends, edges } = panel;
      const cut = { face, step, flush, ...ends, ...(edges ? { edges } : {}), ...(taper ? { taper } : {}) };
      made.push(makeCutSlat(about, stock, { x: panel.reach, y, z }, cut));
      continue;
    }
    made.push(makeBoard(about, stock, panel.upright, { x, y, z }));
  }
  if (hold.kind === 'pocket') for (const spacer of spacersOf(panel, hold)) made.push(spacer);
  return made;
}

function placesOf(panel: Panel, made: readonly Piece[]): Places {
  const { hold } = panel;
  switch (hold.kind) {
    case 'between':
      return betweenPlaces(panel, hold, made);
    case 'pocket':
      return pocketPlaces(panel, hold);
    case 'split':
      return clampedPlaces(panel, hold);
    case 'face':
      return facePlaces(panel, hold);
  }
}

/** What a slat or a trim board of a panel is called. */
export function namesOf(
  { key, label, behind }: Pick<Panel, 'key' | 'label' | 'behind'>,
  { course }: Line,
): Pick<About, 'key' | 'label'> {
  if (course === undefined)
    return { key: `${key}/${behind ? 'back-' : ''}trim`, label: trimLabel(label, behind) };
  return { key: courseKey(key, course, behind), label: slatLabel(label, course, behind) };
}

/** A cut as long as the tape's marks allow, never longer than its place. */
export function cutWithin([low, high]: Range, step: Ticks, flush: Flush): Range {
  const place = high - low;
  const length = floorToStep(place, step) || place;
  const spare = place - length;
  const from = flush === 'start' ? low : flush === 'end' ? high - length : low + Math.floor(spare / 2);
  return [from, from + length];
}

/** From tip to tip a racked slat is as long as the tape's marks allow. */
function rackedReach({ reach: [low, high], step, flush }: Panel, { rise }: Racking, width: Ticks): Range {
  const tips = Math.abs(rise) * width;
  const [from, to] = cutWithin([low, high + tips], step, flush);
  return flush === 'end' ? [from, to - tips] : [from, Math.max(from + 1, to - tips)];
}

export type Places = (line: Line, x: Range, z: Range) => { y: Range; supports: readonly string[] };

function facePlaces({ step }: Panel, { face, plane, holders }: OnFace): Places {
  return ({ stock }, x, z) => {
    const thickness = stock.thickness.value;
    const supports: string[] = [];
    for (const holder of holders)
      if (bears(holder.x, x, step) && bears(holder.z, z, step)) supports.push(holder.key);
    return { y: face === 'front' ? [plane - thickness, plane] : [plane, plane + thickness], supports };
  };
}

/** Slats as thick as the thickest touch both halves of a post, others the one in front. */
function clampedPlaces({ lines, step }: Panel, { front, holders }: Clamped): Places {
  const thickest = thickestOf(lines);
  return ({ stock }, x) => {
    const thickness = stock.thickness.value;
    const over = holders.filter((holder) => bears(holder.x, x, step));
    const supports = over.flatMap(({ keys }) => (thickness === thickest ? keys : keys.slice(0, 1)));
    return { y: [front, front + thickness], supports };
  };
}

function betweenPlaces({ lines }: Panel, { front }: Between, cleats: readonly Piece[]): Places {
  const thickest = thickestOf(lines);
  const all = cleats.map(({ key }) => key);
  const fronts = cleats.filter(({ side }) => side === 'front').map(({ key }) => key);
  return ({ stock }) => {
    const thickness = stock.thickness.value;
    return { y: [front, front + thickness], supports: thickness === thickest ? all : fronts };
  };
}

function cleatsOf(panel: Panel, { front, cleat, ends, span }: Between): Piece[] {
  const { name, width, thickness } = cleat.value;
  const thick = thickness.value;
  const back = front + thickestOf(panel.lines);
  const from = [cleat.origin, cleat.value.origin, ...panel.from];
  return ends.flatMap((end, index) => {
    // Square-cut and out of plumb it is a little shorter, so as not to reach past the infill.
    const spare = Math.ceil((Math.abs(end.lean?.slope ?? 0) * width.value) / 2);
    const along = cutWithin([(end.foot ?? span[0]) + spare, span[1] - spare], panel.step, 'middle');
    const across: Range = index === 0 ? [end.at, end.at + width.value] : [end.at - width.value, end.at];
    return (['front', 'back'] as const).map((side) => {
      const block: Block = {
        x: panel.upright ? along : across,
        y: side === 'front' ? [front - thick, front] : [back, back + thick],
        z: panel.upright ? across : along,
      };
      const about: About = {
        ...ofPanel(panel),
        key: `${panel.key}/cleat-${end.name}-${side}`,
        label: cleatLabel(panel.label, end.name, side),
        role: 'cleat',
        side,
        supports: [end.holder],
        from,
      };
      if (panel.racking) {
        const top = index === 0 ? end.at + width.value * slopedOver(panel.racking.rise) : end.at;
        const sloped = { x: span, y: block.y, top, width: width.value };
        return makeSloped(about, { name }, sloped, panel.racking, panel.step);
      }
      const plumb = makeBoard(about, { name }, !panel.upright, block);
      return end.lean ? leaned(plumb, end.lean) : plumb;
    });
  });
}

function ofPanel({ run, gate, bay }: Panel): Pick<About, 'run' | 'gate' | 'bay'> {
  return { run, gate, bay };
}

/** Whether two ranges share more than rounding a cut to the tape's marks could take away. */
function bears(a: Range, b: Range, step: Ticks): boolean {
  const least = Math.min(step, a[1] - a[0], b[1] - b[0]);
  return Math.min(a[1], b[1]) - Math.max(a[0], b[0]) >= least;
}
