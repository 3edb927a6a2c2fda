import type * as ast from '../grammar/index.ts';
import type { InfillSpec, RunSpec } from './job.ts';
import type { Picked } from './pick-statements.ts';
import { readLength } from './read-length.ts';
import { assumedLength, originOf, type Reader, tell } from './reader.ts';
import { useFlat } from './use-stock.ts';

/** What closes the space between slats and ground; what cannot be read is told and left out. */
export function readUnderSlats(
  reader: Reader,
  node: ast.Run,
  pick: Picked<ast.RunStatement>,
  infill: InfillSpec,
): Pick<RunSpec, 'lastFollows' | 'kick'> {
  return {
    ...readLastCourse(reader, node, pick, infill),
    ...readKick(reader, node, pick('KickBoard'), infill),
  };
}

/** Slats that go into posts or channels end with them, and posts are cut for whole slats. */
const NOT_WITH: ReadonlySet<string> = new Set(['grooves', 'channels', 'split']);

/** Only level slats have a course that is the last; of those on faces by turns no one knows which it would be. */
function readLastCourse(
  reader: Reader,
  node: ast.Run,
  pick: Picked<ast.RunStatement>,
  { flip, mounting }: InfillSpec,
): Pick<RunSpec, 'lastFollows'> {
  const statement = pick('LastCourse');
  if (!statement) return {};
  const block = flip.upright
    ? 'run with upright slats'
    : mounting.value.kind === 'alternate'
      ? 'run with slats on alternate faces'
      : NOT_WITH.has(mounting.value.kind)
        ? 'run with slats in its posts'
        : pick('OnDeck')
          ? 'run on a deck'
          : undefined;
  if (block !== undefined) {
    tell(reader, 'wrong-statement', originOf(reader, statement), { what: 'last course', block });
    return {};
  }
  const usual = assumedLength(reader, node, 'taper');
  const least = statement.least ? readLength(reader, statement.least, { what: 'last course' }) : usual;
  return least ? { lastFollows: { value: least.value, origin: originOf(reader, statement) } } : {};
}

function readKick(
  reader: Reader,
  node: ast.Run,
  statement: ast.KickBoard | undefined,
  { mounting }: InfillSpec,
): Pick<RunSpec, 'kick'> {
  if (!statement) return {};
  if (mounting.value.kind === 'split') {
    const args = { what: 'kick board', block: 'run with slats through split posts' };
    tell(reader, 'wrong-statement', originOf(reader, statement), args);
    return {};
  }
  const stock = useFlat(reader, statement.stock, { node: statement, property: 'stock', place: 'kick board' });
  const clearance = statement.clearance
    ? readLength(reader, statement.clearance, { what: 'kick board', zero: true })
    : assumedLength(reader, node, 'kick');
  if (!stock || !clearance) return {};
  const follows = statement.follows ?? false;
  return { kick: { stock, clearance, follows, origin: originOf(reader, statement) } };
}
