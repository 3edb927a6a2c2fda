import type { InfillSpec, Problem } from '../model/index.ts';
import { geometryProblem } from './problems.ts';

/** Slats by turns on both faces that are not all of one board: then the faces would not overlap alike. */
export function alternateProblem({ mounting, pattern }: InfillSpec): Problem | undefined {
  if (mounting.value.kind !== 'alternate') return undefined;
  const boards = [...new Set(pattern.repeat.map(({ value }) => value.name))];
  if (boards.length < 2) return undefined;
  return geometryProblem('alternate-boards', mounting.origin, {
    pattern: pattern.name,
    boards: boards.join(', '),
  });
}
