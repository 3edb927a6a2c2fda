import { type Ticks, toMm } from '../units/index.ts';
import { chainLabels } from './chain-labels.ts';
import type { Chain, ChainSide } from './chains.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { linePath } from './path-text.ts';
import type { Bounds } from './place-labels.ts';
import type { Group, Label } from './view.ts';

/** All in letters: from the object to the first line, and from line to line. */
const FIRST_TIER = 2.6;
const NEXT_TIER = 3.3;
/** Extension lines begin this far from the object and end this far past the line. */
const CLEAR = 0.7;
const PAST = 0.3;
/** A dimension line goes on past its last ticks. */
const OVERRUN = 0.45;
/** Half a tick, along each axis; smaller where boundaries are close. */
const TICK = 0.32;
const LEAST_TICK = 0.16;
/** Half a stroke of a dense chain, which is marked like a story pole. */
const STROKE = 0.22;

/** Draws chains outside `object`; on each side the last one is the farthest out, those that share no stretch share a tier. */
export function drawChains(prefix: string, chains: readonly Chain[], object: Bounds, letter: number): Part {
  const groups: Group[] = [];
  const labels: Label[] = [];
  let bounds = object;
  for (const side of ['top', 'left', 'right'] as const) {
    const own = chains.filter((chain) => chain.side === side);
    if (own.length === 0) continue;
    const paths = { line: '', tick: '' };
    const reach = new Map<Ticks, number>();
    for (const { chain, tier } of tiers(own)) {
      const line = lineAt(side, tier, object, letter);
      paths.line += dimensionLine(chain, line, side, letter) + strokes(chain, line, side, letter);
      paths.tick += ticks(chain, line, side, letter);
      labels.push(...chainLabels(prefix, chain, line));
      for (const at of extended(chain)) reach.set(at, Math.max(tier, reach.get(at) ?? 0));
      bounds = stretched(bounds, chain, line, letter);
    }
    for (const [at, tier] of reach) paths.line += extension(at, tier, side, object, letter);
    groups.push(lineGroup(`${prefix}/dimensions-${side}`, 'dimension', paths.line, BEFORE_ALL));
    groups.push(lineGroup(`${prefix}/ticks-${side}`, 'tick', paths.tick, BEFORE_ALL));
  }
  return { groups, labels, bounds };
}

/** Details nearest the object, the whole farthest out. */
const ORDER: readonly Chain['kind'][] = ['slats', 'gate', 'frame', 'heights', 'posts', 'overall'];

function tiers(chains: readonly Chain[]): { chain: Chain; tier: number }[] {
  const order = [...chains].sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));
  const used: { kind: Chain['kind']; spans: [Ticks, Ticks][] }[] = [];
  return order.map((chain) => {
    const span: [Ticks, Ticks] = [chain.at[0] as Ticks, chain.at[chain.at.length - 1] as Ticks];
    let last = used[used.length - 1];
    // Only chains of a rank stand in one line, side by side.
    const clear = last?.spans.every(([from, to]) => span[0] >= to || span[1] <= from);
    if (!last || last.kind !== chain.kind || !clear) {
      last = { kind: chain.kind, spans: [] };
      used.push(last);
    }
    last.spans.push(span);
    return { chain, tier: used.length - 1 };
  });
}

/** Sheet coordinate of the dimension line of a tier, across its direction. */
function lineAt(side: ChainSide, tier: number, object: Bounds, letter: number): number {
  const out = (FIRST_TIER + tier * NEXT_TIER) * letter;
  return side === 'top' ? object[1] - out : side === 'left' ? object[0] - out : object[2] + out;
}

/** Every boundary of a dense chain would be a comb of lines: only its ends are extended to the object. */
function extended(chain: Chain): readonly Ticks[] {
  return chain.kind === 'slats' ? [chain.at[0] as Ticks, chain.at[chain.at.length - 1] as Ticks] : chain.at;
}

function dimensionLine(chain: Chain, line: number, side: ChainSide, letter: number): string {
  const [from, to] = [toMm(chain.at[0] as Ticks), toMm(chain.at[chain.at.length - 1] as Ticks)];
  const over = OVERRUN * letter;
  return side === 'top'
    ? linePath(from - over, line, to + over, line)
    : linePath(line, -from + over, line, -to - over);
}

function ticks(chain: Chain, line: number, side: ChainSide, letter: number): string {
  let path = '';
  const at = chain.at.map(toMm);
  for (const [i, t] of at.entries()) {
    if (isInner(chain, i)) continue;
    const room = Math.min(t - (at[i - 1] ?? -Infinity), (at[i + 1] ?? Infinity) - t);
    const half =
      chain.kind === 'slats'
        ? TICK * letter
        : Math.max(LEAST_TICK * letter, Math.min(TICK * letter, 0.45 * room));
    const [x, y] = side === 'top' ? [t, line] : [line, -t];
    path += linePath(x - half, y + half, x + half, y - half);
  }
  return path;
}

/** Inner boundaries of a dense chain get thin strokes across the line: slanting ticks would run together. */
function strokes(chain: Chain, line: number, side: ChainSide, letter: number): string {
  const half = STROKE * letter;
  return chain.at
    .map(toMm)
    .map((t, i) => {
      if (!isInner(chain, i)) return '';
      return side === 'top'
        ? linePath(t, line - half, t, line + half)
        : linePath(line - half, -t, line + half, -t);
    })
    .join('');
}

function isInner(chain: Chain, i: number): boolean {
  return chain.kind === 'slats' && i > 0 && i < chain.at.length - 1;
}

function extension(at: Ticks, tier: number, side: ChainSide, object: Bounds, letter: number): string {
  const line = lineAt(side, tier, object, letter);
  const clear = CLEAR * letter;
  const past = PAST * letter;
  if (side === 'top') return linePath(toMm(at), object[1] - clear, toMm(at), line - past);
  const y = -toMm(at);
  return side === 'left'
    ? linePath(object[0] - clear, y, line - past, y)
    : linePath(object[2] + clear, y, line + past, y);
}

function stretched(bounds: Bounds, chain: Chain, line: number, letter: number): Bounds {
  const [x0, y0, x1, y1] = bounds;
  const at = chain.at.map(toMm);
  const narrow = at.some((t, i) => i > 0 && t - (at[i - 1] as number) < 5 * letter);
  const text = (narrow ? 2.7 : 1.3) * letter;
  if (chain.side === 'top') return [x0, Math.min(y0, line - text), x1, y1];
  // Beside a vertical line on the right stand texts written level.
  return chain.side === 'left'
    ? [Math.min(x0, line - text), y0, x1, y1]
    : [x0, y0, Math.max(x1, line + 4.5 * letter), y1];
}
