import type { RunLayout } from '../../layout/index.ts';
import { type Job, limitOf } from '../../model/index.ts';
import type { Published } from '../../standards/index.ts';
import { ceilToStep, formatLength, type Ticks } from '../../units/index.ts';
import { LEAST_OPEN_GAP, type WallGap, wallGaps } from '../wall-gaps.ts';
import type { Working } from '../working.ts';
import { amount, fromOf, inchesOf, input, step } from './amounts.ts';

const GEOMETRY: Published = {
  source: 'plane geometry',
  section: 'the wall straight between the heights where it was measured',
  confirmed: 'primary',
};

const HABIT: Published = {
  source: 'common practice',
  section: '1 to 2 in from an end post to the cladding; no scribed strip under 1/2 in',
  confirmed: 'secondary',
};

/** What there is between each end post and its wall, and how near the post may stand; and the taper of each filler. */
export function wallWorkings(run: RunLayout, job: Job): readonly Working[] {
  return wallGaps(run).flatMap((gap) => [gapWorking(run, job, gap), ...taperWorking(run, job, gap)]);
}

function gapWorking(run: RunLayout, job: Job, gap: WallGap): Working {
  const { face, bottom, top, least, greatest, post } = gap;
  const { filler } = run.spec;
  const { off, profile } = face.spec;
  const measure = job.measure.value;
  const asked: Ticks = filler?.least.value ?? limitOf(job, 'wall-gap-small', 'length', LEAST_OPEN_GAP);
  const up = (z: number) => `${formatLength(Math.max(0, Math.round(z - face.ground)), measure)} up`;
  const measured =
    profile?.kind === 'points' ? `stated at ${profile.points.length} heights` : profile ? 'stated' : 'plumb';
  return {
    code: 'wall-gap',
    title: `Gap to the wall at post ${post.label.slice(1)}`,
    where: {
      origin: face.spec.origin,
      label: `${run.spec.name}, ${face.side === 'start' ? 'beginning' : 'end'}`,
      run: run.key,
      pieces: [post.key],
    },
    formula: 'g = o - t; o may be no less than o - g + m',
    inputs: [
      input('wall off the post, on its plumb line', 'o', inchesOf(off.value), fromOf(off.origin)),
      input('wall toward the run from its plumb line', 't', profile ? 'at each height' : 'nowhere', measured),
      input('gap asked for', 'm', inchesOf(asked), filler ? fromOf(filler.least.origin) : 'of an open gap'),
    ],
    steps: [
      step(`at the bottom of what stands beside it, ${up(bottom.z)}`, inchesOf(bottom.gap)),
      step(`at its top, ${up(top.z)}`, inchesOf(top.gap)),
      step(`widest, ${up(greatest.z)}`, inchesOf(greatest.gap)),
      step(`narrowest, ${up(least.z)}`, inchesOf(least.gap)),
      step(
        'least distance off the post, up to the next mark of the tape',
        inchesOf(ceilToStep(off.value - least.gap + asked, measure.step)),
      ),
    ],
    figure: inchesOf(least.gap),
    limit: { name: 'gap asked for', is: 'at least', ...inchesOf(asked) },
    basis: [GEOMETRY, HABIT],
    notes: ['The post stands for itself: nothing is fastened to the wall.'],
  };
}

function taperWorking(run: RunLayout, job: Job, { filler, face }: WallGap): readonly Working[] {
  const stated = run.spec.filler;
  const scribe = filler?.cut.scribe;
  if (!filler || !stated || !scribe) return [];
  const shown = (ticks: Ticks) => formatLength(ticks, job.measure.value);
  const { name, width } = stated.stock.value;
  return [
    {
      code: 'filler-taper',
      title: `Taper of the filler ${filler.label}`,
      where: {
        origin: stated.origin,
        label: `${run.spec.name}, ${face.side === 'start' ? 'beginning' : 'end'}`,
        run: run.key,
        pieces: [filler.key],
      },
      formula: 'w = g, square to the post',
      inputs: [
        input('its length', '', inchesOf(filler.cut.longPoint), 'as laid out'),
        input(`width of ${name}`, '', inchesOf(width.value), 'stated'),
      ],
      steps: scribe.map((point) => step(`${shown(point.at)} from its foot`, inchesOf(point.width))),
      figure: amount(Math.max(...scribe.map((point) => inchesOf(point.width).value)), 'in'),
      limit: { name: `width of ${name}`, is: 'at most', ...inchesOf(width.value) },
      basis: [GEOMETRY],
      notes: ['Straight between these; hold it to the wall and mark it before it is cut.'],
    },
  ];
}
