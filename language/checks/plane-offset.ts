import { isInBay, type Layout, type RunLayout, spellAfter } from '../layout/index.ts';
import { formatLength, inches, type Measure, mm, spellLength, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedLayoutCheck, thresholdOf } from './define.ts';
import type { Finding, Fix } from './finding.ts';
import { bayBeside, meetingsOf } from './joints.ts';
import { postFinding, postsOff } from './post-faces.ts';
import { replaceAt } from './written-change.ts';

/** What is less is not seen. */
const SEEN = inches(1 / 16);

/** Slats of two runs that go straight on, or posts of one run, whose faces are neither flush nor clearly stepped. */
export const planeOffset: LimitedLayoutCheck = {
  kind: {
    code: 'plane-offset',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('adjoining faces are flush within 1/16", or stepped by 1" or more'),
    threshold: {
      is: 'length',
      imperial: inches(1),
      metric: mm(25),
      says: 'offset of two faces from which on it looks like a step that is meant',
    },
    message: (a) =>
      a.post !== undefined
        ? `The ${a.face} of post ${a.post}, ${a.second}, is ${a.offset} off that of the other posts of ${a.first}: ` +
          'neither flush nor a clear step. Use one as deep as they are, wider along the run where it bears more.'
        : `The ${a.face} of ${a.second} is ${a.offset} off that of ${a.first}: neither flush nor a clear step. ` +
          `Use slats and posts of one thickness, or set one run back by ${a.step} or more.`,
  },
  check: (layout, job) => {
    const limit = thresholdOf(job, planeOffset.kind);
    const posts = layout.runs.flatMap((run) =>
      postsOff(run, SEEN, limit).map((off) => postFinding(off, run, limit, job)),
    );
    const runs = straightOn(layout).flatMap(({ first, second, off }): Finding[] => {
      const [one, other] = [facesBeside(first, 'last'), facesBeside(second, 'first')];
      if (!one || !other) return [];
      const { value } = second.spec.infill.mounting;
      const face = value.kind === 'face' ? value.face : 'front';
      const side = face === 'front' ? 0 : 1;
      const offset = Math.abs(one[side] - other[side] - off);
      if (offset <= SEEN || offset >= limit) return [];
      return [
        {
          code: 'plane-offset',
          at: second.spec.placement?.origin ?? second.spec.origin,
          args: {
            first: first.spec.name,
            second: second.spec.name,
            face,
            offset: formatLength(Math.round(offset), job.measure.value),
            step: formatLength(limit, job.measure.value),
          },
          fixes: setBack(first, second, one[side] - other[side] + limit, job.measure.value),
        },
      ];
    });
    return [...runs, ...posts];
  },
};

interface StraightOn {
  readonly first: RunLayout;
  readonly second: RunLayout;
  /** Of the middle line of the second run from that of the first, toward the back. */
  readonly off: number;
}

/** Runs in line with the one they come after, whether they share a post with it or have one of their own. */
function straightOn(layout: Layout): readonly StraightOn[] {
  const sharing = meetingsOf(layout).flatMap(({ first, second, turn }): StraightOn[] => {
    const { start } = second.joints;
    return turn === 0 && start ? [{ first, second, off: start.corner.at[1] }] : [];
  });
  const byName = new Map(layout.runs.map((run) => [run.spec.name, run]));
  const stepping = layout.runs.flatMap((second): StraightOn[] => {
    const { placement } = second.spec;
    // A panel goes over from one plane to the other: there is no step to be seen.
    const panel = placement?.kind === 'on' && placement.bridge?.kind === 'panel';
    if (placement?.kind !== 'on' || (panel && !second.joints.bridge?.trouble)) return [];
    const first = byName.get(placement.run);
    return first ? [{ first, second, off: placement.step?.value ?? 0 }] : [];
  });
  return [...sharing, ...stepping];
}

/** The second run a clear step back, where that says nothing against what it states itself. */
function setBack(first: RunLayout, second: RunLayout, least: number, measure: Measure): readonly Fix[] {
  const { placement, name } = second.spec;
  if (!placement || placement.kind === 'at' || least <= 0) return [];
  if (placement.kind === 'after' && placement.corner.origin.why === 'stated') return [];
  const { origin } = placement;
  // Up to the next mark of the tape, so that what is written is no less.
  const value = Math.ceil(least / measure.step) * measure.step;
  const back = spellLength(value, measure);
  const gap =
    placement.kind === 'on' ? placement.gap : { value: 0, origin: { ...origin, why: 'default' as const } };
  const bridge = placement.kind === 'on' ? placement.bridge : undefined;
  const text = spellAfter(
    { kind: 'on', run: first.spec.name, gap, step: { value, origin }, ...(bridge ? { bridge } : {}), origin },
    measure,
  );
  return [
    {
      title: `Set ${name} back by ${back}, with a post of its own`,
      changes: [replaceAt(origin, text)],
    },
  ];
}

/** Front and back of the slats next to the shared post. */
function facesBeside(run: RunLayout, end: 'first' | 'last'): readonly [Ticks, Ticks] | undefined {
  const bay = bayBeside(run, end);
  if (bay === undefined) return undefined;
  const slats = run.pieces.filter((piece) => piece.role === 'slat' && isInBay(piece, bay));
  const y = slats.flatMap(({ solid }) => solid.vertices.map((vertex) => vertex[1]));
  return y.length === 0 ? undefined : [Math.min(...y), Math.max(...y)];
}
