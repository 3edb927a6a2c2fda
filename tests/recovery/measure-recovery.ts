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
  return marked(text).text;
}

/** With it, where each place of the plain text has come to stand. */
function marked(text: string): { text: string; placeOf: (at: number) => number } {
  const units = unitsOf(parserFor('line').parse(text).value);
  const whole = units.filter(({ head, text: own }) => head !== undefined || !own.endsWith('{'));
  const ends = whole.map(({ to }) => to).filter((to) => !/^[ \t]*[;}]/.test(text.slice(to)));
  const pieces = [0, ...ends].map((from, index) => text.slice(from, ends[index]));
  return { text: pieces.join(';'), placeOf: (at) => at + ends.filter((end) => end <= at).length };
}

/**
 * Damages each text in every place, or in every `stride`-th, and counts how many of the statements
 * that the damage does not touch come out as they went in: same text, same kind, same path. The marks
 * put in for the way that wants them are not damaged, so that all ways suffer the same.
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
    const { text, placeOf } = way === 'mark' ? marked(plain) : { text: plain, placeOf: (at: number) => at };
    const before = unitsOf(parser.parse(text).value);
    for (let place = 0; place < plain.length; place += stride) {
      const at = placeOf(place);
      const damaged = text.slice(0, at) + (damage === 'prefix' ? '' : text.slice(at + 1));
      const after = new Map(unitsOf(parser.parse(damaged).value).map((unit) => [unit.from, unit]));
      const untouched = before.filter(({ from, to }) => to <= at || (damage === 'deletion' && at < from));
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
