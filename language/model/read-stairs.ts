import type * as ast from '../grammar/index.ts';
import { feet, formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { isMetric } from './defaults.ts';
import type { DeckSpec, StairHead } from './job.ts';
import { tellMissing } from './pick-statements.ts';
import { readLength } from './read-length.ts';
import { originOf, type Reader, tell } from './reader.ts';

/** Steps are no higher than this, and as deep as this where it is not stated (common practice; codes differ). */
const RISER = { imperial: inches(7.5), metric: mm(190) };
const GOING = { imperial: inches(10), metric: mm(260) };

/** Farther down, or with deeper treads, no stairs of a deck go. */
const MOST_DOWN = feet(60);
const MOST_GOING = feet(6);

/**
 * Stairs from the edge of a deck, in the order stated; unlike other statements of a deck there may be several. How far down
 * they go is stated, or follows from the ground below.
 */
export function readStairs(
  reader: Reader,
  node: ast.Deck,
  drop: Ticks | undefined,
): Pick<DeckSpec, 'stairs'> {
  const metric = isMetric(reader.measure) ? 'metric' : 'imperial';
  const stairs = (node.statements ?? []).flatMap((statement): StairHead[] => {
    if (statement.$type !== 'StairsStatement') return [];
    const rule = { what: 'stairs' };
    const from = readLength(reader, statement.start, { ...rule, zero: true });
    const to = readLength(reader, statement.end, rule);
    const stated = readLength(reader, statement.down, { ...rule, most: MOST_DOWN });
    const deep = readLength(reader, statement.going, { what: 'going', most: MOST_GOING });
    if (!from || !to || (statement.down && !stated) || (statement.going && !deep)) return [];
    const origin = originOf(reader, statement);
    if (from.value >= to.value) {
      const [size, limit] = [from, to].map(({ value }) => formatLength(value, reader.measure));
      const args = { what: 'stairs', size: size ?? '', reason: 'low-over-high' as const, limit: limit ?? '' };
      tell(reader, 'impossible-size', origin, args);
      return [];
    }
    const down = stated?.value ?? drop;
    if (down === undefined) {
      tellMissing(reader, node, 'ground');
      return [];
    }
    const risers = Math.ceil(Math.min(down, MOST_DOWN) / RISER[metric]);
    return [{ from: from.value, to: to.value, down, risers, going: deep?.value ?? GOING[metric], origin }];
  });
  return stairs.length > 0 ? { stairs } : {};
}
