import type { RunLayout } from '../layout/index.ts';
import { formatLength, inches, mm, spellLength, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Fix } from './finding.ts';
import { appendTo, replaceAt } from './written-change.ts';

/** Lines of another run that do not land on the ends stated here. */
export const linesLeftOver: LimitedRunCheck = {
  kind: {
    code: 'lines-left-over',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('lines that go on from one run to another fix where its ends may be'),
    threshold: {
      is: 'length',
      imperial: inches(1 / 16),
      metric: mm(1),
      says: 'most that may be left over where a run goes on with the lines of another',
    },
    message: (a) =>
      `On the lines of ${a.other} the slats of ${a.run} leave ${a.left}. Let its bottom be ${a.bottom} and its height ${a.height}, or give them a band.`,
  },
  check: (run, job) => {
    const { spec, joints } = run;
    if (
      !spec.linesAs ||
      !joints.lines ||
      !run.sound ||
      run.problems.some(({ code }) => code === 'lines-elsewhere')
    )
      return [];
    const most = thresholdOf(job, linesLeftOver.kind);
    const height = run.top - run.ground;
    const bottom = run.bottom - run.ground;
    const above = spec.height.value.low - height;
    const below = bottom - spec.bottom.value.high;
    if (above <= most && below <= most) return [];
    const shown = (ticks: Ticks) => formatLength(ticks, job.measure.value);
    const left = [
      ...(above > most ? [`${shown(above)} at the top`] : []),
      ...(below > most ? [`${shown(below)} at the bottom`] : []),
    ];
    return [
      {
        code: 'lines-left-over',
        at: spec.linesAs.origin,
        args: {
          run: spec.name,
          other: spec.linesAs.value,
          left: left.join(' and '),
          bottom: shown(bottom),
          height: shown(height),
        },
        fixes: endsAt(run, bottom, height),
      },
    ];
  },
};

/** The ends as they are built. */
function endsAt({ spec }: RunLayout, bottom: Ticks, height: Ticks): readonly Fix[] {
  if (spec.height.origin.why !== 'stated') return [];
  const put = (origin: RunLayout['spec']['origin'], word: string, to: Ticks) => {
    const text = `${word} ${spellLength(to, spec.measure)}`;
    return origin.why === 'stated' ? replaceAt(origin, text) : appendTo(spec.origin, text);
  };
  return [
    {
      title: `Let ${spec.name} end where its lines do`,
      changes: [put(spec.height.origin, 'height', height), put(spec.bottom.origin, 'bottom', bottom)],
      preferred: true,
    },
  ];
}
