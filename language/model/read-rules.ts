import type * as ast from '../grammar/index.ts';
import { nearNames } from '../grammar/index.ts';
import { RULE_SETS } from '../standards/index.ts';
import type { RunSpec, Sourced } from './job.ts';
import type { Picked } from './pick-statements.ts';
import { readLength } from './read-length.ts';
import { originOf, type Reader, tell } from './reader.ts';

/** The rule sets a job chooses; a name that is none is told. */
export function readRules(
  reader: Reader,
  statement: ast.RulesStatement | undefined,
): readonly Sourced<string>[] {
  const known = RULE_SETS.map(({ id }) => id);
  return (statement?.sets ?? []).flatMap((word): Sourced<string>[] => {
    const origin = originOf(reader, statement as ast.RulesStatement);
    if (known.includes(word)) return [{ value: word, origin }];
    const args = {
      word,
      place: 'set of rules',
      suggestion: nearNames(word, known, 1)[0] ?? '',
      known: known.join(', '),
    };
    tell(reader, 'unknown-word', origin, args);
    return [];
  });
}

/** What a run guards: a drop beside it, a pool. */
export function readGuards(reader: Reader, pick: Picked<ast.RunStatement>): Pick<RunSpec, 'drop' | 'pool'> {
  const [drop, pool] = [pick('DropStatement'), pick('PoolStatement')];
  const height = readLength(reader, drop?.value, { what: 'drop' });
  const side = (front: boolean) => (front ? 'front' : 'back');
  return {
    ...(drop && height
      ? { drop: { value: height.value, origin: originOf(reader, drop), side: side(drop.front === true) } }
      : {}),
    ...(pool ? { pool: { value: side(pool.front === true), origin: originOf(reader, pool) } } : {}),
  };
}
