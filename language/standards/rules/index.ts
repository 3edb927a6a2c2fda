/**
 * Rules of places as data: guards, pools, fences. One set a file or a few short ones together; each value with its
 * source and how sure we are of it. A set is in force only where a job chooses it.
 */
import { AUSTRALIA_POOL, CANADA_GUARDS, ENGLAND_FENCES, GERMANY_SCREENS } from './other-places.ts';
import type { RuleSet } from './rule-set.ts';
import { US_MODEL_CODES } from './us-model-codes.ts';
import { US_POOL } from './us-pool.ts';
import { US_CORNER, US_DIGGING } from './us-site.ts';

export type { Rule, RuleName, RuleSet } from './rule-set.ts';

export const RULE_SETS: readonly RuleSet[] = [
  US_MODEL_CODES,
  US_POOL,
  US_CORNER,
  US_DIGGING,
  CANADA_GUARDS,
  AUSTRALIA_POOL,
  ENGLAND_FENCES,
  GERMANY_SCREENS,
];
