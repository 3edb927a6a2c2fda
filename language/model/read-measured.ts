import type * as ast from '../grammar/index.ts';
import type { Measured, MeasuredBay, RunSpec } from './job.ts';
import { readNumber } from './read-count.ts';
import { readLength } from './read-length.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';

/** No run has more bays or posts than this. */
const MOST_NUMBERED = 2_000;

/** What stands of each run, by run. A second block of one run is told and not used. */
export function readAllMeasured(reader: Reader): ReadonlyMap<ast.Run, Measured> {
  const read = new Map<ast.Run, Measured>();
  for (const element of reader.root.elements ?? []) {
    if (element.$type !== 'Measured') continue;
    const run = follow(element.run);
    if (!run) continue;
    const earlier = read.get(run);
    if (earlier) twice(reader, element, `measured ${run.name}`, 'file', earlier.origin);
    else read.set(run, readMeasured(reader, element));
  }
  return read;
}

/** A run with what is measured of it. */
export function withMeasured(run: RunSpec, measured: Measured | undefined): RunSpec {
  return measured && measured.bays.length > 0 ? { ...run, measured } : run;
}

function readMeasured(reader: Reader, node: ast.Measured): Measured {
  const bays = new Map<number, MeasuredBay>();
  for (const statement of node.statements ?? []) {
    const bay = readBay(reader, statement);
    const earlier = bay && bays.get(bay.number);
    if (earlier) twice(reader, statement, `bay ${bay.number}`, 'measured', earlier.origin);
    else if (bay) bays.set(bay.number, bay);
  }
  return { bays: [...bays.values()], origin: originOf(reader, node) };
}

function readBay(reader: Reader, node: ast.MeasuredBay): MeasuredBay | undefined {
  const number = readNumber(reader, node, 'bay', MOST_NUMBERED);
  const length = (of: ast.Length | undefined, what: string) => readLength(reader, of, { what });
  const planned = length(node.planned, 'planned');
  const clear = length(node.clear, 'clear');
  const top = length(node.top, 'top') ?? clear;
  const bottom = length(node.bottom, 'bottom') ?? clear;
  const middle = length(node.middle, 'middle');
  if (number === undefined || !top || !bottom) return undefined;
  if ((node.planned && !planned) || (node.middle && !middle)) return undefined;
  return {
    number,
    ...(planned ? { planned } : {}),
    top: top.value,
    middle: middle?.value ?? Math.round((top.value + bottom.value) / 2),
    bottom: bottom.value,
    origin: originOf(reader, node),
  };
}

function twice(
  reader: Reader,
  node: ast.Measured | ast.MeasuredStatement,
  what: string,
  block: string,
  first: Measured['origin'],
): void {
  tell(reader, 'stated-twice', originOf(reader, node), { what, block }, [{ origin: first, note: what }]);
}
