import { type Movement, movements } from '../figures/index.ts';
import type { RunLayout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import type { RunCheck } from './define.ts';
import type { Basis, Finding } from './finding.ts';
import { fineText } from './loads-text.ts';

const BASIS: Basis = {
  kind: 'published',
  source: 'Wood Handbook, USDA FPL-GTR-190; tables of linear expansion',
  section: 'chapter 13, change of size with moisture',
  confirmed: 'secondary',
};

/** A gap that closes as slats swell or grow warm, from the day of fitting the job states. */
export const gapCloses: RunCheck = {
  kind: {
    code: 'gap-closes',
    severity: 'warning',
    stage: 'layout',
    basis: BASIS,
    message: (a) =>
      `Fitted as stated, ${a.slat} grows by ${a.moves} and takes up its ${a.of} of ${a.gap}: slats then push. Leave at least ${a.needed}.`,
  },
  check: (run, job) => told(run, job, 'gap-closes', ({ narrowest }) => narrowest < 0),
};

/** Gaps that grow wide as slats fitted wet dry out. */
export const gapGrows: RunCheck = {
  kind: {
    code: 'gap-grows',
    severity: 'information',
    stage: 'layout',
    basis: BASIS,
    message: (a) =>
      `Fitted this wet, ${a.slat} shrinks as it dries: gaps of ${a.gap} become ${a.widest}. Leave them narrower by that, or let the boards dry first.`,
  },
  check: (run, job) =>
    told(run, job, 'gap-grows', ({ of }) => of === 'gap' && (job.site.fitted?.moisture?.value ?? 0) > WET),
};

/** Percent of moisture past which lumber is sold as wet (American Softwood Lumber Standard PS 20). */
const WET = 19;

/** The stock that moves most. */
function told(
  run: RunLayout,
  job: Job,
  code: string,
  isToo: (movement: Movement) => boolean,
): readonly Finding[] {
  const moving = movements(run, job).filter((movement) => movement.stated && isToo(movement));
  const worst = moving.reduce<Movement | undefined>(
    (held, one) => (!held || one.widest - one.narrowest > held.widest - held.narrowest ? one : held),
    undefined,
  );
  if (!worst) return [];
  const { stock, of, gap, narrowest, widest } = worst;
  const { pattern, endGap, fill } = run.spec.infill;
  const stated =
    of === 'gap' ? pattern.gap : ((of === 'joint gap' ? run.spec.slatJoints?.gap : undefined) ?? endGap);
  const own = stated.origin.uri === job.uri && stated.origin.why === 'stated';
  return [
    {
      code,
      at: own && of !== 'gap' ? stated.origin : fill,
      args: {
        slat: stock.name,
        of: of === 'end gap' ? 'two end gaps' : of,
        gap: fineText(gap, job),
        moves: fineText(gap - narrowest, job),
        widest: fineText(widest, job),
        needed:
          fineText((gap - narrowest) / (of === 'end gap' ? 2 : 1), job) +
          (of === 'end gap' ? ' at each end' : ''),
      },
      related: [{ at: stated.origin, note: of }],
    },
  ];
}
