import type * as ast from '../grammar/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import { MOST_LENGTHS } from './bounds.ts';
import type { FlatStock, Origin, Sourced } from './job.ts';
import { readLength } from './read-length.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';

/** A stock as it came: its width the mean of what was measured, its thickness the greatest. */
export function asMeasured(reader: Reader, node: ast.Stock, stock: FlatStock): FlatStock {
  const block = blocksOf(reader).find(({ stock: reference }) => follow(reference) === node);
  const read = block && readSizes(reader, block);
  if (!block || !read) return stock;
  const { widths, thicknesses } = read;
  const { width, thickness } = stock;
  return {
    ...stock,
    ...(widths.value.length > 0 ? { width: { value: meanOf(widths.value), origin: widths.origin } } : {}),
    ...(thicknesses.value.length > 0
      ? { thickness: { value: Math.max(...thicknesses.value), origin: thicknesses.origin } }
      : {}),
    measured: {
      widths: widths.value,
      thicknesses: thicknesses.value,
      planned: { width, thickness },
      origin: originOf(reader, block),
    },
  };
}

/** Whether a stock, or the board it is ripped from, was measured. */
export function isMeasured({ measured, parent }: FlatStock): boolean {
  return measured !== undefined || (parent !== undefined && isMeasured(parent));
}

/** The stock as it was taken to be before it, or the board it is ripped from, was measured. */
export function asPlanned(stock: FlatStock): FlatStock {
  if (!isMeasured(stock)) return stock;
  const { measured, parent, ...rest } = stock;
  const board = parent && asPlanned(parent);
  return {
    ...rest,
    ...(board ? { parent: board, thickness: board.thickness } : {}),
    ...(measured ? { width: measured.planned.width } : {}),
    ...(measured && !board ? { thickness: measured.planned.thickness } : {}),
  };
}

/** Every block of the file that says what boards measure. */
export const blocksOf = (reader: Reader): readonly ast.MeasuredBoard[] =>
  (reader.root.elements ?? []).filter((element) => element.$type === 'MeasuredBoard');

/** Whole ticks, so that no board is taken for wider than the boards are together. */
const meanOf = (sizes: readonly Ticks[]): Ticks =>
  Math.max(1, Math.round(sizes.reduce((sum, size) => sum + size, 0) / sizes.length));

/** Undefined where none of its sizes can be read. */
function readSizes(
  reader: Reader,
  block: ast.MeasuredBoard,
):
  | { readonly widths: Sourced<readonly Ticks[]>; readonly thicknesses: Sourced<readonly Ticks[]> }
  | undefined {
  const first = new Map<string, ast.MeasuredSize>();
  for (const statement of block.statements ?? []) {
    const what = statement.$type === 'MeasuredWidth' ? 'width' : 'thickness';
    const earlier = first.get(what);
    if (!earlier) first.set(what, statement);
    else
      tell(reader, 'stated-twice', originOf(reader, statement), { what, block: 'measured board' }, [
        { origin: originOf(reader, earlier), note: what },
      ]);
  }
  const of = (what: string): Sourced<readonly Ticks[]> => {
    const statement = first.get(what);
    return { value: sizesOf(reader, statement, what), origin: originOf(reader, statement ?? block) };
  };
  const [widths, thicknesses] = [of('width'), of('thickness')];
  return widths.value.length + thicknesses.value.length > 0 ? { widths, thicknesses } : undefined;
}

function sizesOf(reader: Reader, statement: ast.MeasuredSize | undefined, what: string): readonly Ticks[] {
  const stated = statement?.values ?? [];
  if (statement && stated.length > MOST_LENGTHS) {
    const count = String(stated.length);
    const args = { what: 'measures', count, reason: 'too-many' as const, least: 1, most: MOST_LENGTHS };
    tell(reader, 'absurd-count', originOf(reader, statement), args);
  }
  return stated.slice(0, MOST_LENGTHS).flatMap((length) => readLength(reader, length, { what })?.value ?? []);
}

/** Tells, where a board was measured, that a rip is not narrower than that board has turned out to be. */
export function tellTooNarrow(reader: Reader, name: string, width: Ticks, parent: FlatStock): void {
  const at = measuredAt(parent);
  if (!at) return;
  const [size = '', limit = ''] = [width, parent.width.value].map((ticks) =>
    formatLength(ticks, reader.measure),
  );
  const args = { what: `width of ${name}`, size, reason: 'not-narrower' as const, limit };
  tell(reader, 'impossible-size', at, args, [{ origin: parent.origin, note: parent.kind }]);
}

const measuredAt = ({ measured, parent }: FlatStock): Origin | undefined =>
  measured?.origin ?? (parent && measuredAt(parent));
