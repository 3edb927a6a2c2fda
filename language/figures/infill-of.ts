import type { RunLayout } from '../layout/index.ts';
import type { InfillSpec } from '../model/index.ts';

/**
 * What fills the bays of a run or, by its name, one of its leaves. Each leaf of a pair has a name of its own, which no
 * statement of a gate has: so leaves are looked up as they hang.
 */
export function infillOf(
  { spec, leaves }: Pick<RunLayout, 'spec' | 'leaves'>,
  gate: string | undefined,
): InfillSpec {
  return leaves.find((leaf) => leaf.gate === gate)?.spec.infill ?? spec.infill;
}
