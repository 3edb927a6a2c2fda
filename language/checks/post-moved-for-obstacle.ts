import type { PostChoice } from '../layout/index.ts';
import { formatLength, type Measure } from '../units/index.ts';
import { commonPractice, type RunCheck } from './define.ts';

/** Posts divided anew because equal bays would put one where no hole may be. */
export const postMovedForObstacle: RunCheck = {
  kind: {
    code: 'post-moved-for-obstacle',
    severity: 'information',
    stage: 'layout',
    basis: commonPractice('round an obstacle: more equal bays, a mirrored pair, or one wider bay over it'),
    message: (a) =>
      `Equal bays would put a post at ${a.post}, where no hole may be, from ${a.from} to ${a.to}${a.reason === '' ? '' : ` (${a.reason})`}. ` +
      `Built: ${a.built}.${a.others === 0 ? '' : ` ${a.others} more as quick fixes.`}`,
  },
  check: (run, job) => {
    const measure = job.measure.value;
    const shown = (ticks: number) => formatLength(ticks, measure);
    return run.postMoves.map(({ post, noHole, chosen, others }) => {
      const fixes = others.filter(({ changes }) => changes.length > 0);
      return {
        code: 'post-moved-for-obstacle',
        at: noHole.origin,
        args: {
          post: shown(post),
          from: shown(noHole.from),
          to: shown(noHole.to),
          reason: noHole.reason ?? '',
          built: describePosts(chosen, measure),
          others: fixes.length,
        },
        related: [{ at: run.spec.spacing.origin, note: 'the spacing stands here' }],
        fixes: fixes.map(({ choice, changes }) => {
          const text = describePosts(choice, measure);
          return { title: text.charAt(0).toUpperCase() + text.slice(1), changes };
        }),
      };
    });
  },
};

/** A division in words: "4 equal bays of 5' clear". */
export function describePosts({ kind, clears, unlike }: PostChoice, measure: Measure): string {
  const shown = (ticks: number | undefined) => formatLength(ticks ?? 0, measure);
  const rest = clears.filter((_, i) => !unlike.includes(i));
  const own = clears[unlike[0] ?? 0];
  const others =
    rest.length === 1 ? `the other ${shown(rest[0])}` : `the other ${rest.length} ${shown(rest[0])}`;
  if (kind === 'equal') return `${clears.length} equal bays of ${shown(clears[0])} clear`;
  if (kind === 'wide') return `one bay of ${shown(own)} clear over it, ${others}`;
  return `a mirrored pair of ${shown(own)} clear about it, ${others}`;
}
