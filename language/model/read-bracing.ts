import type * as ast from '../grammar/index.ts';
import { formatLength } from '../units/index.ts';
import type { BracingSpec, RunSpec } from './job.ts';
import type { Picked } from './pick-statements.ts';
import { isOrdered, readLength } from './read-length.ts';
import { assumedLength, originOf, type Reader, tell } from './reader.ts';
import { useFlat } from './use-stock.ts';

/** A stake is brought down in thirds, of which two are in the ground; a brace is screwed to the one above. */
const THIRDS = 3;

/** What sets the posts; what cannot be read is told, and then there is none. */
export function readBracing(
  reader: Reader,
  node: ast.Run,
  pick: Picked<ast.RunStatement>,
): Pick<RunSpec, 'bracing'> {
  const statement = pick('TemporaryBracing');
  const board =
    statement &&
    useFlat(reader, statement.board, { node: statement, property: 'board', place: 'temporary bracing' });
  if (!statement || !board) return {};
  const { reach, strips, stakes, again } = partsOf(reader, statement);
  const what = 'temporary bracing';
  const up = readLength(reader, reach?.up, { what });
  const out = readLength(reader, reach?.out, { what });
  const low = strips
    ? readLength(reader, strips.low, { what, zero: true })
    : assumedLength(reader, node, 'strip');
  const high = readLength(reader, strips?.high, { what });
  const stake = stakes
    ? useFlat(reader, stakes.stake, { node: stakes, property: 'stake', place: 'stakes' })
    : board;
  const long = stakes?.long
    ? readLength(reader, stakes.long, { what: 'stakes' })
    : assumedLength(reader, node, 'stake');
  if (!low || !stake || !long || (reach?.up && !up) || (reach?.out && !out) || (strips && !high)) return {};
  if (high && !isOrdered(reader, low, high, what)) return {};
  // Lower than the board is wide a brace would lie in the ground.
  const least = THIRDS * board.value.width.value;
  const stakeLength = stakes?.long ? long : { ...long, value: Math.max(long.value, least) };
  if (stakeLength.value < least) {
    const [size, limit] = [stakeLength.value, least].map((ticks) => formatLength(ticks, reader.measure));
    const args = { what: 'stakes', size: size ?? '', reason: 'too-short' as const, limit: limit ?? '' };
    tell(reader, 'impossible-size', stakeLength.origin, args);
    return {};
  }
  const bracing: BracingSpec = {
    board,
    stake,
    stakeLength,
    ...(up ? { up } : {}),
    ...(out ? { out } : {}),
    low,
    ...(high ? { high } : {}),
    again: again !== undefined,
    ...(reach ? { reach: originOf(reader, reach) } : {}),
    origin: originOf(reader, statement),
  };
  return { bracing };
}

interface Parts {
  readonly reach?: ast.BracingPart;
  readonly strips?: ast.BracingPart;
  readonly stakes?: ast.BracingPart;
  readonly again?: ast.BracingPart;
}

/** The parts by what they say; a second of a kind is told and not used. */
function partsOf(reader: Reader, { parts }: ast.TemporaryBracing): Parts {
  const found: { -readonly [K in keyof Parts]: Parts[K] } = {};
  for (const part of parts ?? []) {
    const kind = part.up
      ? 'reach'
      : part.low
        ? 'strips'
        : part.stake
          ? 'stakes'
          : part.again
            ? 'again'
            : undefined;
    if (!kind) continue;
    const earlier = found[kind];
    if (!earlier) found[kind] = part;
    else
      tell(
        reader,
        'stated-twice',
        originOf(reader, part),
        { what: WORDS[kind], block: 'temporary bracing' },
        [{ origin: originOf(reader, earlier), note: WORDS[kind] }],
      );
  }
  return found;
}

const WORDS: Readonly<Record<keyof Parts, string>> = {
  reach: 'up',
  strips: 'strips',
  stakes: 'stakes',
  again: 'bay by bay',
};
