import type { RunLayout } from '../layout/index.ts';
import type { GateSpec } from '../model/index.ts';
import { ceilToStep, formatLength, inches, mm, spellLength, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { appendTo, replaceAt } from './written-change.ts';

/** Posts of a gate that stand no deeper than the others, though a leaf hangs on them. */
export const gatePostsShallow: LimitedRunCheck = {
  kind: {
    code: 'gate-posts-shallow',
    severity: 'information',
    stage: 'layout',
    basis: commonPractice('posts of a gate stand 4" to 6" (100 to 150 mm) deeper than those of the run'),
    threshold: {
      is: 'length',
      imperial: inches(4),
      metric: mm(100),
      says: 'how much deeper the posts of a gate stand than the others',
    },
    message: (a) =>
      `Posts of gate ${a.gate} stand ${a.depth} deep${a.depth === a.others ? ', no deeper than' : ' beside'} those of the run${a.depth === a.others ? '' : `, which stand ${a.others} deep`}. A leaf pulls its post over in time: set them ${a.more} deeper than the others, with \`embed ${a.text}\` in the gate.`,
  },
  check: (run, job) => {
    const { embed, deck, gates } = run.spec;
    // Where no depth is stated, the habit is that of all posts; it is told when depths are.
    if (deck || !run.sound) return [];
    const more = thresholdOf(job, gatePostsShallow.kind);
    return gates.flatMap((gate): readonly Finding[] => {
      if (!embed && !gate.embed) return [];
      const others = run.embed.value;
      const depth = gate.embed?.value ?? others;
      if (depth >= others + more) return [];
      return [toldOf(run, gate, { depth, others, more }, job.measure.value)];
    });
  },
};

function toldOf(
  { pieces }: RunLayout,
  gate: GateSpec,
  { depth, others, more }: Readonly<Record<'depth' | 'others' | 'more', Ticks>>,
  measure: Parameters<typeof formatLength>[1],
): Finding {
  const show = (ticks: Ticks) => formatLength(ticks, measure);
  const text = spellLength(ceilToStep(others + more, measure.step), measure);
  const { embed, origin, name } = gate;
  const change = embed ? replaceAt(embed.origin, text) : appendTo(origin, `embed ${text}`);
  return {
    code: 'gate-posts-shallow',
    at: embed?.origin ?? origin,
    args: { gate: name, depth: show(depth), others: show(others), more: show(more), text },
    pieces: pieces.filter((piece) => piece.role === 'post' && piece.gate === name).map(({ key }) => key),
    fixes: [{ title: `Set its posts ${text} deep`, changes: [change] }],
  };
}
