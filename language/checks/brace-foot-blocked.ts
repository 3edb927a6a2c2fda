import { type BlockedFoot, layOutRun, type RunLayout, spellName } from '../layout/index.ts';
import { type BracingSpec, isMetric } from '../model/index.ts';
import { formatLength, inches, mm, spellLength, type Ticks } from '../units/index.ts';
import { GEOMETRY, type RunCheck } from './define.ts';
import type { Fix } from './finding.ts';

/** Shorter ways out are tried in these steps, down to half of what was asked: steeper braces hold a post badly. */
const STEP = { imperial: inches(6), metric: mm(150) };

/** Longer runs are not laid out again and again while one types. */
const MOST_POSTS = 60;

/** A brace that sets a post, with no place for its foot whichever way it goes. */
export const braceFootBlocked: RunCheck = {
  kind: {
    code: 'brace-foot-blocked',
    severity: 'warning',
    stage: 'layout',
    basis: GEOMETRY,
    message: (a) =>
      `The brace ${a.axis} of ${a.post} has no place for its foot ${a.out} out, either way: ${WHY[a.why as BlockedFoot['why']](String(a.what))}.${a.more === 0 ? '' : ` So it is at ${a.more} more.`} ` +
      'Set the feet nearer or farther with `out`, or hold that post another way.',
  },
  check: (run, job) => {
    const [first, ...others] = run.temporary.blocked;
    const { bracing } = run.spec;
    if (!first || !bracing) return [];
    return [
      {
        code: 'brace-foot-blocked',
        at: bracing.origin,
        args: {
          axis: first.axis === 'along' ? 'along the run' : 'across the run',
          post: `P${first.post}`,
          out: formatLength(Math.round(first.out), job.measure.value),
          why: first.why,
          what: first.what,
          more: new Set(others.map(({ post }) => post).filter((post) => post !== first.post)).size,
        },
        fixes: nearer(run, bracing, first.out),
      },
    ];
  },
};

const WHY: Readonly<Record<BlockedFoot['why'], (what: string) => string>> = {
  'no-hole': (what) => `nothing may be driven into the ground there${what === '' ? '' : ` (${what})`}`,
  wall: () => 'a wall stands there',
  hole: (what) => `there is the hole of ${what}`,
  piece: (what) => `${what} is in its way`,
  property: () => 'that is past the property line',
  drop: () => 'the ground drops there',
  pool: () => 'that is the side of the pool',
  ground: () => 'the ground there is as high as the brace',
};

/** The greatest distance at which every foot has its place. */
function nearer(run: RunLayout, bracing: BracingSpec, out: Ticks): readonly Fix[] {
  const { spec, joints } = run;
  const { origin } = bracing;
  // What is taken from another run holds there, too; what was measured is laid out from a plan that is not at hand.
  if (spec.measured || run.posts.length > MOST_POSTS || !origin.path.startsWith(spec.origin.path)) return [];
  const step = STEP[isMetric(spec.measure) ? 'metric' : 'imperial'];
  for (let less = Math.floor((out - 1) / step) * step; less >= out / 2 && less > 0; less -= step) {
    const other = { ...bracing, out: { value: less, origin } };
    const { sound, temporary } = layOutRun({ ...spec, bracing: other }, '', joints);
    if (!sound || temporary.blocked.length > 0) continue;
    const text = textOf(other, run);
    const title = `Set the feet ${formatLength(less, spec.measure)} out`;
    return [{ title, changes: [{ uri: origin.uri, path: origin.path, place: 'replace', text }] }];
  }
  return [];
}

/** The statement anew, with all that it says. */
function textOf(bracing: BracingSpec, { spec: { measure }, temporary }: RunLayout): string {
  const spell = (ticks: Ticks) => spellLength(ticks, measure);
  const { board, stake, stakeLength, up, out, low, high, again } = bracing;
  const height = up?.value ?? temporary.blocked[0]?.up ?? 0;
  return [
    `temporary bracing ${spellName(board.value.name)}`,
    `${spell(height)} up`,
    `${spell(out?.value ?? height)} out`,
    ...(high ? [`strips at ${spell(low.value)} and ${spell(high.value)}`] : []),
    ...(stake.value.name === board.value.name && stakeLength.origin.why !== 'stated'
      ? []
      : [
          `stakes ${spellName(stake.value.name)}${stakeLength.origin.why === 'stated' ? ` ${spell(stakeLength.value)}` : ''}`,
        ]),
    ...(again ? ['bay by bay'] : []),
  ].join(', ');
}
