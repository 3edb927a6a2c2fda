import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches, mm } from '../../units/index.ts';
import type { FitChoice } from '../layout.ts';
import { type FitProblem, fitPattern, layOut, MOST_SLATS } from './index.ts';
import { randomProblem } from './testing/random-problem.ts';
import { withChanges } from './testing/read-changes.ts';
import { problemOf } from './testing/sample.ts';

const anyProblem = fc.integer({ min: 1, max: 2 ** 31 }).map(randomProblem);

const everyChoice = (problem: FitProblem): FitChoice[] => {
  const { chosen, choices } = fitPattern(problem);
  return chosen ? [chosen, ...choices] : [...choices];
};

const gapsOf = (slots: readonly { start: number; end: number }[]): number[] =>
  slots.slice(1).map(({ start }, i) => start - (slots[i]?.end ?? 0));

it('fills the space to the tick, whatever is chosen', () => {
  fc.assert(
    fc.property(anyProblem, (problem) => {
      for (const choice of everyChoice(problem)) {
        const { slots, space } = layOut(problem, choice);
        const gaps = gapsOf(slots);
        const pieces = slots.reduce((sum, { start, end }) => sum + end - start, 0);
        expect(slots[0]?.start).toBe(choice.lead);
        expect(choice.lead + pieces + gaps.reduce((sum, gap) => sum + gap, 0) + choice.tail).toBe(space);
        expect(slots.filter(({ kind }) => kind === 'slat').length).toBe(choice.count);
        expect(slots.flatMap(({ start, end }) => [start, end]).every(Number.isSafeInteger)).toBe(true);
      }
    }),
    { numRuns: 300, seed: 7 },
  );
});

it('keeps all gaps within a tick of each other and within what is allowed', () => {
  fc.assert(
    fc.property(anyProblem, (problem) => {
      const metric = problem.measure.unit === 'mm';
      const fine = metric ? mm(1.5) : inches(1 / 16);
      const usual = problem.besideNominal ? fine : 2 * fine;
      const stated = problem.remedies.flatMap((each) => (each.kind === 'gaps' ? [each] : []));
      for (const choice of everyChoice(problem)) {
        const gaps = gapsOf(layOut(problem, choice).slots);
        if (gaps.length === 0) continue;
        const [least, most] = [Math.min(...gaps), Math.max(...gaps)];
        const bands = [{ low: problem.gap - usual, high: problem.gap + usual }, ...stated];
        expect(most - least).toBeLessThanOrEqual(1);
        expect(least).toBeGreaterThanOrEqual(0);
        expect(bands.some(({ low, high }) => least >= low && most <= high)).toBe(true);
        const change = Math.max(Math.abs(least - problem.gap), Math.abs(most - problem.gap));
        // Half gaps at the edges may take the odd tick that the gaps between are then spared.
        expect(choice.gapChange - change).toBeGreaterThanOrEqual(0);
        expect(choice.gapChange - change).toBeLessThanOrEqual(problem.edgeHalf ? 1 : 0);
      }
    }),
    { numRuns: 300, seed: 7 },
  );
});

it('rips no strip narrower than the text allows, nor wider than the board it comes from', () => {
  fc.assert(
    fc.property(anyProblem, (problem) => {
      const narrowest = problem.measure.unit === 'mm' ? mm(40) : inches(1.5);
      const asked = problem.remedies.flatMap((each) => {
        if (each.kind === 'rip-last') return [each.least ?? narrowest];
        return each.kind === 'change-width' ? [each.width] : [];
      });
      for (const { kind, width, slat } of everyChoice(problem)) {
        if (width === undefined) continue;
        expect(width).toBeGreaterThanOrEqual(Math.min(narrowest, ...asked));
        const boards = kind === 'trim' ? [...problem.trimBoards, ...problem.repeat] : problem.repeat;
        const board = boards.find(({ stock }) => stock === slat);
        expect(width).toBeLessThanOrEqual(board && 'from' in board ? board.from : (board?.width ?? 0));
      }
    }),
    { numRuns: 300, seed: 7 },
  );
});

it('offers edits that, once made, build the very figures that were offered', () => {
  let made = 0;
  fc.assert(
    fc.property(anyProblem, (problem) => {
      for (const { changes, restated, ...offered } of fitPattern(problem).choices) {
        expect(changes.length).toBeGreaterThan(0);
        expect(Object.keys(restated ?? {}).length).toBeGreaterThan(0);
        const after = withChanges(problem, changes);
        const built = fitPattern(after).chosen;
        const kind = built?.kind === 'as-drawn' ? offered.kind : built?.kind;
        expect({ ...built, kind }).toEqual({ ...offered, kind: offered.kind, changes: [] });
        expect(layOut(after, built)).toEqual(layOut(problem, { ...offered, changes }));
        made += 1;
      }
    }),
    { numRuns: 300, seed: 7 },
  );
  expect(made).toBeGreaterThan(1000);
});

it('makes nothing of what is no pattern or no space', () => {
  const plain = problemOf([['board', 5.5]], { space: inches(60) });
  const none = { leftover: 0, nominalCount: 0, choices: [] };
  const nothing: [Partial<FitProblem>, typeof none][] = [
    [{ repeat: [] }, { ...none, leftover: inches(60) }],
    [{ repeat: [{ stock: 'board', width: 0, from: 0 }] }, { ...none, leftover: inches(60) }],
    [{ gap: -1 }, { ...none, leftover: inches(60) }],
    [{ gap: Number.NaN }, { ...none, leftover: inches(60) }],
    [{ space: 0 }, none],
    [{ space: -5 }, none],
    [{ space: Number.NaN }, none],
    [{ space: Number.POSITIVE_INFINITY }, none],
  ];
  for (const [different, fit] of nothing) {
    expect(fitPattern({ ...plain, ...different })).toEqual(fit);
    expect(layOut({ ...plain, ...different }).slots).toEqual([]);
  }
});

it('ends on no slat that the repeat does not have', () => {
  const problem = problemOf([['board', 5.5]], { space: inches(60), end: { kind: 'on', slat: 'strip' } });
  const { chosen, nominalCount, choices } = fitPattern(problem);
  expect({ chosen, nominalCount }).toEqual({ nominalCount: 0 });
  expect(choices.every(({ kind }) => kind === 'short-repeat')).toBe(true);
});

it('counts no more slats than a screen has, in the time of a keystroke', () => {
  const hair = { stock: 'hair', width: 1, from: inches(2) };
  const problem: FitProblem = {
    ...problemOf([], { space: inches(100_000), gap: 0 }),
    repeat: [hair, { ...hair, stock: 'thread' }],
    remedies: [
      { kind: 'gaps', low: 0, high: inches(100_000) },
      { kind: 'short-repeat' },
      { kind: 'rip-last' },
    ],
  };
  const start = performance.now();
  const { nominalCount, choices } = fitPattern(problem);
  expect(performance.now() - start).toBeLessThan(1000);
  expect(nominalCount).toBe(MOST_SLATS);
  expect(choices.every(({ count }) => count <= MOST_SLATS)).toBe(true);
  expect(layOut(problem).slots.length).toBe(MOST_SLATS);
});
