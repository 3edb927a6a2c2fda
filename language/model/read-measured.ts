import type * as ast from '../grammar/index.ts';
import type { Ticks } from '../units/index.ts';
import type { CutSlats, Measured, MeasuredBay, MeasuredPost, RunSpec, Sourced } from './job.ts';
import { readNumber } from './read-count.ts';
import { readFit } from './read-fit.ts';
import { readLength } from './read-length.ts';
import { readMeasuredPost } from './read-measured-post.ts';
import { bayEstimate } from './read-spacing.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';
import { NO_BINDINGS } from './resolve-parameter.ts';
import { hasSaneSlats } from './sane-slats.ts';

/** What a block says, and how the pattern is to close, which can be read only once that is known. */
interface ReadMeasured {
  readonly measured: Measured;
  readonly fit?: ast.Fit;
}

/** What stands of each run, by run. A second block of one run is told and not used. */
export function readAllMeasured(reader: Reader): ReadonlyMap<ast.Run, ReadMeasured> {
  const read = new Map<ast.Run, ReadMeasured>();
  for (const element of reader.root.elements ?? []) {
    if (element.$type !== 'Measured') continue;
    const run = follow(element.run);
    if (!run) continue;
    const earlier = read.get(run);
    if (earlier) twice(reader, element, `measured ${run.name}`, 'file', earlier.measured.origin);
    else read.set(run, readMeasured(reader, element, run));
  }
  return read;
}

/** A run with what is measured of it. */
export function withMeasured(reader: Reader, run: RunSpec, read: ReadMeasured | undefined): RunSpec {
  if (!read) return run;
  const { pattern } = run.infill;
  const measured = withSaneBays(reader, run, withSaneEnds(reader, run, read.measured));
  const { bays, posts, cuts, height, bottom } = measured;
  const fit = read.fit && readFit(reader, read.fit, NO_BINDINGS, pattern);
  const says = bays.length + posts.length + cuts.length > 0 || height || bottom || fit;
  return says ? { ...run, measured: { ...measured, ...(fit ? { fit } : {}) } } : run;
}

/** Without ends between which there would be more slats than are laid out, which is told at one of them. */
function withSaneEnds(reader: Reader, run: RunSpec, measured: Measured): Measured {
  const { height, bottom, ...others } = measured;
  const end = height ?? bottom;
  if (!end || run.infill.flip.upright) return measured;
  const space = (height?.value ?? run.height.value.high) - (bottom?.value ?? run.bottom.value.low);
  const bays = bayEstimate(run.spacing.value, run.length.value, run.post.value.along.value);
  return hasSaneSlats(reader, run.infill, space, Math.max(1, bays), end.origin) ? measured : others;
}

/** Without bays along which there would be more upright slats than are laid out, which is told at the first of them. */
function withSaneBays(reader: Reader, run: RunSpec, measured: Measured): Measured {
  const [first] = measured.bays;
  if (!first || !run.infill.flip.upright) return measured;
  const space = measured.bays.reduce((sum, { middle }) => sum + middle, 0);
  return hasSaneSlats(reader, run.infill, space, 1, first.origin) ? measured : { ...measured, bays: [] };
}

function readMeasured(reader: Reader, node: ast.Measured, run: ast.Run): ReadMeasured {
  const bays = new Map<number, MeasuredBay>();
  const posts = new Map<number, MeasuredPost>();
  const cuts: CutSlats[] = [];
  const ends: { height?: Sourced<Ticks>; bottom?: Sourced<Ticks> } = {};
  let fit: ast.Fit | undefined;
  for (const statement of node.statements ?? []) {
    switch (statement.$type) {
      case 'MeasuredBay':
        keepBay(reader, bays, readBay(reader, statement), statement);
        break;
      case 'MeasuredPost':
        keepPost(reader, posts, readMeasuredPost(reader, statement, run), statement);
        break;
      case 'MeasuredHeight':
      case 'MeasuredBottom':
        keepEnd(reader, ends, statement);
        break;
      case 'Fit':
        if (fit) twice(reader, statement, 'fit', 'measured', originOf(reader, fit));
        fit ??= statement;
        break;
      case 'CutSlats':
        cuts.push(...readCut(reader, statement));
    }
  }
  const origin = originOf(reader, node);
  const measured = { bays: [...bays.values()], posts: [...posts.values()], cuts, ...ends, origin };
  return { measured, ...(fit ? { fit } : {}) };
}

function keepEnd(
  reader: Reader,
  ends: { height?: Sourced<Ticks>; bottom?: Sourced<Ticks> },
  statement: ast.MeasuredHeight | ast.MeasuredBottom,
): void {
  const what = statement.$type === 'MeasuredHeight' ? 'height' : 'bottom';
  const read = readLength(reader, statement.value, { what, zero: what === 'bottom' });
  const earlier = ends[what];
  if (earlier) twice(reader, statement, what, 'measured', earlier.origin);
  else if (read) ends[what] = { value: read.value, origin: originOf(reader, statement) };
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

function keepBay(
  reader: Reader,
  kept: Map<number, MeasuredBay>,
  one: MeasuredBay | undefined,
  node: ast.MeasuredBay,
): void {
  if (!one) return;
  const earlier = kept.get(one.number);
  if (earlier) twice(reader, node, `bay ${one.number}`, 'measured', earlier.origin);
  else kept.set(one.number, one);
}

/** What two statements say of one post goes together; what both say, the first says. */
function keepPost(
  reader: Reader,
  kept: Map<number, MeasuredPost>,
  one: MeasuredPost | undefined,
  node: ast.MeasuredPost,
): void {
  if (!one) return;
  const earlier = kept.get(one.number);
  const again = (['slope', 'off'] as const).some(
    (what) => one[what] !== undefined && earlier?.[what] !== undefined,
  );
  if (again && earlier) twice(reader, node, `post ${one.number}`, 'measured', earlier.origin);
  else kept.set(one.number, { ...one, ...earlier });
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
