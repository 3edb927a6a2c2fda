import type { Ticks } from '../../units/index.ts';
import type { Published } from '../source.ts';

/** What rules measure: the code of the finding that holds a job against them, or a condition of one. */
export type RuleName =
  | 'guard-drop'
  | 'guard-low'
  | 'guard-opening'
  | 'climb-drop'
  | 'climb-from'
  | 'climb-to'
  | 'pool-low'
  | 'pool-gap-under'
  | 'pool-opening'
  | 'pool-climb-apart'
  | 'pool-climb-gap'
  | 'pool-latch'
  | 'permit-needed'
  | 'in-sight-triangle'
  | 'sight-to'
  | 'near-utility';

/** A length that a rule sets. */
export interface Rule extends Published {
  readonly value: Ticks;
}

/**
 * Rules of one place and edition, as data. None is in force unless a job chooses it; places adopt and change such
 * rules as they see fit, so what is found by them is a question for the local authority, not an answer.
 */
export interface RuleSet {
  /** The word a job chooses it by. */
  readonly id: string;
  readonly title: string;
  readonly place: string;
  readonly edition: string;
  readonly rules: Readonly<Partial<Record<RuleName, Rule>>>;
}
