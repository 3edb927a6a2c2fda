import { expect, it } from 'vitest';
import type { FitChoice } from '../layout.ts';
import { type FitProblem, fitPattern } from './index.ts';
import { boardOf } from './testing/boards.ts';
import { chosenOf, everyWay } from './testing/exhaustive.ts';
import { isBanded } from './testing/exhaustive-ways.ts';
import type { Found } from './testing/one-by-one.ts';
import { randomProblem } from './testing/random-problem.ts';

const PROBLEMS = 400;
const problems = Array.from({ length: PROBLEMS }, (_, seed) => randomProblem(seed + 1));
const waysOf = problems.map(everyWay);

const ORDER = ['move-ends', 'gaps', 'short-repeat', 'rip-last', 'change-width', 'trim'];

/** The figures that both ways of finding a choice know. */
function figures({ kind, count, gapChange, bottom, height, width, slat, edge }: FitChoice | Found): string {
  return JSON.stringify({ kind, count, gapChange, bottom, height, width, slat, edge });
}

const exceptKind = (found: FitChoice | Found): string => figures({ ...found, kind: 'as-drawn' } as Found);

it('builds what trying everything would build', () => {
  const kinds = new Set<string>();
  for (const problem of problems) {
    const { chosen } = fitPattern(problem);
    const expected = chosenOf(problem);
    expect(chosen && figures(chosen)).toBe(expected && figures(expected));
    kinds.add(chosen?.kind ?? 'nothing');
  }
  expect([...kinds].sort()).toEqual([...ORDER, 'as-drawn', 'nothing'].sort());
});

it('offers every way that the text can bring about, and no other', () => {
  const offered = new Map<string, number>();
  for (const [index, problem] of problems.entries()) {
    const { chosen, choices } = fitPattern(problem);
    const ways = waysOf[index] ?? [];
    const known = new Set(ways.map(figures));
    const found = new Set(choices.map(figures));
    expect(choices.map(figures).filter((choice) => !known.has(choice))).toEqual([]);
    expect(found.size).toBe(choices.length);
    for (const way of ways) {
      if (found.has(figures(way)) || (chosen && exceptKind(chosen) === exceptKind(way))) continue;
      const full = choices.filter(({ kind }) => kind === way.kind).length >= 8;
      if (!full)
        expect(canBeAsked(problem, way), `${figures(way)} of ${JSON.stringify(problem)}`).toBe(false);
    }
    for (const { kind } of choices) offered.set(kind, (offered.get(kind) ?? 0) + 1);
  }
  for (const kind of ORDER) expect(offered.get(kind), kind).toBeGreaterThan(PROBLEMS / 20);
});

it('ranks what it offers by remedy, then by what the eye sees', () => {
  for (const [index, problem] of problems.entries()) {
    const ways = new Map((waysOf[index] ?? []).map((way) => [figures(way), way]));
    const keys = fitPattern(problem).choices.map((choice) => {
      const way = ways.get(figures(choice));
      if (!way) throw new Error(`${figures(choice)} is no way to close it`);
      const order = ORDER.indexOf(way.kind);
      return [order, way.gapChange, way.taken, way.moved, way.edge === 'top' ? 1 : 0, -way.count];
    });
    const sorted = [...keys].sort((a, b) => {
      const at = a.findIndex((value, i) => value !== b[i]);
      return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
    });
    expect(keys).toEqual(sorted);
  }
});

/** Whether any statement of a fit, or of the ends, makes this way the one that is built. */
function canBeAsked(problem: FitProblem, way: Found): boolean {
  const { bottom, height, width = 0, slat = '', edge = 'bottom' } = way;
  const builds = (other: FitProblem) => {
    const built = chosenOf(other);
    return built !== undefined && exceptKind(built) === exceptKind(way);
  };
  if (way.kind === 'move-ends' && problem.ends && bottom !== undefined && height !== undefined) {
    const ends = { bottom: { low: bottom, high: bottom }, height: { low: height, high: height } };
    return builds({ ...problem, ends, space: height - bottom });
  }
  const boards = [...problem.trimBoards, ...problem.repeat].filter(({ stock }) => stock === slat);
  const gaps = gapsFrom(problem, way);
  const asked: FitProblem['remedies'][] = {
    'as-drawn': [],
    'move-ends': [[{ kind: 'move-ends' as const }]],
    gaps: gaps.map((each) => [each]),
    'short-repeat': [
      [{ kind: 'short-repeat' as const }],
      ...gaps.map((each) => [{ kind: 'short-repeat' as const }, each]),
    ],
    'rip-last': [[{ kind: 'rip-last' as const, least: width }]],
    'change-width': [[{ kind: 'change-width' as const, slat, width }]],
    trim: boards.map((board) => [{ kind: 'trim' as const, board: boardOf(board), edge }]),
  }[way.kind];
  const last: FitProblem['remedies'] = isBanded(problem) ? [{ kind: 'move-ends' }] : [];
  return asked.some((remedies) => builds({ ...problem, remedies: [...remedies, ...last] }));
}

/** The narrowest band that holds gaps changed as far as these, on either side of the nominal gap. */
function gapsFrom({ gap }: FitProblem, { gapChange }: Found) {
  return [gap - gapChange, gap + gapChange - 1, gap + gapChange].flatMap((low) =>
    [low, low + 1].filter(() => low >= 0).map((high) => ({ kind: 'gaps' as const, low, high })),
  );
}
