import { formatDay } from '../units/index.ts';
import { commonPractice, type JobCheck } from './define.ts';

/** Materials ordered before what is built was agreed to. */
export const orderedEarly: JobCheck = {
  kind: {
    code: 'ordered-early',
    severity: 'warning',
    stage: 'model',
    basis: commonPractice('materials are ordered once everyone who has to has agreed to what is built'),
    message: (a) =>
      a.agreed === ''
        ? `Materials were ordered on ${a.ordered}, and nobody's agreement is stated. Write \`agreed "DAY" by "WHO"\` for each who has to agree, before more is ordered.`
        : `Materials were ordered on ${a.ordered}, before ${a.by} agreed on ${a.agreed}: what was changed till then may not go with what was bought. Hold the order against the drawing that was agreed to.`,
  },
  check: ({ paperwork: { ordered, approvals } }) => {
    if (!ordered) return [];
    const late = approvals.filter(({ day }) => day > ordered.value);
    const [last] = late.sort((a, b) => b.day - a.day);
    if (approvals.length > 0 && !last) return [];
    const args = {
      ordered: formatDay(ordered.value),
      agreed: last ? formatDay(last.day) : '',
      by: last?.by ?? 'the one who had to',
    };
    const related = last ? [{ at: last.origin, note: 'agreed' }] : [];
    return [{ code: 'ordered-early', at: ordered.origin, args, related }];
  },
};
