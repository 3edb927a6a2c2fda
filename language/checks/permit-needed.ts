import { aboveGround } from '../layout/index.ts';
import { lowestGround } from '../model/index.ts';
import { formatLength } from '../units/index.ts';
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
    const ground = run.spec.deck?.ground?.value;
    const heights = run.bays.map((bay) => {
      const edge = run.edges.get(bay.number)?.top;
      if (edge && ground === undefined) return aboveGround(run, bay, edge).most + run.spec.tops.value;
      const top = Math.max(run.reach.get(bay.number)?.[1] ?? run.top, run.postTop);
      return top - (ground ?? lowestGround(run.groundLine, bay.from, bay.to));
    });
    const height = Math.max(0, ...heights);
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
