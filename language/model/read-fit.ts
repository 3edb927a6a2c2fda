import type * as ast from '../grammar/index.ts';
import { formatLength } from '../units/index.ts';
import { DEFAULT_TRIM_EDGE } from './defaults.ts';
import type { FitSpec, FlatStock, Origin, Remedy, Sourced } from './job.ts';
import { isOrdered, readLength } from './read-length.ts';
import { readSlat } from './read-slat.ts';
import { isOwn, originOf, type Reader, tell } from './reader.ts';
import type { Bindings } from './resolve-parameter.ts';
import { useFlat } from './use-stock.ts';

/** The pattern a fit is for, as far as `change` has to know it. */
export interface FittedPattern {
  readonly name: string;
  readonly repeat: readonly Sourced<FlatStock>[];
  readonly told?: Origin;
}

/** Remedies in the order written. One that cannot be read is told and left out. */
export function readFit(
  reader: Reader,
  node: ast.Fit,
  bindings: Bindings,
  pattern: FittedPattern | undefined,
): FitSpec {
  const remedies = (node.remedies ?? []).flatMap((remedy) => {
    const value = readRemedy(reader, remedy, bindings, pattern);
    return value ? [{ value, origin: originOf(reader, remedy) }] : [];
  });
  return { remedies, origin: originOf(reader, node) };
}

function readRemedy(
  reader: Reader,
  node: ast.Remedy,
  bindings: Bindings,
  pattern: FittedPattern | undefined,
): Remedy | undefined {
  switch (node.$type) {
    case 'MoveEnds':
      return { kind: 'move-ends' };
    case 'ShortRepeat':
      return { kind: 'short-repeat' };
    case 'SpreadGaps': {
      const low = readLength(reader, node.low, { what: 'gaps', zero: true }, bindings);
      const high = readLength(reader, node.high, { what: 'gaps', zero: true }, bindings);
      if (!low || !high || !isOrdered(reader, low, high, 'gaps')) return undefined;
      return { kind: 'gaps', low: low.value, high: high.value };
    }
    case 'RipLast': {
      if (!node.least) return { kind: 'rip-last' };
      const least = readLength(reader, node.least, { what: 'rip last' }, bindings);
      return least && { kind: 'rip-last', least: least.value };
    }
    case 'ChangeWidth':
      return readChange(reader, node, bindings, pattern);
    case 'TrimBoard': {
      const edge = node.edge ?? DEFAULT_TRIM_EDGE;
      if (!node.board) return { kind: 'trim', edge };
      const board = useFlat(reader, node.board, { node, property: 'board', place: 'trim' })?.value;
      return board && { kind: 'trim', edge, board };
    }
    default:
      // A remedy that broke off before it took shape.
      return undefined;
  }
}

function readChange(
  reader: Reader,
  node: ast.ChangeWidth,
  bindings: Bindings,
  pattern: FittedPattern | undefined,
): Remedy | undefined {
  const slat = readSlat(reader, node, 'change', bindings)?.value;
  const width = readLength(reader, node.width, { what: 'width' }, bindings);
  if (!slat || !width) return undefined;
  const known = pattern?.repeat.some(({ value }) => value.name === slat.name) ?? true;
  if (pattern && !known) {
    const at = isOwn(reader, node) || !pattern.told ? originOf(reader, node) : pattern.told;
    tell(reader, 'not-in-repeat', at, { slat: slat.name, pattern: pattern.name, place: 'change' });
    return undefined;
  }
  const widest = slat.parent?.width ?? slat.width;
  if (width.value > widest.value) {
    const [size, limit] = [width.value, widest.value].map((ticks) => formatLength(ticks, reader.measure));
    const args = { what: 'width', size: size ?? '', reason: 'not-narrower' as const, limit: limit ?? '' };
    tell(reader, 'impossible-size', width.origin, args, [{ origin: widest.origin, note: slat.kind }]);
    return undefined;
  }
  return { kind: 'change-width', slat: slat.name, width: width.value };
}
