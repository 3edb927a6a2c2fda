import type * as ast from '../grammar/index.ts';
import { formatLength } from '../units/index.ts';
import type { CutSlats, Measured, MeasuredBay, MeasuredPost, Origin, RunSpec } from './job.ts';
import { readNumber } from './read-count.ts';
import { readLength } from './read-length.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';

/** A post that leans more than one in so many lies down. */
const MOST_LEAN = 1 / 4;

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
  if (!measured) return run;
  const { bays, posts, cuts } = measured;
  return bays.length + posts.length + cuts.length > 0 ? { ...run, measured } : run;
}

function readMeasured(reader: Reader, node: ast.Measured): Measured {
  const bays = new Map<number, MeasuredBay>();
  const posts = new Map<number, MeasuredPost>();
  const cuts: CutSlats[] = [];
  for (const statement of node.statements ?? []) {
    switch (statement.$type) {
      case 'MeasuredBay':
        keepFirst(reader, bays, readBay(reader, statement), 'bay', statement);
        break;
      case 'MeasuredPost':
        keepFirst(reader, posts, readPost(reader, statement), 'post', statement);
        break;
      case 'CutSlats':
        cuts.push(...readCut(reader, statement));
    }
  }
  return { bays: [...bays.values()], posts: [...posts.values()], cuts, origin: originOf(reader, node) };
}

function readBay(reader: Reader, node: ast.MeasuredBay): MeasuredBay | undefined {
  const number = readNumber(reader, node, 'number', node.number, 'bay');
  const length = (of: ast.Length | undefined, what: string) => readLength(reader, of, { what });
  const planned = length(node.planned, 'planned');
  const [top, bottom] = [length(node.top, 'top'), length(node.bottom, 'bottom')];
  const middle = length(node.clear, 'clear') ?? length(node.middle, 'middle');
  const ends = top && bottom && { top: top.value, bottom: bottom.value };
  const at = middle?.value ?? (ends && Math.round((ends.top + ends.bottom) / 2));
  if (number === undefined || at === undefined || (node.planned && !planned)) return undefined;
  if ((node.middle && !middle) || (node.top && !ends)) return undefined;
  return {
    number,
    ...(planned ? { planned } : {}),
    middle: at,
    ...(ends ? { ends } : {}),
    origin: originOf(reader, node),
  };
}

function readPost(reader: Reader, node: ast.MeasuredPost): MeasuredPost | undefined {
  const number = readNumber(reader, node, 'number', node.number, 'post');
  const by = readLength(reader, node.by, { what: 'leans', zero: true });
  const over = readLength(reader, node.over, { what: 'in' });
  if (number === undefined || !by || !over || !node.side) return undefined;
  const slope = by.value / over.value;
  if (slope <= MOST_LEAN)
    return { number, slope: node.side === 'left' ? 0 - slope : slope, origin: originOf(reader, node) };
  const [size, limit] = [by, { value: over.value * MOST_LEAN }].map(({ value }) =>
    formatLength(value, reader.measure),
  );
  const args = { what: 'leans', size: size ?? '', reason: 'too-long' as const, limit: limit ?? '' };
  tell(reader, 'impossible-size', originOf(reader, node), args);
  return undefined;
}

function readCut(reader: Reader, node: ast.CutSlats): readonly CutSlats[] {
  const bay = readNumber(reader, node, 'number', node.number, 'bay');
  const first = readNumber(reader, node, 'first', node.first, 'course');
  const last = node.last === undefined ? first : readNumber(reader, node, 'last', node.last, 'course');
  const length = readLength(reader, node.length, { what: 'cut' });
  if (bay === undefined || (node.length && !length)) return [];
  if (node.first !== undefined && (first === undefined || last === undefined)) return [];
  const courses =
    first === undefined || last === undefined
      ? undefined
      : { first: Math.min(first, last), last: Math.max(first, last) };
  return [
    {
      bay,
      ...(courses ? { courses } : {}),
      ...(length ? { length } : {}),
      origin: originOf(reader, node),
    },
  ];
}

function keepFirst<T extends { readonly number: number; readonly origin: Origin }>(
  reader: Reader,
  kept: Map<number, T>,
  one: T | undefined,
  word: string,
  node: ast.MeasuredStatement,
): void {
  if (!one) return;
  const earlier = kept.get(one.number);
  if (earlier) twice(reader, node, `${word} ${one.number}`, 'measured', earlier.origin);
  else kept.set(one.number, one);
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
