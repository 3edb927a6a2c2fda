import type { RunSpec } from '../../language/model/index.ts';
import { feet, inches, METRIC, mm, type Ticks } from '../../language/units/index.ts';
import { board, patternOf, postOf, type RunParts, ripOf, runOf } from './build.ts';

const cedar6 = board('cedar-6', inches(5.5), inches(0.75));
const cedar4 = board('cedar-4', inches(3.5), inches(0.75));
const strip = ripOf('cedar-strip', cedar6, inches(1.5));
const cleat = board('cedar-cleat', inches(0.75), inches(0.75), 'cleat');
const fir24 = board('fir-2x4', inches(3.5), inches(1.5), 'rail');
const fir44 = postOf('fir-4x4', inches(3.5), inches(3.5));
const fir64 = postOf('fir-6x4', inches(5.5), inches(3.5));

/** Level slats between posts, three widths in the repeat, and a gate with upright slats on its face. */
export function bicycleCourt(parts: Partial<RunParts> = {}): RunSpec {
  return runOf({
    name: 'court',
    length: feet(23.5),
    post: fir44,
    spacing: { kind: 'at-most', limit: feet(5), measured: 'clear' },
    height: feet(6),
    bottom: { low: inches(2), high: inches(4) },
    pattern: patternOf('beat', [cedar6, strip, strip], {
      gap: inches(0.5),
      end: { kind: 'on', slat: 'cedar-6' },
    }),
    remedies: [{ kind: 'gaps', low: inches(3 / 8), high: inches(5 / 8) }, { kind: 'rip-last' }],
    cleat,
    endGap: inches(1 / 8),
    gates: [
      {
        name: 'cycles',
        opening: inches(42),
        station: feet(9.5),
        post: fir64,
        frame: fir24,
        pattern: patternOf('even', [cedar4], { gap: inches(0.5) }),
        flip: { upright: true },
      },
    ],
    ...parts,
  });
}

/** Upright slats between rails. */
export function compostBay(parts: Partial<RunParts> = {}): RunSpec {
  return runOf({
    name: 'compost',
    length: feet(8),
    post: fir44,
    spacing: { kind: 'posts', count: 3 },
    height: inches(48),
    bottom: inches(3),
    rail: fir24,
    pattern: patternOf('beat', [cedar6, strip, strip], {
      gap: inches(0.5),
      end: { kind: 'on', slat: 'cedar-6' },
    }),
    flip: { upright: true, topEdge: 'right' },
    cleat,
    endGap: inches(1 / 8),
    ...parts,
  });
}

/** A leaf with level slats between its stiles, no brace, in a run of slats between posts. */
export function leafBetween(parts: Partial<RunParts> = {}): RunSpec {
  return runOf({
    name: 'lane',
    length: feet(14),
    post: fir44,
    spacing: { kind: 'bays', count: 2 },
    height: inches(60),
    bottom: inches(3),
    pattern: patternOf('even', [cedar4], { gap: inches(0.5) }),
    remedies: [{ kind: 'gaps', low: inches(0.25), high: inches(0.75) }],
    cleat,
    endGap: inches(1 / 8),
    gates: [
      {
        name: 'wicket',
        opening: inches(40),
        station: feet(5),
        hinges: 'right',
        post: fir44,
        frame: fir24,
        brace: null,
        mounting: { kind: 'between' },
        cleat,
        endGap: inches(1 / 8),
        pattern: patternOf('even', [cedar4], { gap: inches(0.5) }),
        remedies: [{ kind: 'gaps', low: inches(0.25), high: inches(0.75) }],
      },
    ],
    ...parts,
  });
}

/** Metric, level slats on the front face of the posts. */
export function teaTerrace(parts: Partial<RunParts> = {}): RunSpec {
  return runOf({
    name: 'quay',
    measure: METRIC,
    length: mm(7200),
    post: postOf('spruce-90', mm(90), mm(90)),
    spacing: { kind: 'bays', count: 5 },
    height: mm(1750),
    bottom: { low: mm(50), high: mm(100) },
    mounting: { kind: 'face', face: 'front' },
    pattern: patternOf('breeze', [board('larch-90', mm(90), mm(20)), board('larch-30', mm(30), mm(20))], {
      gap: mm(15),
      end: { kind: 'on', slat: 'larch-90' },
    }),
    remedies: [{ kind: 'gaps', low: mm(12), high: mm(18) }, { kind: 'rip-last' }],
    endGap: mm(3),
    ...parts,
  });
}

/** One board as high as its place: for tests of posts and bays. */
export function postsOnly(length: Ticks, parts: Partial<RunParts> = {}): RunSpec {
  return runOf({
    length,
    post: fir44,
    spacing: { kind: 'bays', count: 1 },
    height: inches(7.5),
    bottom: inches(2),
    pattern: patternOf('one', [cedar6], { gap: 0 }),
    cleat,
    endGap: 0,
    ...parts,
  });
}
