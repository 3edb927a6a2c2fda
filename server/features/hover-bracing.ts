import type { RunLayout } from '../../language/layout/index.ts';
import { neededAtOnce } from '../../language/takeoff/index.ts';
import { formatLength, type Measure, type Ticks } from '../../language/units/index.ts';

/** As many strips and braces as a hover has room for; the sheet of the takeoff has them all. */
const MOST = 8;

/** What sets the posts of the runs that take it from the statement at `path`: strips with their marks, and braces. */
export function bracingLines(path: string, runs: readonly RunLayout[], measure: Measure): readonly string[] {
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  const lines = runs
    .filter(({ spec }) => spec.bracing?.origin.path === path)
    .flatMap((run) => {
      const { temporary, spec } = run;
      if (temporary.pieces.length === 0) return [];
      const strips = temporary.pieces
        .filter(({ role, label }) => role === 'strip' && label.endsWith('T'))
        .map(({ bay, cut }) => {
          const marks = cut.marks
            ? `, marked at ${cut.marks.map(shown).join(' and ')}`
            : ', cut to the clear width';
          return `${spec.name}, bay ${bay}: two strips ${shown(cut.longPoint)}${marks}`;
        });
      const braces = temporary.pieces
        .filter(({ role }) => role === 'prop')
        .map(({ label, cut }) => `${spec.name}, ${label}: brace ${shown(cut.longPoint)}`);
      const all = [...strips, ...braces];
      const count = neededAtOnce(run, measure.step).length;
      return [
        ...all.slice(0, MOST),
        ...(all.length > MOST
          ? [`${all.length - MOST} more; Show Takeoff has the sheet for setting out`]
          : []),
        `${count} pieces to cut for ${spec.name}, stakes included${spec.bracing?.again ? ', for they go on from bay to bay' : ''}; temporary, no part of the screen`,
      ];
    });
  return lines.length > 0 ? [...lines, 'Braces stay until the concrete has set, as its maker says.'] : [];
}
