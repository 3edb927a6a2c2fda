import { type PostBending, postBendings } from '../figures/index.ts';
import type { RunLayout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import type { RunCheck } from './define.ts';
import type { Args, Basis, Finding } from './finding.ts';
import { atMostText, loadText } from './loads-text.ts';

const BASIS: Basis = {
  kind: 'published',
  source: 'NDS and its Supplement for wood; yield over its margin for metal; bending at grade',
  section: 'reference values with factors CD, CM, CF, Cfu',
  confirmed: 'secondary',
};

/** A post that wind as stated bends past what it is allowed. */
export const postBends: RunCheck = {
  kind: {
    code: 'post-bends',
    severity: 'warning',
    stage: 'layout',
    basis: BASIS,
    message: (a) =>
      `In a wind of ${a.wind}, post ${a.post} is bent at grade by ${a.moment}, ${a.used} of what ${a.stock} bears (${a.bears}). ${remedy(a)}`,
  },
  check: (run, job) => told(run, job, true),
};

/** The same at the least pressure of the wind standard, where the job states no wind. */
export const postBendsScreening: RunCheck = {
  kind: {
    code: 'post-bends-screening',
    severity: 'information',
    stage: 'layout',
    basis: {
      kind: 'published',
      source: 'ASCE 7-16, least wind pressure in service terms; NDS and its Supplement for wood',
      section: '29.7 and 2.4.1: 0.6 × 16 psf',
      confirmed: 'secondary',
    },
    message: (a) =>
      `At the standard's least wind of ${a.wind}, post ${a.post} takes ${a.moment}, ${a.used} of what ${a.stock} bears (${a.bears}). Many such screens stand. ${remedy(a)} State \`wind\` to have it worked out for your place.`,
  },
  check: (run, job) => told(run, job, false),
};

function remedy({ clear }: Args): string {
  return clear === ''
    ? 'A stronger post is needed.'
    : `Posts at most ${clear} clear would do, or a stronger post.`;
}

/** One finding for a run: its worst post. */
function told(run: RunLayout, job: Job, stated: boolean): readonly Finding[] {
  const over = postBendings(run, job).filter(({ load, used = 0 }) => used > 1 && load.wind.stated === stated);
  const worst = over.reduce<PostBending | undefined>(
    (held, one) => (!held || (one.used ?? 0) > (held.used ?? 0) ? one : held),
    undefined,
  );
  if (!worst) return [];
  const { load, used = 0, clearThatDoes } = worst;
  const moment = (load.force * load.arm) / 12;
  return [
    {
      code: stated ? 'post-bends' : 'post-bends-screening',
      at: run.spec.post.origin,
      args: {
        wind: loadText(load.wind.pressure, 'psf', job),
        post: load.mark.number,
        stock: load.stock.name,
        moment: loadText(moment, 'ft-lb', job),
        bears: loadText(moment / used, 'ft-lb', job),
        used: `${Math.round(100 * used)} %`,
        clear: clearThatDoes === undefined ? '' : atMostText(clearThatDoes, job),
      },
      pieces: [load.mark.key],
      related: stated ? [{ at: load.wind.working.where.origin, note: 'the wind is stated here' }] : [],
    },
  ];
}
