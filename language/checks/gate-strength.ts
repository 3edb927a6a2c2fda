import { type GateFigures, gateFigures, keepsWithin } from '../figures/index.ts';
import { formatLength } from '../units/index.ts';
import { commonPractice, type RunCheck } from './define.ts';
import { loadText } from './loads-text.ts';

/** Fewer hinges stated than a leaf so high, wide or heavy hangs on. */
export const hingesFew: RunCheck = {
  kind: {
    code: 'hinges-few',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('a third hinge for leaves over 60" high, over 36" wide or over 60 lb'),
    message: (a) =>
      `The leaf of ${a.gate} is ${a.width} wide, ${a.height} high and weighs ${a.dry} dry, ${a.wet} wet: hang it on ${a.needed} hinges; ${a.stated} are stated.`,
  },
  check: (run, job) =>
    gateFigures(run, job).flatMap(({ leaf, dry, wet, hinges }) => {
      const stated = leaf.spec.hingeCount;
      if (leaf.spec.half?.mirrors || !stated || stated.value >= hinges) return [];
      const show = (ticks: number) => formatLength(ticks, job.measure.value);
      return [
        {
          code: 'hinges-few',
          at: stated.origin,
          args: {
            gate: leaf.gate,
            width: show(leaf.width),
            height: show(leaf.height),
            dry: loadText(dry, 'lb mass', job),
            wet: loadText(wet, 'lb mass', job),
            needed: hinges,
            stated: stated.value,
          },
        },
      ];
    }),
};

/** A hinge post that the leaf's weight alone bends past what it is allowed. */
export const hingePostBends: RunCheck = {
  kind: {
    code: 'hinge-post-bends',
    severity: 'warning',
    stage: 'layout',
    basis: {
      kind: 'published',
      source: 'NDS and its Supplement for wood, load duration of dead load; bending at grade',
      section: 'Table 2.3.2',
      confirmed: 'secondary',
    },
    message: (a) =>
      `The leaf of ${a.gate} weighs ${a.wet} wet and bends its hinge post to ${a.stress}; ${a.limit} is what the post bears for good. Take a larger hinge post, or a narrower leaf.`,
  },
  check: (run, job) =>
    gateFigures(run, job).flatMap((gate) => {
      const post = hingePostOf(gate);
      if (!post?.limit || keepsWithin(post) !== false) return [];
      return [
        {
          code: 'hinge-post-bends',
          at:
            gate.leaf.spec.post.origin.why === 'stated' ? gate.leaf.spec.post.origin : gate.leaf.spec.origin,
          args: {
            gate: gate.leaf.gate,
            wet: loadText(gate.wet, 'lb mass', job),
            stress: loadText(post.figure.value, 'psi', job),
            limit: loadText(post.limit.value, 'psi', job),
          },
        },
      ];
    }),
};

const hingePostOf = ({ workings }: GateFigures) => workings.find(({ code }) => code === 'hinge-post');
