import type { Piece, RunLayout } from '../../language/layout/index.ts';
import type { Job } from '../../language/model/index.ts';
import { formatLength } from '../../language/units/index.ts';
import type { Material } from '../protocol.ts';

/** Lines for pieces by their keys, as far as they are still there, in the order of the layout. */
export function pieceLines(
  keys: readonly string[],
  under: string,
  runs: readonly RunLayout[],
  job: Job,
): readonly Material[] {
  const wanted = new Set(keys);
  return runs.flatMap(({ pieces, temporary }) =>
    [...pieces, ...temporary.pieces]
      .filter(({ key }) => wanted.has(key))
      .map(
        (piece): Material => ({
          id: `${under}/${piece.key}`,
          label: nameOf(piece),
          note: `${piece.label}, ${formatLength(piece.cut.longPoint, job.measure.value)}`,
          tip: 'Show where it is written',
          kind: 'piece',
          piece: piece.key,
        }),
      ),
  );
}

/** As people speak of it: `court, bay 2, slat 7`, `court, bays 1 to 3, slat 7`, `court, gate cycles, stile`, `court, post`. */
function nameOf({ run, gate, bay, until, role, course }: Piece): string {
  const bays = bay === undefined ? [] : [until === undefined ? `bay ${bay}` : `bays ${bay} to ${until}`];
  return [
    run,
    ...(gate === undefined ? bays : [`gate ${gate}`]),
    course === undefined ? role : `${role} ${course}`,
  ].join(', ');
}
