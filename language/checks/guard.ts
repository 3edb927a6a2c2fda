import { openBesideWall } from '../figures/index.ts';
import { aboveGround, type Bay, bottomEdge, type RunLayout } from '../layout/index.ts';
import { highestGround, type Job, lowestGround, type Origin } from '../model/index.ts';
import { RULE_SETS } from '../standards/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import { heightOfBay } from './bay-height.ts';
import type { LimitedRunCheck, RunCheck } from './define.ts';
import type { Finding } from './finding.ts';
import { raisedHeight } from './raise-height.ts';
import { CHOSEN_RULES, type RuleInForce, ruleOf, ruleThreshold } from './rule-of.ts';

const ASK = 'Ask your local authority.';

/** A drop that a run guards: how far it is, and where it is stated. */
interface Drop {
  readonly value: Ticks;
  readonly at: Origin;
}

/** As stated, or that of the deck it stands on. */
function dropOf({ spec }: RunLayout): Drop | undefined {
  if (spec.drop) return { value: spec.drop.value, at: spec.drop.origin };
  const { deck } = spec;
  if (!deck?.ground) return undefined;
  return { value: deck.surface.value - deck.ground.value, at: deck.statement };
}

/** The drop and the rule that asks for a guard at it; undefined where none is asked for. */
function guarded(run: RunLayout, job: Job): { drop: Drop; rule: RuleInForce } | undefined {
  const drop = dropOf(run);
  const rule = ruleOf(job, 'guard-drop');
  return drop && rule && drop.value > rule.value ? { drop, rule } : undefined;
}

/** No rule set known here asks for a guard at less. */
const LEAST_TRIGGER = Math.min(...RULE_SETS.flatMap(({ rules }) => rules['guard-drop']?.value ?? []));

/** A drop with no rules chosen to hold it against. */
export const guardUnjudged: RunCheck = {
  kind: {
    code: 'guard-unjudged',
    severity: 'information',
    stage: 'layout',
    basis: CHOSEN_RULES,
    message: (a) =>
      `Run ${a.run} stands at a drop of ${a.drop}, and no rules for guards are chosen. Where a guard is asked for, its height, openings and loads are ruled. Write \`rules us-model-codes\`, or the set of your place, and ask your local authority.`,
  },
  check: (run, job) => {
    const drop = dropOf(run);
    if (!drop || drop.value <= LEAST_TRIGGER || ruleOf(job, 'guard-drop')) return [];
    return [
      {
        code: 'guard-unjudged',
        at: drop.at,
        args: { run: run.spec.name, drop: formatLength(drop.value, job.measure.value) },
      },
    ];
  },
};

/** A run at a drop that is lower than a guard has to be. */
export const guardLow: LimitedRunCheck = {
  kind: {
    code: 'guard-low',
    severity: 'warning',
    stage: 'layout',
    basis: CHOSEN_RULES,
    threshold: ruleThreshold(36, 900, 'least height of a guard above the floor'),
    message: (a) =>
      `Beside a drop of ${a.drop} a guard is ${a.least} high or more (${a.from}); bay ${a.bay} of ${a.run} ends ${a.height} above the floor. ${ASK}`,
  },
  check: (run, job) => {
    const asked = guarded(run, job);
    const least = asked && ruleOf(job, 'guard-low');
    if (!asked || !least) return [];
    const low = run.bays
      .flatMap((bay) => {
        const height = heightOfBay(run, bay);
        return height ? [{ number: bay.number, height: height.least }] : [];
      })
      .sort((a, b) => a.height - b.height)[0];
    if (!low || low.height >= least.value) return [];
    return [
      {
        ...told('guard-low', run, job, asked.drop, least, {
          least: formatLength(least.value, job.measure.value),
          bay: low.number,
          height: formatLength(low.height, job.measure.value),
        }),
        fixes: raisedHeight(run, job, least.value - low.height),
      },
    ];
  },
};

/** An opening below the height of a guard that a ball passes. */
export const guardOpening: LimitedRunCheck = {
  kind: {
    code: 'guard-opening',
    severity: 'warning',
    stage: 'layout',
    basis: CHOSEN_RULES,
    threshold: ruleThreshold(4, 100, 'ball that must not pass a guard'),
    message: (a) =>
      `A ball of ${a.ball} passes ${a.where} of ${a.run}, ${a.size} wide, which guards a drop of ${a.drop} (${a.from}). Narrow the gap. ${ASK}`,
  },
  check: (run, job) => {
    const asked = guarded(run, job);
    const ball = asked && ruleOf(job, 'guard-opening');
    if (!asked || !ball) return [];
    const height = ruleOf(job, 'guard-low')?.value ?? Infinity;
    const wide = run.openings
      .filter(({ x0, x1, z0 }) => z0 < highestGround(run.groundLine, x0, x1) + height)
      .map(({ x0, x1, z0, z1, bay }) => ({ bay, size: Math.min(x1 - x0, z1 - z0) }))
      .sort((a, b) => b.size - a.size)[0];
    const under = Math.max(0, ...run.bays.map((bay) => clearUnder(run, bay)));
    const beside = openBesideWall(run);
    const found = [
      ...(wide && wide.size >= ball.value
        ? [{ where: `an opening in bay ${wide.bay ?? ''}`, size: wide.size }]
        : []),
      ...(under >= ball.value ? [{ where: 'the gap under the slats', size: under }] : []),
      ...(beside >= ball.value ? [{ where: 'the gap at the wall', size: Math.round(beside) }] : []),
    ];
    return found.slice(0, 1).map(({ where, size }) =>
      told('guard-opening', run, job, asked.drop, ball, {
        ball: formatLength(ball.value, job.measure.value),
        where,
        size: formatLength(size, job.measure.value),
      }),
    );
  },
};

/** Level slats that help a child to climb a guard, where rules know of it. */
export const guardClimbable: RunCheck = {
  kind: {
    code: 'guard-climbable',
    severity: 'warning',
    stage: 'layout',
    basis: CHOSEN_RULES,
    message: (a) =>
      `Level slats of ${a.run} make steps between ${a.from1} and ${a.to} above the floor, beside a drop of ${a.drop} (${a.from}). Set the slats upright. ${ASK}`,
  },
  check: (run, job) => {
    const drop = dropOf(run);
    const [from, to, least] = [ruleOf(job, 'climb-from'), ruleOf(job, 'climb-to'), ruleOf(job, 'climb-drop')];
    if (!drop || !from || !to || !least || drop.value <= least.value || run.spec.infill.flip.upright)
      return [];
    const isStep = (bay: Bay) => {
      const low = lowestGround(run.groundLine, bay.from, bay.to);
      const high = highestGround(run.groundLine, bay.from, bay.to);
      return (run.courses.get(bay.number) ?? []).some(
        ({ start }) => start - low > from.value && start - high < to.value,
      );
    };
    if (!run.bays.some(isStep)) return [];
    return [
      told('guard-climbable', run, job, drop, least, {
        from1: formatLength(from.value, job.measure.value),
        to: formatLength(to.value, job.measure.value),
      }),
    ];
  },
};

/** The greatest gap under a bay. */
function clearUnder(run: RunLayout, bay: Bay): Ticks {
  const edge = bottomEdge(run, bay.number);
  return edge ? aboveGround(run, bay, edge).most : 0;
}

function told(
  code: string,
  run: RunLayout,
  job: Job,
  drop: Drop,
  rule: RuleInForce,
  args: Finding['args'],
): Finding {
  return {
    code,
    at: drop.at,
    args: { run: run.spec.name, drop: formatLength(drop.value, job.measure.value), from: rule.from, ...args },
  };
}
