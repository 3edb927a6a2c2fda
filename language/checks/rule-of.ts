import { type Job, statedLimit } from '../model/index.ts';
import { RULE_SETS, type RuleName } from '../standards/index.ts';
import { inches, mm, type Ticks } from '../units/index.ts';
import type { Basis, Threshold } from './finding.ts';

/** A rule in force in a job. */
export interface RuleInForce {
  readonly value: Ticks;
  /** Where it stands, for the end of a message. */
  readonly from: string;
}

/**
 * A rule by the first of the sets a job chooses that has it; the job's own threshold of that name comes before all.
 * Undefined where nothing puts it in force.
 */
export function ruleOf(job: Job, name: RuleName): RuleInForce | undefined {
  const stated = statedLimit(job, name, 'length');
  if (stated) return { value: stated.value, from: "the job's own threshold" };
  for (const { value } of job.rules) {
    const set = RULE_SETS.find(({ id }) => id === value);
    const rule = set?.rules[name];
    if (set && rule) return { value: rule.value, from: `${rule.source}, ${rule.section}` };
  }
  return undefined;
}

/** What every finding by a rule rests on; which rule, its message says. */
export const CHOSEN_RULES: Basis = {
  kind: 'published',
  source: 'the rule set that the job chooses; places adopt and change such rules, so ask the local authority',
  confirmed: 'secondary',
};

/** A threshold of a rule, with a value of the model codes for those who state their own. */
export function ruleThreshold(imperial: number, metric: number, says: string): Threshold {
  return { is: 'length', imperial: inches(imperial), metric: mm(metric), says };
}
