import type * as ast from '../grammar/index.ts';
import { formatLength } from '../units/index.ts';
import type { NoHole, RunSpec } from './job.ts';
import { readLength } from './read-length.ts';
import { originOf, type Reader, tell } from './reader.ts';

/** Where no hole may be, in the order stated; unlike other statements of a run there may be several. */
export function readNoHoles(reader: Reader, node: ast.Run): Pick<RunSpec, 'noHoles'> {
  const noHoles = (node.statements ?? []).flatMap((statement): NoHole[] => {
    if (statement.$type !== 'NoHole') return [];
    const from = readLength(reader, statement.start, { what: 'no hole', zero: true });
    const to = readLength(reader, statement.end, { what: 'no hole' });
    if (!from || !to) return [];
    const origin = originOf(reader, statement);
    if (from.value >= to.value) {
      const size = formatLength(from.value, reader.measure);
      const limit = formatLength(to.value, reader.measure);
      tell(reader, 'impossible-size', origin, { what: 'no hole', size, reason: 'low-over-high', limit });
      return [];
    }
    const reason = statement.reason?.trim() ?? '';
    const line = statement.utility ? { utility: true as const } : {};
    return [{ from: from.value, to: to.value, ...(reason === '' ? {} : { reason }), ...line, origin }];
  });
  return noHoles.length > 0 ? { noHoles } : {};
}
