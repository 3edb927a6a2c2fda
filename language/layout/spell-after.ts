import type { Placement } from '../model/index.ts';
import { type Measure, spellLength } from '../units/index.ts';
import { spellName } from './fit/index.ts';

/** How the text states a run that goes straight on with a post of its own; a space only where one is stated. */
export function spellAfter(
  { run, gap, step, bridge }: Extract<Placement, { kind: 'on' }>,
  measure: Measure,
): string {
  const on = gap.origin.why === 'stated' ? `, ${spellLength(gap.value, measure)} on` : '';
  const off = step
    ? `, steps ${step.value > 0 ? 'back' : 'forward'} ${spellLength(Math.abs(step.value), measure)}`
    : '';
  const board = bridge?.kind === 'filler' ? ` ${spellName(bridge.board.value.name)}` : '';
  return `after ${spellName(run)}${on}${off}${bridge ? `, closed by ${bridge.kind}${board}` : ''}`;
}
