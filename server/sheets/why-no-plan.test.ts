import { expect, it } from 'vitest';
import type { Job } from '../../language/model/index.ts';
import type { BoardPlan } from '../../language/takeoff/index.ts';
import { feet, IMPERIAL } from '../../language/units/index.ts';
import { whyNoPlan } from './why-no-plan.ts';

const job = { measure: { value: IMPERIAL } } as unknown as Job;

/** Demands of two stocks that are cut from one, each with how many pieces of how many feet. */
function plan(...demands: readonly (readonly (readonly [length: number, count: number])[])[]): BoardPlan {
  return {
    none: { kind: 'too-long', labels: [], longest: feet(8) },
    demands: demands.map((wanted) => ({
      wanted: wanted.map(([length, count]) => ({ length: feet(length), pieces: Array(count).fill({}) })),
    })),
  } as unknown as BoardPlan;
}

it('says how many pieces of which length are too long, of all stocks cut from the boards', () => {
  expect(
    whyNoPlan(
      plan(
        [
          [10, 3],
          [8, 9],
        ],
        [[10, 2]],
      ),
      job,
    ),
  ).toBe("5 of 10' are longer than any board gives, 8'");
});

it('counts the rest together where there are many lengths', () => {
  const many = [9, 10, 11, 12, 13].map((length) => [length, length] as const);
  expect(whyNoPlan(plan(many.slice(1)), job)).toBe(
    "13 of 13', 12 of 12', 11 of 11', 10 of another length are longer than any board gives, 8'",
  );
  expect(whyNoPlan(plan(many), job)).toBe(
    "13 of 13', 12 of 12', 11 of 11', 19 of 2 other lengths are longer than any board gives, 8'",
  );
});
