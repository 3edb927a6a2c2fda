import type * as ast from '../grammar/index.ts';
import { type Money, moneyOf, parseMoney } from '../units/index.ts';
import type { Sourced } from './job.ts';
import { originOf, type Reader, tell } from './reader.ts';

/** Money as stated; told where it is of another currency than the job's, or cannot be. */
export function readPrice(reader: Reader, node: ast.Price | undefined): Sourced<Money> | undefined {
  if (!node) return undefined;
  const origin = originOf(reader, node);
  const { text, amount, currency } = node;
  const money =
    text === undefined
      ? amount === undefined || currency === undefined
        ? undefined
        : moneyOf(amount, currency)
      : parseMoney(text, reader.currency);
  if (!money) {
    const spelling = text ?? `${amount ?? ''} ${currency ?? ''}`.trim();
    tell(reader, 'money-unclear', origin, { spelling, reason: 'spelling', currency: reader.currency ?? '' });
    return undefined;
  }
  if (reader.currency !== undefined && money.currency !== reader.currency) {
    const args = { spelling: money.currency, reason: 'mixed' as const, currency: reader.currency };
    tell(reader, 'money-unclear', origin, args);
    return undefined;
  }
  return { value: money, origin };
}
