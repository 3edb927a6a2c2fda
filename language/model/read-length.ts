import type * as ast from '../grammar/index.ts';
import {
  formatLength,
  type ParsedLength,
  parseLength,
  type RefusedLength,
  type Ticks,
} from '../units/index.ts';
import { LONGEST_SIZE } from './bounds.ts';
import type { Band, Origin, Sourced } from './job.ts';
import { HINT_SEPARATOR } from './problems.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';
import { type Bindings, NO_BINDINGS, resolveParameter, wordForStock } from './resolve-parameter.ts';

/** What a length is for, and how small and large it may be. */
export interface LengthRule {
  readonly what: string;
  /** A gap may be nothing at all; a size may not. */
  readonly zero?: boolean;
  readonly most?: Ticks;
}

/**
 * The one way from text to ticks. Undefined when there is no length, or one that cannot be used; whatever
 * is wrong with a stated length is told at its place. Never yields NaN, a negative or a fraction.
 */
export function readLength(
  reader: Reader,
  node: ast.Length | undefined,
  rule: LengthRule,
  bindings: Bindings = NO_BINDINGS,
): Sourced<Ticks> | undefined {
  if (!node) return undefined;
  if (node.text !== undefined) return readText(reader, node.text, originOf(reader, node), rule);
  const parameter = follow(node.parameter);
  if (!parameter) return undefined;
  const found = resolveParameter(reader, parameter, bindings);
  if (!found) return undefined;
  const origin = originOf(reader, found.at);
  if (found.kind === 'length') return readText(reader, found.text, origin, rule);
  tell(
    reader,
    'wrong-kind',
    origin,
    { name: found.stock.name, kind: wordForStock(found.stock), needed: 'length', place: rule.what },
    [{ origin: originOf(reader, node), note: rule.what }],
  );
  return undefined;
}

/** Two lengths from low to high, or one that is both. Its origin is the statement they stand in. */
export function readBand(
  reader: Reader,
  statement: ast.HeightStatement | ast.BottomStatement,
  rule: LengthRule,
): Sourced<Band> | undefined {
  const low = readLength(reader, statement.low, rule);
  if (!low) return undefined;
  const origin = originOf(reader, statement);
  if (!statement.high) return { value: { low: low.value, high: low.value }, origin };
  const high = readLength(reader, statement.high, rule);
  if (!high || !isOrdered(reader, low, high, rule.what)) return undefined;
  return { value: { low: low.value, high: high.value }, origin };
}

/** Whether low is not over high; told at the high one when it is. */
export function isOrdered(reader: Reader, low: Sourced<Ticks>, high: Sourced<Ticks>, what: string): boolean {
  if (low.value <= high.value) return true;
  const size = formatLength(low.value, reader.measure);
  const limit = formatLength(high.value, reader.measure);
  tell(reader, 'impossible-size', high.origin, { what, size, reason: 'low-over-high', limit });
  return false;
}

/** A text as a length, remembered: the same few spellings come again and again. */
export function parsed(reader: Pick<Reader, 'parsed'>, text: string): ParsedLength {
  const known = reader.parsed.get(text);
  if (known) return known;
  const length = parseLength(text);
  reader.parsed.set(text, length);
  return length;
}

function readText(
  reader: Reader,
  text: string,
  origin: Origin,
  { what, zero = false, most = LONGEST_SIZE }: LengthRule,
): Sourced<Ticks> | undefined {
  const length = parsed(reader, text);
  if (!length.ok) {
    tellRefused(reader, text, origin, what, length);
    return undefined;
  }
  const { ticks } = length;
  if (ticks > most) {
    const limit = formatLength(most, reader.measure);
    tell(reader, 'impossible-size', origin, { what, size: text, reason: 'too-long', limit });
    return undefined;
  }
  if (ticks < 0 || (ticks === 0 && !zero)) {
    tell(reader, 'impossible-size', origin, { what, size: text, reason: 'zero', limit: '' });
    return undefined;
  }
  return { value: ticks, origin };
}

function tellRefused(
  reader: Reader,
  spelling: string,
  origin: Origin,
  what: string,
  { problem, hint, hints }: RefusedLength,
): void {
  const candidates = hints ?? (hint === undefined ? [] : [hint]);
  const args = { what, spelling, hint: hint ?? '', hints: candidates.join(HINT_SEPARATOR) };
  if (problem === 'bare-number') tell(reader, 'unit-missing', origin, args);
  else if (problem === 'unknown-unit') tell(reader, 'length-unknown-unit', origin, args);
  else if (problem === 'too-large') {
    const limit = formatLength(LONGEST_SIZE, reader.measure);
    tell(reader, 'impossible-size', origin, { what, size: spelling, reason: 'too-long', limit });
  } else tell(reader, 'length-spelling', origin, { ...args, problem });
}
