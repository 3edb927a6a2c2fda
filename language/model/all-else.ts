import type * as ast from '../grammar/index.ts';
import { inOption } from './option-statements.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';

/** Where a run stands, and what is in the ground there, is its own. */
const OWN: ReadonlySet<string> = new Set([
  'PlacedStatement',
  'AfterStatement',
  'CornerStatement',
  'BeginsAtWall',
  'EndsAtWall',
  'ScribedFiller',
  'NoHole',
  'AllElse',
]);

/**
 * What a run states, and what it leaves to the run that it is `all else as`, which may leave it to another in
 * turn. Statements stay where they are stated. One that comes back to itself is told and takes nothing more.
 */
export function withAllElse(
  reader: Reader,
  node: ast.Run,
  stated: readonly ast.RunStatement[],
): readonly ast.RunStatement[] {
  const all = [...stated];
  const kinds = new Set<string>(stated.map(({ $type }) => $type));
  const seen = new Set([node]);
  for (let from = allElse(stated); from; ) {
    const other = follow(from.run);
    if (!other) break;
    if (seen.has(other)) {
      // Each run of a circle is read; it is told at those that are in it.
      if (other === node)
        tell(reader, 'circular', originOf(reader, from, 'run'), { name: node.name, kind: 'run' });
      break;
    }
    seen.add(other);
    const theirs = inOption(reader, other) as readonly ast.RunStatement[];
    const added = theirs.filter(({ $type }) => !kinds.has($type) && !OWN.has($type));
    all.push(...added);
    for (const { $type } of added) kinds.add($type);
    from = allElse(theirs);
  }
  return all;
}

function allElse(statements: readonly ast.RunStatement[]): ast.AllElse | undefined {
  return statements.find((statement) => statement.$type === 'AllElse');
}
