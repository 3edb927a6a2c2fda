import { expect, it } from 'vitest';
import { formatMoney, moneyOf, parseMoney } from './money.ts';

it('reads money in whole minor units', () => {
  expect(parseMoney('$19.20')).toEqual({ minor: 1920, currency: 'USD' });
  expect(parseMoney('$1,234.5', 'CAD')).toEqual({ minor: 123450, currency: 'CAD' });
  expect(parseMoney('€ 7')).toEqual({ minor: 700, currency: 'EUR' });
  expect(parseMoney('¥1200')).toEqual({ minor: 1200, currency: 'JPY' });
  expect(moneyOf('0.1', 'USD')).toEqual({ minor: 10, currency: 'USD' });
  expect(moneyOf('1.005', 'USD')).toBeUndefined();
  expect(moneyOf('5', 'dollars')).toBeUndefined();
  expect(parseMoney('19.20')).toBeUndefined();
});

/** Held against the platform's own number formatting (ECMA-402, Unicode CLDR). */
it.each([0, 7, 1920, 123456789, -250])('writes %d cents as Intl.NumberFormat does', (minor) => {
  const format = new Intl.NumberFormat('en-US', { style: 'currency', currency: 'USD' });
  expect(formatMoney({ minor, currency: 'USD' })).toBe(format.format(minor / 100));
});

it('writes other currencies by sign or code', () => {
  expect(formatMoney({ minor: 980, currency: 'EUR' })).toBe('€9.80');
  expect(formatMoney({ minor: 1200, currency: 'CHF' })).toBe('CHF 12.00');
  expect(formatMoney({ minor: 1200, currency: 'JPY' })).toBe('¥1,200');
});
