import type * as ast from '../grammar/index.ts';
import { formatLength } from '../units/index.ts';
import { DEFAULT_SIDE } from './defaults.ts';
import { faceToward } from './faces.ts';
import type { MeasuredPost } from './job.ts';
import { statementsOf } from './option-statements.ts';
import { readNumber } from './read-count.ts';
import { readLength } from './read-length.ts';
import { originOf, type Reader, tell } from './reader.ts';

/** A post that leans more than one in so many lies down. */
const MOST_LEAN = 1 / 4;

/** How a post of a run stands: out of plumb, or off the line. Undefined where that cannot be. */
export function readMeasuredPost(
  reader: Reader,
  node: ast.MeasuredPost,
  run: ast.Run,
): MeasuredPost | undefined {
  const number = readNumber(reader, node, 'number', node.number, 'post');
  const planned = readLength(reader, node.planned, { what: 'planned', zero: true });
  const stands = node.off ? readOff(reader, node, run) : readLean(reader, node);
  if (number === undefined || !stands || (node.planned && !planned)) return undefined;
  return { number, ...(planned ? { planned } : {}), ...stands, origin: originOf(reader, node) };
}

function readLean(reader: Reader, node: ast.MeasuredPost): Pick<MeasuredPost, 'slope'> | undefined {
  const by = readLength(reader, node.by, { what: 'leans', zero: true });
  const over = readLength(reader, node.over, { what: 'in' });
  if (!by || !over || !node.side) return undefined;
  const slope = by.value / over.value;
  if (slope <= MOST_LEAN) return { slope: node.side === 'left' ? 0 - slope : slope };
  const [size = '', limit = ''] = [by.value, over.value * MOST_LEAN].map((value) =>
    formatLength(value, reader.measure),
  );
  tell(reader, 'impossible-size', originOf(reader, node), { what: 'leans', size, reason: 'too-long', limit });
  return undefined;
}

function readOff(
  reader: Reader,
  node: ast.MeasuredPost,
  run: ast.Run,
): Pick<MeasuredPost, 'off'> | undefined {
  const off = readLength(reader, node.off, { what: 'off', zero: true });
  if (!off || !node.toward) return undefined;
  const seen = statementsOf(reader, run).find((one): one is ast.SeenFrom => one.$type === 'SeenFrom');
  const face = faceToward(seen?.side ?? DEFAULT_SIDE, node.toward);
  return { off: { value: face === 'front' ? 0 - off.value : off.value, origin: originOf(reader, node) } };
}
