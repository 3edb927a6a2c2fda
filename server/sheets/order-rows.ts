import { isMetric, type Job } from '../../language/model/index.ts';
import { orderOf, type Takeoff } from '../../language/takeoff/index.ts';
import { formatLength } from '../../language/units/index.ts';

/** The order for the yard as rows of a table, heads first: boards and posts, then what is bought besides. */
export function orderRows(found: Takeoff, job: Job): string[][] {
  const metric = isMetric(job.measure.value);
  const length = (ticks: number) => formatLength(ticks, job.measure.value);
  return [
    [
      'stock',
      'width',
      'thickness',
      'length',
      'pieces',
      'spare',
      metric ? 'm' : 'ft',
      metric ? 'm3' : 'board ft',
    ],
    ...orderOf(found.plans, job, metric).map((one) => [
      one.temporary ? `${one.stock}, temporary, can be used again` : one.stock,
      length(one.section[0]),
      length(one.section[1]),
      length(one.length),
      String(one.needed),
      String(one.spare),
      String(round(one.run)),
      String(round(one.volume, 3)),
    ]),
    ...found.items.map(({ what, count, unit }) => [what, '', '', '', String(round(count)), '', unit, '']),
  ];
}

const round = (value: number, digits = 1): number => Math.round(value * 10 ** digits) / 10 ** digits;
