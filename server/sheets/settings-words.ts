import type { BoardPlan } from '../../language/takeoff/index.ts';
import { formatMoney } from '../../language/units/index.ts';

/**
 * How few settings of the saw plans take that were made for few of them, all together, and what they may cost over the
 * least: `9 settings, proven fewest at the least cost`.
 */
export function settingsWords(plans: readonly BoardPlan[]): string {
  const sum = (of: (plan: BoardPlan) => number) => plans.reduce((all, plan) => all + of(plan), 0);
  const [settings, fewest] = [sum((plan) => plan.settings), sum((plan) => plan.settingsBound ?? 0)];
  const many = `${settings} setting${settings === 1 ? '' : 's'}`;
  const over = sum(({ cost, bound }) => (cost && bound ? cost.minor - bound.minor : 0));
  const cost = plans.find((plan) => plan.cost)?.cost;
  const dearer = cost && over > 0 ? `, at most ${formatMoney({ ...cost, minor: over })} over the least` : '';
  if (plans.every(({ proven }) => proven))
    return `${many}, proven fewest ${dearer ? 'for so much' : 'at the least cost'}${dearer}`;
  return `${many}, ${settings > fewest ? `no fewer than ${fewest}` : 'no plan for so much takes fewer'}${dearer}`;
}
