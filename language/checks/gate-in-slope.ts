import {
  type Bay,
  bottomEdge,
  heightAt,
  type Incline,
  isRacked,
  type RunLayout,
  topEdge,
} from '../layout/index.ts';
import { levelAt } from '../model/index.ts';
import { formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';

/** A leaf between racked bays: it hangs square, so that its lines do not go on with theirs. */
export const gateInSlope: LimitedRunCheck = {
  kind: {
    code: 'gate-in-slope',
    severity: 'information',
    stage: 'layout',
    basis: commonPractice(
      'leaves are hung square and level; one out of square binds, and swings into rising ground',
    ),
    threshold: {
      is: 'length',
      imperial: inches(1),
      metric: mm(25),
      says: 'how far a level gate may stand off the line of racked slats beside it',
    },
    message: (a) =>
      `Gate ${a.gate} stays square and level between racked bays: its top goes on with the slats at its higher post and is ${a.off} off them at post ${a.post}, with ${a.under} under it there. Put it where the ground is most level, or take the ground up under it.`,
  },
  check: (run, job) => {
    if (!isRacked(run.spec)) return [];
    const measure = job.measure.value;
    const seen = thresholdOf(job, gateInSlope.kind);
    return run.spec.gates.flatMap((gate) => {
      const bay = run.bays.find((one) => one.gate === gate.name);
      const top = bay && topEdge(run, bay.number);
      const bottom = bay && bottomEdge(run, bay.number);
      if (!bay || !top || !bottom) return [];
      const [worst] = sidesOf(run, bay, top).sort((a, b) => b.off - a.off);
      if (!worst || worst.off <= seen) return [];
      const under = Math.round(bottom.z - levelAt(run.groundLine, worst.at));
      const args = {
        gate: gate.name,
        off: formatLength(Math.round(worst.off), measure),
        post: worst.post,
        under: formatLength(under, measure),
      };
      return [{ code: 'gate-in-slope', at: gate.origin, args }];
    });
  },
};

/** At each post of a gate that a racked bay ends at: how far the leaf's top is off that bay's line. */
function sidesOf(run: RunLayout, bay: Bay, top: Incline): { off: number; post: number; at: Ticks }[] {
  return run.posts.flatMap(({ number, from, to }) => {
    if (to !== bay.from && from !== bay.to) return [];
    const beside = run.bays.find((one) => one !== bay && (one.to === from || one.from === to));
    const line = beside && run.edges.get(beside.number)?.top;
    const at = to === bay.from ? to : from;
    return line ? [{ off: Math.abs(top.z - heightAt(line, (from + to) / 2)), post: number, at }] : [];
  });
}
