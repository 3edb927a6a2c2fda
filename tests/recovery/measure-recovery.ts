import type { LangiumParser } from 'langium';
import { createSlatCoreServices, SlatLexer, type StatementEnding } from '../../language/grammar/index.ts';
import { type Unit, unitsOf } from './units.ts';

export interface Recovery {
  readonly way: StatementEnding;
  readonly damage: 'prefix' | 'deletion';
  readonly cases: number;
  /** Mean, over the cases, of the share of untouched statements that come out unchanged. */
  readonly mean: number;
  readonly worst: number;
  /** Share of cases in which an untouched statement is lost. */
  readonly lossy: number;
}

export const WAYS: readonly StatementEnding[] = ['line', 'mark', 'none'];

/** A parser that ends statements the given way. */
export function parserFor(way: StatementEnding): LangiumParser {
  const extra = {
    parser: { Lexer: (services: ConstructorParameters<typeof SlatLexer>[0]) => new SlatLexer(services, way) },
  };
  return createSlatCoreServices(undefined, extra).slat.parser.LangiumParser;
}

/** The same text with a semicolon after each statement, for the way that wants one. */
export function withMarks(text: string): string {
  const units = unitsOf(parserFor('line').parse(text).value).filter(({ text: own, head, type }) => {
    return head !== undefined || type === 'Use' || type === 'Rip' || own === 'material chestnut';
  });
  let marked = text;
  for (const { to } of [...units].reverse()) {
    if (!/^[ \t]*;/.test(marked.slice(to))) marked = `${marked.slice(0, to)};${marked.slice(to)}`;
  }
  return marked;
}

/**
 * Damages each text in every place, or in every `stride`-th, and counts how many of the statements
 * that the damage does not touch come out as they went in: same text, same kind, same path.
 */
export function measureRecovery(
  way: StatementEnding,
  damage: Recovery['damage'],
  texts: readonly string[],
  stride = 1,
): Recovery {
  const parser = parserFor(way);
  let [cases, sum, worst, lossy] = [0, 0, 1, 0];
  for (const plain of texts) {
    const text = way === 'mark' ? withMarks(plain) : plain;
    const before = unitsOf(parser.parse(text).value);
    for (let at = 0; at < text.length; at += stride) {
      const damaged = damage === 'prefix' ? text.slice(0, at) : text.slice(0, at) + text.slice(at + 1);
      const after = new Map(unitsOf(parser.parse(damaged).value).map((unit) => [unit.from, unit]));
      const untouched = before.filter((unit) =>
        damage === 'prefix' ? unit.to <= at : at < unit.from || at >= unit.to,
      );
      if (untouched.length === 0) continue;
      const kept = untouched.filter((unit) => survives(unit, after, damage, at)).length;
      cases++;
      sum += kept / untouched.length;
      worst = Math.min(worst, kept / untouched.length);
      if (kept < untouched.length) lossy++;
    }
  }
  return { way, damage, cases, mean: sum / cases, worst, lossy: lossy / cases };
}

function survives(
  unit: Unit,
  after: ReadonlyMap<number, Unit>,
  damage: Recovery['damage'],
  at: number,
): boolean {
  const found = after.get(damage === 'deletion' && at < unit.from ? unit.from - 1 : unit.from);
  if (!found || found.type !== unit.type || found.text !== unit.text) return false;
  if (found.path === unit.path) return true;
  // A damaged head may have renamed the block; what stands in it is still the same.
  const renamed =
    unit.head !== undefined && damage === 'deletion' && at >= unit.head.from && at < unit.head.to;
  return renamed && found.path.split('/').at(-1) === unit.path.split('/').at(-1);
}
