import { labelSheet, type TicketBoard, ticketSheet } from '../../language/drawing/index.ts';
import type { Job } from '../../language/model/index.ts';
import type { BoardPlan, PlannedBoard, Takeoff } from '../../language/takeoff/index.ts';
import { formatLength } from '../../language/units/index.ts';

/** What is said on every sheet for the saw. */
const CAUTION =
  'Check each board before you cut it. Eye, ear and dust protection on; treated wood dust and offcuts are not burned.';

/** Sheets by file name: boards to cut of each stock, and labels for the pieces. */
export function ticketsOf(takeoff: Takeoff, job: Job): ReadonlyMap<string, string> {
  const measure = job.measure.value;
  const sheets = new Map<string, string>();
  const name = job.name === undefined ? '' : `${job.name}: `;
  for (const plan of takeoff.plans) {
    if (plan.boards.length === 0) continue;
    const { stock } = plan.demand;
    sheets.set(
      `cut-${stock.name}`,
      ticketSheet(
        {
          title: `${name}cut ${stock.name}`,
          notes: [
            [
              `kerf ${formatLength(plan.kerf, measure)}`,
              ...(plan.trim > 0 ? [`trim ${formatLength(plan.trim, measure)} off each board first`] : []),
              ...(plan.strips > 1 ? [`rip ${plan.bought.name} into ${plan.strips} strips first`] : []),
              'lengths are long points, longest first',
            ].join('; '),
            CAUTION,
          ],
          boards: groupsOf(plan),
        },
        measure,
      ),
    );
  }
  const labels = takeoff.plans.flatMap(({ demand }) =>
    demand.wanted.flatMap(({ length, pieces }) =>
      pieces.map(({ label, run }) => ({
        label,
        note: `${run}, ${demand.stock.name}, ${formatLength(length, measure)}`,
      })),
    ),
  );
  if (labels.length > 0) sheets.set('labels', labelSheet(`${name}labels`, labels));
  return sheets;
}

/** A sheet's name as that of a file. */
export function fileNameOf(sheet: string): string {
  return `${sheet.replace(/[^\p{L}\p{N}_-]+/gu, '-')}.svg`;
}

/** Boards cut alike together, by the stop of their longest piece, longest first. */
function groupsOf({ boards, kerf }: BoardPlan): readonly TicketBoard[] {
  const alike = new Map<string, PlannedBoard[]>();
  for (const board of boards) {
    const key = `${board.length} ${board.onHand} ${board.pieces.map(({ length }) => length).join()}`;
    alike.set(key, [...(alike.get(key) ?? []), board]);
  }
  return [...alike.values()]
    .sort((a, b) => longestOf(b[0]) - longestOf(a[0]) || (b[0]?.length ?? 0) - (a[0]?.length ?? 0))
    .flatMap((same) => {
      const [first] = same;
      if (!first) return [];
      return [
        {
          times: same.length,
          length: first.length,
          offcut: first.offcut,
          kerf,
          pieces: first.pieces.map(({ length, piece }, at) => ({
            label: labelOf(same.map((board) => board.pieces[at]?.piece.label ?? '')),
            length,
            mitered: piece.cut.ends.some(({ miter, bevel }) => miter !== 0 || bevel !== 0),
          })),
        },
      ];
    });
}

const longestOf = (board: PlannedBoard | undefined): number => board?.pieces[0]?.length ?? 0;

/** The label of one; of several alike the first and how many more. */
function labelOf(labels: readonly string[]): string {
  return labels.length > 1 ? `${labels[0]} +${labels.length - 1}` : (labels[0] ?? '');
}
