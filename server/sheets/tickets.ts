import { labelSheet, type TicketBoard, ticketSheet } from '../../language/drawing/index.ts';
import type { Piece } from '../../language/layout/index.ts';
import type { Job } from '../../language/model/index.ts';
import {
  type BoardPlan,
  isTemporary,
  type PlannedBoard,
  piecesOf,
  type SawnPiece,
  type Takeoff,
} from '../../language/takeoff/index.ts';
import { formatLength } from '../../language/units/index.ts';
import type { SheetFile } from '../protocol.ts';
import { fileNameOf } from './file-name.ts';
import { pieceNotes } from './piece-notes.ts';

/** What is said on every sheet for the saw. */
const CAUTION =
  'Check each board before you cut it. Eye, ear and dust protection on; treated wood dust and offcuts are not burned.';

/** How pieces with angled ends are drawn and cut. */
const NESTED =
  'cut from the left, angled ends as they are drawn (dashed: of the lower face); parallel ends share one cut; pieces may lie end for end or turned over';

/** Sheets: boards to cut of each stock, and labels for the pieces, as SVG. */
export function ticketsOf(takeoff: Takeoff, job: Job): readonly SheetFile[] {
  const measure = job.measure.value;
  const sheets: SheetFile[] = [];
  const taken = new Set<string>();
  const put = (sheet: string, text: string) => sheets.push({ name: fileNameOf(sheet, '.svg', taken), text });
  const name = job.name === undefined ? '' : `${job.name}: `;
  // Bays are numbered anew in each run.
  const runs = new Set(takeoff.plans.flatMap((plan) => sawnFrom(plan).map(({ run }) => run)));
  for (const plan of takeoff.plans) {
    if (plan.boards.length === 0) continue;
    const isNested = plan.boards.some((board) => piecesOf(board).some(({ ends }) => ends !== undefined));
    const isRipped = plan.boards.some(({ parts }) => parts.some(({ ripped }) => ripped));
    put(
      `cut-${plan.bought.name}`,
      ticketSheet(
        {
          title: `${name}cut ${plan.bought.name}${isTemporary(plan) ? ', temporary' : ''}`,
          notes: [
            [
              `kerf ${formatLength(plan.kerf, measure)}`,
              ...(plan.trim > 0 ? [`trim ${formatLength(plan.trim, measure)} off each board first`] : []),
              isNested ? 'lengths are from tip to tip' : 'lengths are long points, longest first',
              ...(isRipped ? ['crosscut each board into its parts, rip parts, then crosscut strips'] : []),
            ].join('; '),
            ...(isNested ? [NESTED] : []),
            ...(plan.aim === 'settings' ? [settingsNote(plan)] : []),
            ...pieceNotes(sawnFrom(plan), measure),
            CAUTION,
          ],
          boards: groupsOf(plan, runs.size > 1),
        },
        measure,
      ),
    );
  }
  const labels = takeoff.plans.flatMap(({ demands }) =>
    demands.flatMap(({ stock, wanted }) =>
      wanted.flatMap(({ length, pieces }) =>
        pieces.map(({ label, run }) => ({
          label,
          note: `${run}, ${stock.name}, ${formatLength(length, measure)}`,
        })),
      ),
    ),
  );
  if (labels.length > 0) put('labels', labelSheet(`${name}labels`, labels));
  return sheets;
}

/** How boards are cut with as few settings as are counted. */
function settingsNote({ settings }: BoardPlan): string {
  return `${settings} setting${settings === 1 ? '' : 's'} of the stop: set it once for each length of a row, and cut that from all boards of the row`;
}

function sawnFrom({ demands }: BoardPlan): readonly Piece[] {
  return demands.flatMap(({ wanted }) => wanted.flatMap(({ pieces }) => pieces));
}

/** Boards cut alike together, by the stop of their longest piece, longest first. */
function groupsOf(
  { boards, kerf, bought, keptFrom }: BoardPlan,
  severalRuns: boolean,
): readonly TicketBoard[] {
  const alike = new Map<string, PlannedBoard[]>();
  for (const board of boards) {
    const cuts = board.parts.map(({ length, strips }) => [
      length,
      strips.map(({ width, pieces }) => [width, pieces.map((piece) => [piece.length, piece.ends])]),
    ]);
    const key = JSON.stringify([board.stock, board.length, board.onHand?.length, cuts]);
    const held = alike.get(key);
    if (held) held.push(board);
    else alike.set(key, [board]);
  }
  return [...alike.values()]
    .sort((a, b) => longestOf(b[0]) - longestOf(a[0]) || (b[0]?.length ?? 0) - (a[0]?.length ?? 0))
    .flatMap((same) => {
      const [first] = same;
      if (!first) return [];
      const ticket = ticketOf(first, same, kerf, bought.name);
      const parts = ticket.parts.map((part, p) => ({
        ...part,
        of: runsOf(same.map((board) => board.parts[p])),
      }));
      return [{ ...ticket, ...(severalRuns ? { parts } : {}), keep: first.offcut >= keptFrom }];
    });
}

function ticketOf(
  first: PlannedBoard,
  same: readonly PlannedBoard[],
  kerf: number,
  bought: string,
): Omit<TicketBoard, 'keep'> {
  return {
    times: same.length,
    ...(first.stock === bought && !first.onHand ? {} : { stock: whence(first, bought) }),
    length: first.length,
    width: first.width,
    offcut: first.offcut,
    kerf,
    parts: first.parts.map((part, p) => ({
      length: part.length,
      at: part.at,
      ripped: part.ripped,
      strips: part.strips.map((strip, s) => ({
        width: strip.width,
        pieces: strip.pieces.map(({ length, piece, ends, at: from }, at) => ({
          label: labelOf(same.map(({ parts }) => parts[p]?.strips[s]?.pieces[at])),
          length,
          at: from,
          ...(ends ? { ends } : {}),
          mitered: piece.cut.ends.some(({ miter, bevel }) => miter !== 0 || bevel !== 0),
        })),
      })),
    })),
  };
}

/** The runs that the pieces of a part belong to, on all boards that are cut alike. */
function runsOf(parts: readonly (PlannedBoard['parts'][number] | undefined)[]): string {
  const pieces = parts.flatMap((part) => part?.strips.flatMap((strip) => strip.pieces) ?? []);
  const runs = [...new Set(pieces.map(({ piece }) => piece.run))];
  return runs.length > MOST_NAMED ? `${runs.length} runs` : runs.join(' and ');
}

/** More runs than this are counted under a part. */
const MOST_NAMED = 2;

/** What is said of a board that is not bought: `on hand`, or the strip it is. */
function whence({ stock, onHand }: PlannedBoard, bought: string): string {
  const part = onHand?.usable ? 'usable part ' : '';
  return `${stock === bought ? '' : `${stock} `}${part}${onHand ? 'on hand' : ''}`.trim();
}

const longestOf = (board: PlannedBoard | undefined): number =>
  Math.max(0, ...(board ? piecesOf(board).map(({ length }) => length) : []));

/** The label of one; of several alike the first and how many more. */
function labelOf(pieces: readonly (SawnPiece | undefined)[]): string {
  const first = pieces[0]?.piece.label ?? '';
  return pieces.length > 1 ? `${first} +${pieces.length - 1}` : first;
}
