import type * as ast from '../grammar/index.ts';
import type { Acceptance, Job, StatedThreshold } from './job.ts';
import { readLength } from './read-length.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';

/** What the builder decides about findings: from where on they are told, and which are left as they are. */
export function readDecisions(
  reader: Reader,
  node: ast.Job | undefined,
): Pick<Job, 'thresholds' | 'accepted'> {
  const thresholds: StatedThreshold[] = [];
  const accepted: Acceptance[] = [];
  for (const statement of node?.statements ?? []) {
    if (statement.$type === 'ThresholdStatement') {
      const read = readThreshold(reader, statement);
      const earlier = thresholds.find(({ code }) => code === read?.code);
      if (read && earlier) {
        const args = { what: `threshold ${read.code}`, block: 'job' };
        tell(reader, 'stated-twice', read.origin, args, [{ origin: earlier.origin, note: args.what }]);
      } else if (read) thresholds.push(read);
    } else if (statement.$type === 'AcceptStatement') {
      const read = readAcceptance(reader, statement);
      if (read) accepted.push(read);
    }
  }
  return { thresholds, accepted };
}

function readThreshold(reader: Reader, node: ast.ThresholdStatement): StatedThreshold | undefined {
  const { code, percent, degrees, times } = node;
  if (code === undefined) return undefined;
  const [origin, named] = [originOf(reader, node), originOf(reader, node, 'code')];
  if (percent !== undefined) return { code, is: 'percent', value: Number(percent), origin, named };
  if (degrees !== undefined) return { code, is: 'degrees', value: Number(degrees), origin, named };
  if (times !== undefined) return { code, is: 'times', value: Number(times), origin, named };
  const limit = readLength(reader, node.limit, { what: 'threshold', zero: true });
  return limit && { code, is: 'length', value: limit.value, origin, named };
}

function readAcceptance(reader: Reader, node: ast.AcceptStatement): Acceptance | undefined {
  const { code, reason } = node;
  if (code === undefined || reason === undefined) return undefined;
  const run = follow(node.run)?.name;
  // A run that is not there is told by linking; accepting everywhere instead would hide too much.
  if (node.run && run === undefined) return undefined;
  return {
    code,
    reason,
    origin: originOf(reader, node),
    named: originOf(reader, node, 'code'),
    ...(run === undefined ? {} : { run }),
  };
}
