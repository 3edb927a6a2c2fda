import type { Job } from '../../language/model/index.ts';
import type { Price, PriceLine } from '../../language/takeoff/index.ts';
import { formatLength, formatMoney } from '../../language/units/index.ts';
import type { Material } from '../protocol.ts';

/** Every line of a price, then what is added to it and what it comes to. */
export function priceLines(price: Price, job: Job): readonly Material[] {
  const money = (minor: number) => formatMoney({ minor, currency: price.currency });
  const { quote } = job;
  const percent = (share: { readonly value: number } | undefined) => `${round(100 * (share?.value ?? 0))} %`;
  const sums: readonly (readonly [label: string, note: string] | undefined)[] = [
    ['Material', money(price.material)],
    price.labor > 0 ? ['Labor', `${money(price.labor)}, ${round(price.minutes / 60)} hours`] : undefined,
    quote.overhead && [`Overhead ${percent(quote.overhead)}`, money(price.overhead)],
    quote.margin
      ? [`Margin ${percent(quote.margin)} of what is asked`, money(price.profit)]
      : quote.markup && [`Markup ${percent(quote.markup)} on cost`, money(price.profit)],
    ['Net', money(price.net)],
    quote.tax && [`Tax ${percent(quote.tax)}`, money(price.tax)],
    quote.tax && ['Total', money(price.gross)],
    price.deposit === undefined ? undefined : ['Deposit', money(price.deposit)],
  ];
  return [
    ...price.lines.map((line, at) => lineOf(line, at, job, money)),
    ...sums.flatMap((sum): Material[] => {
      const [label, note] = sum ?? [];
      return label === undefined || note === undefined
        ? []
        : [{ id: `price/${label}`, label, note, kind: 'line' }];
    }),
    ...(price.whole
      ? []
      : [
          {
            id: 'price/lacks',
            label: 'Lines without a price are not in the sum',
            kind: 'trouble' as const,
          },
        ]),
  ];
}

function lineOf(
  { group, what, count, unit, minor, lacks }: PriceLine,
  at: number,
  job: Job,
  money: (minor: number) => string,
): Material {
  const size =
    group === 'boards' ? ` of ${formatLength(Number(unit), job.measure.value)}` : unit && ` ${unit}`;
  return {
    id: `price/${at} ${what}`,
    label: what,
    note: `${round(count)}${size}, ${minor === undefined ? `no ${lacks} is given` : money(minor)}`,
    kind: minor === undefined ? 'trouble' : 'line',
  };
}

const round = (value: number): number => Math.round(value * 10) / 10;
