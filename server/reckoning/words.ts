import type { BoardPlan, Price, Takeoff } from '../../language/takeoff/index.ts';
import { formatMoney } from '../../language/units/index.ts';
import { settingsWords } from '../sheets/index.ts';

/** A share from 0 to 1, as people read it. */
export function percent(share: number): string {
  const tenths = Math.round(share * 1000) / 10;
  return `${tenths < 10 ? tenths : Math.round(tenths)} %`;
}

/** How many boards and posts are bought: `9 boards and 5 posts`; nothing where no plan is there. */
export function countsOf(plans: readonly BoardPlan[]): string {
  const count = (posts: boolean) =>
    plans
      .filter(({ bought }) => (bought.kind === 'post') === posts)
      .reduce((sum, { buy }) => sum + [...buy.values()].reduce((all, one) => all + one, 0), 0);
  return [many(count(false), 'board'), many(count(true), 'post')].filter(Boolean).join(' and ');
}

/** `1 board`, `2 boards`; nothing for none. */
export function many(count: number, what: string): string {
  return count === 0 ? '' : `${count} ${what}${count === 1 ? '' : 's'}`;
}

/** Whether the boards are proven, or how far they are from it. `over`: no more is going to be found out. */
export function proofOf({ proven, plans }: Takeoff, over: boolean): string {
  const planned = plans.filter(({ none }) => !none);
  if (planned.length === 0) return '';
  const open = planned.filter((plan) => !plan.proven);
  const after = over || open.length === 0 ? '' : ', proof goes on';
  if (planned.every(({ aim }) => aim === 'settings')) return `${settingsWords(planned)}${after}`;
  if (proven || open.length === 0) return provenWords(planned);
  const gap = open.reduce((sum, { cost, bound }) => sum + ((cost?.minor ?? 0) - (bound?.minor ?? 0)), 0);
  const currency = open[0]?.cost?.currency;
  if (currency !== undefined && open.every(({ cost }) => cost?.currency === currency))
    return `at most ${formatMoney({ minor: gap, currency })} too dear${after}`;
  return `not proven for ${open.map(({ bought }) => bought.name).join(', ')}${after}`;
}

/** Of one plan; see `proofOf`. */
export function proofOfPlan(plan: BoardPlan): string {
  return proofOf({ plans: [plan], proven: plan.proven, items: [] }, true);
}

const provenWords = (plans: readonly BoardPlan[]): string =>
  plans.every(({ cost }) => cost) ? 'proven cheapest' : 'proven to be the least';

/** Boards and what is bought besides, without labor; undefined where no line has a price. */
export function orderCost({ lines, currency }: Price): string | undefined {
  const bought = lines.filter(({ group }) => group === 'boards' || group === 'hardware');
  if (bought.every(({ minor }) => minor === undefined)) return undefined;
  const minor = bought.reduce((sum, line) => sum + (line.minor ?? 0), 0);
  return `${formatMoney({ minor, currency })}${bought.some(({ lacks }) => lacks) ? ' and more' : ''}`;
}
