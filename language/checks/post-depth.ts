import { type Embedded, embedment } from '../figures/index.ts';
import type { RunLayout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, type RunCheck, thresholdOf } from './define.ts';
import type { Args, Finding } from './finding.ts';
import { atLeastText } from './loads-text.ts';

/** Posts less deep than one third of their whole length. */
export const embedShallow: LimitedRunCheck = {
  kind: {
    code: 'embed-shallow',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice(
      'one third of the whole post in the ground, which is half of its height above ground',
    ),
    threshold: {
      is: 'times',
      imperial: 0.5,
      metric: 0.5,
      says: 'least depth of posts over height above ground',
    },
    message: (a) =>
      `Posts stand ${a.depth} in the ground; one third of the whole post is ${a.whole} (one third of the height alone is ${a.height}, by the formula it is ${a.formula}). Set them deeper, or they lean in time.`,
  },
  check: (run, job) => {
    const share = thresholdOf(job, embedShallow.kind);
    return told(run, job, 'embed-shallow', ({ depth, above }) => depth < Math.floor(above * share) - 1);
  },
};

/** Posts less deep than the formula of the code asks for in the soil stated. */
export const embedUnderFormula: RunCheck = {
  kind: {
    code: 'embed-under-formula',
    severity: 'information',
    stage: 'layout',
    basis: { kind: 'published', source: 'IBC', section: '1807.3.2.1, Eq. 18-1', confirmed: 'primary' },
    message: (a) =>
      `Posts stand ${a.depth} in the ground; in ${a.soil}, by the formula of the code, ${a.formula} is asked for. Builders go by one third of the post, ${a.whole}; where a permit drawing is asked, the formula counts. Deeper or wider holes, or closer posts, bring them together.`,
  },
  check: (run, job) =>
    told(
      run,
      job,
      'embed-under-formula',
      ({ depth, byFormula, soilStated }) => soilStated && depth < byFormula,
    ),
};

/** Posts that end above the frost. */
export const frostDeeper: RunCheck = {
  kind: {
    code: 'frost-deeper',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('the bottom of a post and its footing at or below the frost depth of the place'),
    message: (a) =>
      `Posts stand ${a.depth} in the ground; it freezes to ${a.frost} here and lifts what ends above that. Set them at least ${a.frost} deep.`,
  },
  check: (run, job) =>
    told(run, job, 'frost-deeper', ({ depth, frost }) => frost !== undefined && depth < frost),
};

function told(
  run: RunLayout,
  job: Job,
  code: string,
  isToo: (found: Embedded) => boolean,
): readonly Finding[] {
  const found = embedment(run, job);
  if (!found || !isToo(found)) return [];
  const show = (ticks: Ticks) => formatLength(ticks, job.measure.value);
  const args: Args = {
    depth: show(found.depth),
    whole: show(found.thirdOfWhole),
    height: show(found.thirdOfHeight),
    formula: atLeastText(found.byFormula, job),
    frost: found.frost === undefined ? '' : show(found.frost),
    soil: found.soil,
  };
  const { embed, frost, soil } = run.spec;
  const note = { 'frost-deeper': frost, 'embed-under-formula': soil }[code];
  const related = note ? [{ at: note.origin, note: code === 'frost-deeper' ? 'frost' : 'soil' }] : [];
  return [{ code, at: embed?.origin ?? run.spec.post.origin, args, pieces: [found.load.mark.key], related }];
}
