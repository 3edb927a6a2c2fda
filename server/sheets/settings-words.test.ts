import { expect, it } from 'vitest';
import type { BoardPlan } from '../../language/takeoff/index.ts';
import { settingsWords } from './settings-words.ts';

const plan = (settings: number, settingsBound: number, minor: number, proven: boolean) =>
  ({
    settings,
    settingsBound,
    proven,
    cost: { minor, currency: 'USD' },
    bound: { minor: 9800, currency: 'USD' },
  }) as BoardPlan;

it('says how few settings are taken, whether that is known, and what it costs over the least', () => {
  expect(settingsWords([plan(1, 1, 9800, true)])).toBe('1 setting, proven fewest at the least cost');
  expect(settingsWords([plan(3, 3, 9900, true)])).toBe(
    '3 settings, proven fewest for so much, at most $1.00 over the least',
  );
  expect(settingsWords([plan(3, 3, 9900, false)])).toBe(
    '3 settings, no plan for so much takes fewer, at most $1.00 over the least',
  );
  expect(settingsWords([plan(5, 3, 9800, false), plan(2, 2, 9800, true)])).toBe(
    '7 settings, no fewer than 5',
  );
});
