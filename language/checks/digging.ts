import type { RunLayout } from '../layout/index.ts';
import { formatDay, formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { commonPractice, type JobCheck, type LimitedRunCheck, thresholdOf } from './define.ts';
import { isDug } from './dug.ts';
import { ruleOf } from './rule-of.ts';

const ASK = 'Local rules decide: ask your local authority.';

/** Full working days between notice and digging. */
const USUAL_NOTICE = 2;

/** Posts are dug where notice is asked for, and no ticket is stated. */
export const noTicket: JobCheck = {
  kind: {
    code: 'no-ticket',
    severity: 'information',
    stage: 'model',
    basis: commonPractice('call before you dig, two full working days ahead, three in some states'),
    message: (a) =>
      `Posts are dug here and no ticket is stated. Call ${a.days} full working days or more before you dig (three in some states), and write \`ticket "NUMBER", called "DAY", digging "DAY"\`; lines that the owner laid are marked by no one. ${ASK}`,
  },
  check: (job) => {
    const at = job.rules.find(({ value }) => value === 'us-digging')?.origin;
    if (!at || job.ticket || !job.runs.some((run) => !('broken' in run) && isDug(run))) return [];
    return [{ code: 'no-ticket', at, args: { days: USUAL_NOTICE } }];
  },
};

/** Too few working days from the call to digging, or digging when the ticket has run out. */
export const ticketShort: JobCheck = {
  kind: {
    code: 'ticket-short',
    severity: 'warning',
    stage: 'model',
    basis: commonPractice('two full working days between the call and digging, three in some states'),
    message: (a) =>
      a.late === ''
        ? `Between the call and digging there ${a.days === 1 ? 'is 1 full working day' : `are ${a.days} full working days`}; ${a.least} or more are usual, three in some states; weekends and holidays do not count. Dig later. ${ASK}`
        : `Ticket ${a.number} runs out on ${a.late}, before digging. Call again, and have the marks made anew. ${ASK}`,
  },
  check: (job) => {
    const { ticket } = job;
    if (!ticket) return [];
    const days = workingDaysBetween(ticket.called, ticket.digging);
    const args = { number: ticket.number, days, least: USUAL_NOTICE };
    const late = ticket.until !== undefined && ticket.digging > ticket.until ? formatDay(ticket.until) : '';
    return [
      ...(days < USUAL_NOTICE
        ? [{ code: 'ticket-short', at: ticket.origin, args: { ...args, late: '' } }]
        : []),
      ...(late === '' ? [] : [{ code: 'ticket-short', at: ticket.origin, args: { ...args, late } }]),
    ];
  },
};

/** A hole so near a buried line that it is dug by hand. */
export const nearUtility: LimitedRunCheck = {
  kind: {
    code: 'near-utility',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('by hand within 24 in of the mark of a buried line, 18 in in some states'),
    threshold: {
      is: 'length',
      imperial: inches(24),
      metric: mm(600),
      says: 'holes nearer to a buried line are dug by hand',
    },
    message: (a) =>
      `Holes of ${a.posts} come within ${a.off} of ${a.line}. Dig by hand within ${a.limit} of its mark, or move the posts. ${ASK}`,
  },
  check: (run, job) => {
    if (!isDug(run.spec)) return [];
    const limit = ruleOf(job, 'near-utility')?.value ?? thresholdOf(job, nearUtility.kind);
    return (run.spec.noHoles ?? []).flatMap((line) => {
      if (!line.utility) return [];
      const offs = run.posts.map((post) => {
        const [from, to] = holeOf(run, post);
        return { post, off: Math.max(0, line.from - to, from - line.to) };
      });
      const near = offs.filter(({ off }) => off < limit);
      if (near.length === 0) return [];
      const length = (ticks: Ticks) => formatLength(ticks, job.measure.value);
      const args = {
        posts: `${near.length === 1 ? 'post' : 'posts'} ${near.map(({ post }) => post.number).join(', ')}`,
        off: length(Math.min(...near.map(({ off }) => off))),
        line: line.reason ?? 'a buried line',
        limit: length(limit),
      };
      const pieces = near.map(({ post }) => post.key);
      return [{ code: 'near-utility', at: line.origin, args, pieces }];
    });
  },
};

/** Along the run. */
function holeOf({ spec }: RunLayout, { from, to }: { from: Ticks; to: Ticks }): readonly [Ticks, Ticks] {
  const wide = Math.max(to - from, spec.hole?.diameter.value ?? 0);
  const middle = (from + to) / 2;
  return [Math.round(middle - wide / 2), Math.round(middle + wide / 2)];
}

/** Days from Monday to Friday after one day and before another; 1970-01-01 was a Thursday. */
export function workingDaysBetween(first: number, last: number): number {
  let count = 0;
  // A year is enough to tell that there are enough.
  for (let day = first + 1; day < last && day < first + 366; day++) {
    if ((((day + 3) % 7) + 7) % 7 < 5) count++;
  }
  return count;
}
