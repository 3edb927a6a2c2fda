import type { Piece, RunLayout } from '../../language/layout/index.ts';
import { formatDegrees, type Measure, spellLength } from '../../language/units/index.ts';
import type { PlacedFinding } from '../../server/work/place-findings.ts';

/** One line a piece: key, label, role, what is cut, and where it is: x, y and z in the frame of its run. */
export function listPieces(runs: readonly RunLayout[], measure: Measure): string {
  const rows = runs.flatMap((run) => run.pieces.map((piece) => cells(piece, measure)));
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows
    .map(
      (row) =>
        `${row
          .map((cell, column) => cell.padEnd(widths[column] ?? 0))
          .join('  ')
          .trimEnd()}\n`,
    )
    .join('');
}

/** Place, code and message of each finding, and what would mend it. */
export function listFindings(findings: readonly PlacedFinding[]): string {
  return findings
    .map(({ code, severity, message, range, fixes }) => {
      const place = `${range.start.line + 1}:${range.start.character + 1}-${range.end.character + 1}`;
      return `${place} ${severity} ${code} ${message}\n${fixes.map(({ title }) => `    ${title}\n`).join('')}`;
    })
    .join('');
}

function cells({ key, label, role, cut, solid }: Piece, measure: Measure): string[] {
  const length = (ticks: number) => spellLength(Math.round(ticks), measure);
  const reach = ([0, 1, 2] as const).map((axis) => {
    const along = solid.vertices.map((vertex) => vertex[axis]);
    return `${length(Math.min(...along))} to ${length(Math.max(...along))}`;
  });
  const ends = cut.ends.map(({ miter, bevel }) =>
    miter === 0 && bevel === 0 ? 'square' : `${formatDegrees(miter)}/${formatDegrees(bevel)}`,
  );
  const long = length(cut.longPoint);
  return [
    key,
    label,
    role,
    `${cut.stock}${cut.ripped ? ' ripped' : ''} ${length(cut.width)} x ${length(cut.thickness)}`,
    cut.longPoint === cut.shortPoint ? long : `${long} (${length(cut.shortPoint)})`,
    ends[0] === ends[1] ? (ends[0] ?? '') : ends.join(' '),
    ...reach.map((text, axis) => `${'xyz'[axis]} ${text}`),
  ];
}
