import type { ChannelStock, Sourced } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import { type Edge, edgeMoved } from './edge.ts';
import { cutWithin, type HeldEnd, type Panel, type Places, type Range } from './infill.ts';
import { channelLabel, spacerLabel } from './labels.ts';
import { type Line, thickestOf } from './lines.ts';
import { type Block, makeBoard } from './make-board.ts';
import { makeCutSlat } from './make-cut-slat.ts';
import { type About, leaned } from './make-piece.ts';
import { twoDigits } from './names.ts';
import type { Piece } from './piece.ts';
import type { Pocket } from './pockets.ts';

/** Slats that end in grooves of two holders, or in channels on them; spacers keep them apart there. */
export interface Pocketed {
  readonly kind: 'pocket';
  readonly pocket: Pocket;
  readonly channel?: Sourced<ChannelStock>;
  /** The faces that look at each other: left and right; upright, bottom and top. */
  readonly ends: readonly [low: HeldEnd, high: HeldEnd];
  /** Of those faces where they are not plumb. */
  readonly faces?: readonly [low: Edge, high: Edge];
  /** Across the slats, how far pockets reach. */
  readonly span: Range;
}

/** Spacers come from no stock of the file: what is left over is ripped to them, and they are counted by role. */
const SPACER = 'spacer';

/** Channels at both ends of a panel. */
export function channelsOf(panel: Panel, { channel, pocket, ends, span }: Pocketed): Piece[] {
  if (!channel) return [];
  const { name, width, thickness, wall } = channel.value;
  const y: Range = [pocket.y[0] - wall.value, pocket.y[0] - wall.value + thickness.value];
  return ends.map((end, index): Piece => {
    const spare = Math.ceil((Math.abs(end.lean?.slope ?? 0) * width.value) / 2);
    const along = cutWithin([span[0] + spare, span[1] - spare], panel.step, 'middle');
    const across: Range = index === 0 ? [end.at, end.at + width.value] : [end.at - width.value, end.at];
    // A board shows its width from its top or its left.
    const open = (index === 0) === panel.upright ? 'start' : 'end';
    const about: About = {
      ...ofPanel(panel),
      key: channelKey(panel, end),
      label: channelLabel(panel.label, end.name),
      role: 'channel',
      side: 'middle',
      supports: [end.holder],
      from: [channel.origin, channel.value.origin, ...panel.from],
    };
    const groove = {
      side: open,
      from: 0,
      at: wall.value,
      width: thickness.value - 2 * wall.value,
      depth: pocket.depth,
    } as const;
    const plumb = makeBoard(about, { name, grooves: [groove], comesGrooved: true }, !panel.upright, {
      x: panel.upright ? along : across,
      y,
      z: panel.upright ? across : along,
    });
    return end.lean ? leaned(plumb, end.lean) : plumb;
  });
}

/** In the middle of their pockets; thinner ones too. */
export function pocketPlaces(panel: Panel, hold: Pocketed): Places {
  const supports = hold.ends.map((end) => (hold.channel ? channelKey(panel, end) : end.holder));
  const { y } = hold.pocket;
  return ({ stock }) => {
    const thickness = stock.thickness.value;
    const front = y[0] + Math.floor((y[1] - y[0] - thickness) / 2);
    return { y: [front, front + thickness], supports };
  };
}

/**
 * Blocks in the pockets between neighboring slats, as high as the gap there: level slats stand on them, down to the
 * foot of the pocket; upright ones are kept off the ends of theirs too.
 */
export function spacersOf(panel: Panel, hold: Pocketed): Piece[] {
  const thick = thickestOf(panel.lines);
  const { pocket } = hold;
  const front = pocket.y[0] + Math.floor((pocket.y[1] - pocket.y[0] - thick) / 2);
  const y: Range = [front, front + thick];
  return gapsBeside(panel, hold.span).flatMap((gap) =>
    hold.ends.map((end, index): Piece => {
      const about: About = {
        ...ofPanel(panel),
        key: `${panel.key}/spacer-${end.name}-${twoDigits(gap.number)}`,
        label: spacerLabel(panel.label, end.name, gap.number),
        role: 'spacer',
        side: 'middle',
        supports: [hold.channel ? channelKey(panel, end) : end.holder],
        from: [...gap.line.from, ...panel.from],
      };
      const inward = index === 0 ? 1 : -1;
      const bottom = end.at + inward * pocket.inset;
      const mouth = bottom + inward * pocket.depth;
      const within: Range = index === 0 ? [bottom, mouth] : [mouth, bottom];
      const stock = { name: SPACER };
      const face = hold.faces?.[index];
      const block: Block = {
        x: panel.upright ? gap.across : within,
        y,
        z: panel.upright ? within : gap.across,
      };
      if (!face) return makeBoard(about, stock, panel.upright, block);
      const [low, high] = within.map((at) => edgeMoved(face, at - end.at)) as [Edge, Edge];
      return makeCutSlat(about, stock, block, {
        face: 'front',
        step: 1,
        flush: 'start',
        edges: { low, high },
      });
    }),
  );
}

/** Spaces beside slats that spacers fill, each with the line it is numbered by and belongs to. */
function gapsBeside(
  { lines, upright }: Panel,
  [foot, end]: Range,
): readonly { readonly across: Range; readonly number: number; readonly line: Line }[] {
  const sorted = lines.toSorted((a, b) => a.low - b.low);
  const found: { across: Range; line: Line }[] = [];
  let reached: Ticks = foot;
  for (const line of sorted) {
    if (line.low > reached) found.push({ across: [reached, line.low], line });
    reached = Math.max(reached, line.high);
  }
  const last = sorted.at(-1);
  if (upright && last && end > reached) found.push({ across: [reached, end], line: last });
  // Numbered as slats are: from the top, or from the left.
  const ordered = upright ? found : found.toReversed();
  return ordered.map((gap, index) => ({ ...gap, number: index + 1 }));
}

function channelKey(panel: Pick<Panel, 'key'>, { name }: HeldEnd): string {
  return `${panel.key}/channel-${name}`;
}

function ofPanel({ run, gate, bay }: Panel): Pick<About, 'run' | 'gate' | 'bay'> {
  return { run, gate, bay };
}
