import { openBesideWall } from '../figures/index.ts';
import { aboveGround, bottomEdge, type RunLayout, topEdge } from '../layout/index.ts';
import { facesOf, faceToward, type Job, type RunSpec } from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import type { LimitedRunCheck, RunCheck } from './define.ts';
import type { Finding } from './finding.ts';
import { raisedHeight } from './raise-height.ts';
import { CHOSEN_RULES, type RuleInForce, ruleOf, ruleThreshold } from './rule-of.ts';

const ASK =
  'Ask your local authority: barriers of pools keep children alive, and their rules differ by place.';

type Pool = NonNullable<RunSpec['pool']>;

/** A run of a pool's barrier with no rules chosen to hold it against. */
export const poolUnjudged: RunCheck = {
  kind: {
    code: 'pool-unjudged',
    severity: 'information',
    stage: 'layout',
    basis: CHOSEN_RULES,
    message: (a) =>
      `Run ${a.run} is part of a pool's barrier, and no rules for pools are chosen. Write \`rules us-pool\`, or the set of your place. ${ASK}`,
  },
  check: (run, job) =>
    run.spec.pool && !ruleOf(job, 'pool-low')
      ? [{ code: 'pool-unjudged', at: run.spec.pool.origin, args: { run: run.spec.name } }]
      : [],
};

/** A barrier lower than it has to be, from the lowest ground beside it. */
export const poolLow: LimitedRunCheck = {
  kind: {
    code: 'pool-low',
    severity: 'warning',
    stage: 'layout',
    basis: CHOSEN_RULES,
    threshold: ruleThreshold(
      48,
      1200,
      "least height of a pool's barrier above the ground away from the pool",
    ),
    message: (a) =>
      `A pool's barrier is ${a.limit} high or more above the ground away from the pool (${a.from}); bay ${a.bay} of ${a.run} has ${a.size}. Raise its top. ${ASK}`,
  },
  check: (run, job) =>
    judged(run, job, 'pool-low', (pool, limit) => {
      const low = baysOf(run)
        .map(({ bay, top }) => ({ bay: bay.number, size: aboveGround(run, bay, top).least }))
        .sort((a, b) => a.size - b.size)[0];
      if (!low || low.size >= limit.value) return undefined;
      return { at: pool.origin, ...low, fixes: raisedHeight(run, job, limit.value - low.size) };
    }),
};

/** A gap under a barrier that a child crawls through. */
export const poolGapUnder: LimitedRunCheck = {
  kind: {
    code: 'pool-gap-under',
    severity: 'warning',
    stage: 'layout',
    basis: CHOSEN_RULES,
    threshold: ruleThreshold(2, 100, "greatest gap under a pool's barrier, over ground that is not solid"),
    message: (a) =>
      `Under bay ${a.bay} of ${a.run} there is a gap of ${a.size}; under a pool's barrier it is at most ${a.limit} where the ground is not solid (${a.from}). Lower the bottom. ${ASK}`,
  },
  check: (run, job) =>
    judged(run, job, 'pool-gap-under', (pool, limit) => {
      const high = baysOf(run)
        .map(({ bay, bottom }) => ({ bay: bay.number, size: aboveGround(run, bay, bottom).most }))
        .sort((a, b) => b.size - a.size)[0];
      return high && high.size > limit.value ? { at: pool.origin, ...high } : undefined;
    }),
};

/** An opening in a barrier that a ball passes. */
export const poolOpening: LimitedRunCheck = {
  kind: {
    code: 'pool-opening',
    severity: 'warning',
    stage: 'layout',
    basis: CHOSEN_RULES,
    threshold: ruleThreshold(4, 100, "ball that must not pass a pool's barrier"),
    message: (a) =>
      `A ball of ${a.limit} passes an opening of ${a.size} ${a.bay === 0 ? 'at the wall beside' : `in bay ${a.bay} of`} ${a.run}, part of a pool's barrier (${a.from}). Narrow the gap. ${ASK}`,
  },
  check: (run, job) =>
    judged(run, job, 'pool-opening', (pool, limit) => {
      const wide = run.openings
        .map(({ x0, x1, z0, z1, bay }) => ({ bay: bay ?? 0, size: Math.min(x1 - x0, z1 - z0) }))
        .sort((a, b) => b.size - a.size)[0];
      const beside = openBesideWall(run);
      if (beside >= limit.value && beside > (wide?.size ?? 0))
        return { at: pool.origin, bay: 0, size: beside };
      return wide && wide.size >= limit.value ? { at: pool.origin, ...wide } : undefined;
    }),
};

/** Level slats on the side away from the pool, near enough to one another to be a ladder. */
export const poolClimbable: LimitedRunCheck = {
  kind: {
    code: 'pool-climb-apart',
    severity: 'warning',
    stage: 'layout',
    basis: CHOSEN_RULES,
    threshold: ruleThreshold(
      45,
      900,
      "distance from which on two level parts of a pool's barrier are no ladder",
    ),
    message: (a) =>
      `Level slats of ${a.run} are a ladder to the pool: their tops are ${a.size} apart, and on the side away from the pool level parts are ${a.limit} apart or more (${a.from}). Set the slats upright, or lay them on the pool's side with gaps too narrow for a foot. ${ASK}`,
  },
  check: (run, job) =>
    judged(run, job, 'pool-climb-apart', (pool, limit) => {
      const { infill } = run.spec;
      const faces = facesOf(infill.mounting.value);
      const gap = ruleOf(job, 'pool-climb-gap');
      const onPoolSide = faces.length === 1 && faces[0] === pool.value;
      const [first, second] =
        run.courses.get(run.bays.find(({ gate }) => gate === undefined)?.number ?? 0) ?? [];
      if (infill.flip.upright || !first || !second) return undefined;
      const between = first.end - second.start;
      if (onPoolSide && gap && between <= gap.value) return undefined;
      const size = first.start - second.start;
      return size < limit.value ? { at: pool.origin, bay: 0, size } : undefined;
    }),
};

/** A gate in a barrier that opens toward the pool. */
export const poolGateOpens: RunCheck = {
  kind: {
    code: 'pool-gate-opens',
    severity: 'warning',
    stage: 'layout',
    basis: CHOSEN_RULES,
    message: (a) =>
      `Gate ${a.gate} opens toward the pool; a gate of a pool's barrier opens away from it. Turn \`opens to\`. ${ASK}`,
  },
  check: (run, job) => {
    const { pool, seenFrom } = run.spec;
    if (!pool || !ruleOf(job, 'pool-low')) return [];
    return run.leaves.flatMap(({ gate, spec }): Finding[] =>
      spec.opensTo && faceToward(seenFrom.value, spec.opensTo.value) === pool.value
        ? [{ code: 'pool-gate-opens', at: spec.opensTo.origin, args: { gate } }]
        : [],
    );
  },
};

/** What a gate of a barrier needs and no drawing shows. */
export const poolLatch: LimitedRunCheck = {
  kind: {
    code: 'pool-latch',
    severity: 'information',
    stage: 'layout',
    basis: CHOSEN_RULES,
    threshold: ruleThreshold(54, 1500, "height of a latch's release from which on a child does not reach it"),
    message: (a) =>
      `Gate ${a.gate} is part of a pool's barrier: it has to close and latch by itself, with the release ${a.limit} above its bottom or more, or shielded on the pool's side (${a.from}). Choose hinges and latch for that. ${ASK}`,
  },
  check: (run, job) => {
    const rule = ruleOf(job, 'pool-latch');
    if (!run.spec.pool || !rule) return [];
    const limit = formatLength(rule.value, job.measure.value);
    return run.leaves.map(({ gate, spec }) => ({
      code: 'pool-latch',
      at: spec.origin,
      args: { gate, limit, from: rule.from },
    }));
  },
};

interface Found extends Pick<Finding, 'fixes'> {
  readonly at: Pool['origin'];
  readonly bay: number;
  readonly size: Ticks;
}

/** One finding for a run of a barrier, of the worst place, where a rule is in force and it is over. */
function judged(
  run: RunLayout,
  job: Job,
  name: 'pool-low' | 'pool-gap-under' | 'pool-opening' | 'pool-climb-apart',
  judge: (pool: Pool, limit: RuleInForce) => Found | undefined,
): readonly Finding[] {
  const { pool } = run.spec;
  const limit = ruleOf(job, name);
  const found = pool && limit && judge(pool, limit);
  if (!limit || !found) return [];
  const shown = (ticks: Ticks) => formatLength(Math.round(ticks), job.measure.value);
  const { at, bay, size, fixes = [] } = found;
  return [
    {
      code: name,
      at,
      args: { run: run.spec.name, bay, size: shown(size), limit: shown(limit.value), from: limit.from },
      fixes,
    },
  ];
}

function baysOf(run: RunLayout) {
  return run.bays.flatMap((bay) => {
    const [bottom, top] = [bottomEdge(run, bay.number), topEdge(run, bay.number)];
    return bottom && top ? [{ bay, bottom, top }] : [];
  });
}
