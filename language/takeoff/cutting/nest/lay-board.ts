import type { CutBoard, CutDemand, CutInstance, CutPart, CutPlace, CutStrip, CutTurn } from '../problem.ts';
import { squareEnds } from './ends.ts';
import { type Block, layRow, type Row } from './lay-row.ts';

/** A piece of a row, by its label. */
interface PieceBlock extends Block {
  readonly label: string;
}

interface PartBlock extends Block {
  readonly part: CutPart;
}

/** What a board is laid with. */
export interface Laying {
  readonly instance: CutInstance;
  readonly demands: ReadonlyMap<string, CutDemand>;
  readonly turns: readonly CutTurn[];
}

/**
 * A board with its pieces where they lie, those of a row turned and in an order that lets alike angles meet; undefined
 * where they are longer than the board all the same.
 */
export function layBoard(board: CutBoard, laying: Laying): CutBoard | undefined {
  const { instance } = laying;
  const room = board.length - (instance.trim ?? 0);
  if (!board.parts) {
    const row = layRow(
      board.pieces.map((label) => blockOf(label, laying)),
      laying.turns,
    );
    if (row.used > room + 1e-6) return undefined;
    const pieces = row.placed.map(({ block }) => block.label);
    return { ...board, pieces, places: placesOf(row), offcut: leftOf(row, room) };
  }
  const across = instance.stock[board.stock]?.width ?? 0;
  const blocks = board.parts.map((part): PartBlock => {
    const [strip] = part.strips;
    const [label] = strip?.pieces ?? [];
    if (strip && label !== undefined && part.strips.length === 1 && Math.abs(strip.width - across) < 1e-9)
      return { ...blockOf(label, laying), part };
    const { length, strips } = layStrips(part.strips, laying);
    return { ends: squareEnds(instance.kerf), length, part: { length, strips } };
  });
  const row = layRow(blocks, laying.turns);
  if (row.used > room + 1e-6) return undefined;
  const parts = row.placed.map(({ block: { part, length }, at, turn }) => {
    const [strip] = part.strips;
    const isPiece = strip && part.strips.length === 1 && strip.places === undefined;
    if (!isPiece) return { ...part, at };
    return { ...part, length, at, strips: [{ ...strip, places: [{ at: 0, turn }] }] };
  });
  const pieces = parts.flatMap(({ strips }) => strips.flatMap((strip) => strip.pieces));
  return { ...board, parts, pieces, offcut: leftOf(row, room) };
}

/** Strips side by side, each laid by itself; the part is as long as the longest. */
function layStrips(
  strips: readonly CutStrip[],
  laying: Laying,
): { length: number; strips: readonly CutStrip[] } {
  const rows = strips.map((strip) => ({
    strip,
    row: layRow(
      strip.pieces.map((label) => blockOf(label, laying)),
      laying.turns,
    ),
  }));
  const length = Math.max(0, ...rows.map(({ row }) => row.used));
  return {
    length,
    strips: rows.map(({ strip, row }) => ({
      width: strip.width,
      pieces: row.placed.map(({ block }) => block.label),
      places: placesOf(row),
      offcut: leftOf(row, length),
    })),
  };
}

function blockOf(label: string, { demands, instance }: Laying): PieceBlock {
  const { length = 0, ends } = demands.get(label) ?? {};
  return { label, length, ends: ends ?? squareEnds(instance.kerf) };
}

const placesOf = ({ placed }: Row<Block>): readonly CutPlace[] =>
  placed.map(({ at, turn }) => ({ at, turn }));

/** Behind the cut that parts it from the last piece's tip. */
function leftOf({ placed, used }: Row<Block>, room: number): number {
  const kerf = placed[placed.length - 1]?.ends[1].kerf ?? 0;
  return Math.max(0, room - used - kerf);
}
