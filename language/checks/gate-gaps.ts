import type { GateSpec, Sourced } from '../model/index.ts';
import { formatLength, inches, mm, spellLength, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { toldLeaves } from './told-leaves.ts';
import { replaceAt } from './written-change.ts';

/** A leaf so near the post it hangs on that it binds. */
export const hingeGapSmall = smallGap('hinge', 'hinges', ({ hingeGap }) => hingeGap, {
  basis: '1/4" (6 mm) beside the hinges of a gate, or what they ask for',
  imperial: inches(1 / 4),
  metric: mm(6),
});

/** A leaf so near the post it shuts against that it binds when the wood swells or the leaf sags. */
export const latchGapSmall = smallGap('latch', 'latch', ({ latchGap }) => latchGap, {
  basis: '1/2" to 3/4" (12 mm and more) beside the latch of a gate, or what it asks for',
  imperial: inches(1 / 2),
  metric: mm(12),
});

function smallGap(
  side: 'hinge' | 'latch',
  beside: string,
  gapOf: (gate: GateSpec) => Sourced<Ticks>,
  { basis, imperial, metric }: { basis: string; imperial: Ticks; metric: Ticks },
): LimitedRunCheck {
  const code = `${side}-gap-small`;
  const kind: LimitedRunCheck['kind'] = {
    code,
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice(basis),
    threshold: { is: 'length', imperial, metric, says: `least gap beside the ${beside} of a gate` },
    message: (a) =>
      `Gate ${a.gate} has ${a.gap} beside the ${beside}; with less than ${a.least} a leaf binds when the wood swells. ` +
      `Write \`${side} gap\` with ${a.least} or what the hardware asks for.`,
  };
  return {
    kind,
    check: (run, job) => {
      const measure = job.measure.value;
      const least = thresholdOf(job, kind);
      return toldLeaves(run).flatMap(({ gate, spec }): Finding[] => {
        const { value, origin } = gapOf(spec);
        // Where nothing is stated, the habit of the trade is taken, which is not told again.
        if (value >= least || origin.why !== 'stated') return [];
        const text = spellLength(least, measure);
        return [
          {
            code,
            at: origin,
            args: { gate, gap: formatLength(value, measure), least: formatLength(least, measure) },
            fixes: [
              {
                title: `Leave ${text} beside the ${beside}`,
                changes: [replaceAt(origin, text)],
              },
            ],
          },
        ];
      });
    },
  };
}
