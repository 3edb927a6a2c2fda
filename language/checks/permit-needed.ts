import { formatLength } from '../units/index.ts';
import { heightOfBay } from './bay-height.ts';
import type { LimitedRunCheck } from './define.ts';
import { CHOSEN_RULES, ruleOf, ruleThreshold } from './rule-of.ts';

/** A screen higher than what is built without asking, by the rules chosen. */
export const permitNeeded: LimitedRunCheck = {
  kind: {
    code: 'permit-needed',
    severity: 'information',
    stage: 'layout',
    basis: CHOSEN_RULES,
    threshold: ruleThreshold(84, 2000, 'height above ground up to which no permit is asked for'),
    message: (a) =>
      `${a.run} is up to ${a.height} above the ground; higher than ${a.limit} a permit is asked for (${a.from}). Many towns ask sooner. Ask your local authority before you order.`,
  },
  check: (run, job) => {
    const rule = ruleOf(job, 'permit-needed');
    if (!rule) return [];
    const { deck } = run.spec;
    const under = deck?.ground ? deck.surface.value - deck.ground.value : 0;
    const height = under + Math.max(0, ...run.bays.map((bay) => heightOfBay(run, bay)?.most ?? 0));
    if (height <= rule.value) return [];
    const { height: stated } = run.spec;
    return [
      {
        code: 'permit-needed',
        at: stated.origin,
        args: {
          run: run.spec.name,
          height: formatLength(height, job.measure.value),
          limit: formatLength(rule.value, job.measure.value),
          from: rule.from,
        },
      },
    ];
  },
};
