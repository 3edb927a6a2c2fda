import { expect, it } from 'vitest';
import { bicycleCourt, compostBay, jobOf, sourced, teaTerrace } from '../../tests/specs/index.ts';
import { feet } from '../units/index.ts';
import { createLayoutMemo, layOutJob } from './index.ts';

it('lays out no run but the one that changed', () => {
  const memo = createLayoutMemo();
  const [court, compost, quay] = [bicycleCourt(), compostBay(), teaTerrace()];
  const before = layOutJob(jobOf([court, compost, quay]), memo);
  expect(memo.laidOut).toBe(3);

  const longer = { ...compostBay(), length: sourced(feet(9)) };
  // Made anew, as after another parse, but alike.
  const after = layOutJob(jobOf([bicycleCourt(), longer, teaTerrace()]), memo);
  expect(memo.laidOut).toBe(4);
  expect(after.runs[0]).toBe(before.runs[0]);
  expect(after.runs[1]).not.toBe(before.runs[1]);
  expect(after.runs[1]?.bays.at(-1)?.to).toBeGreaterThan(before.runs[1]?.bays.at(-1)?.to ?? 0);
  expect(after.runs[2]).toBe(before.runs[2]);

  layOutJob(jobOf([teaTerrace(), bicycleCourt(), longer]), memo);
  expect(memo.laidOut).toBe(4);
});

it('keeps the last good layout of a run that breaks, and forgets a run that is gone', () => {
  const memo = createLayoutMemo();
  const court = bicycleCourt();
  const good = layOutJob(jobOf([court]), memo).runs[0];
  expect(memo.lastGood('court')).toBe(good);

  const broken = { name: 'court', origin: court.origin, broken: true } as const;
  expect(layOutJob(jobOf([broken]), memo).runs).toEqual([]);
  expect(memo.lastGood('court')).toBe(good);

  const impossible = layOutJob(jobOf([{ ...court, length: sourced(1) }]), memo).runs[0];
  expect(impossible).toMatchObject({ sound: false, pieces: [] });
  expect(memo.lastGood('court')).toBe(good);

  // Back to what it was: nothing is lost by having been broken but the work of one run.
  expect(layOutJob(jobOf([court]), memo).runs[0]?.hash).toBe(good?.hash);
  layOutJob(jobOf([compostBay()]), memo);
  expect(memo.lastGood('court')).toBeUndefined();
});

it('keeps two runs of one name apart', () => {
  const memo = createLayoutMemo();
  const runs = [teaTerrace(), { ...teaTerrace(), length: sourced(feet(20)) }];
  layOutJob(jobOf(runs), memo);
  layOutJob(jobOf(runs), memo);
  expect(memo.laidOut).toBe(2);
});
