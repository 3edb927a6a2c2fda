import type * as ast from '../grammar/index.ts';
import {
  type Amount,
  convert,
  dimensionOf,
  formatAmount,
  parseAmount,
  spellingsOf,
  type UnitName,
} from '../units/index.ts';
import type { Sourced } from './job.ts';
import { type Node, originOf, type Reader, tell } from './reader.ts';

type AmountNode =
  | ast.WindStatement
  | ast.FittedCondition
  | ast.BendingStatement
  | ast.StiffnessStatement
  | ast.DensityStatement;

/** What an amount is read for. */
export interface AmountRule {
  readonly what: string;
  /** The unit it is kept in; any unit of the same dimension will do in the text. */
  readonly unit: UnitName;
  /** In that unit. */
  readonly least: number;
  readonly most: number;
}

/** An amount in the unit asked for. Undefined where there is none, or one that cannot be, of which it tells. */
export function readAmount(
  reader: Reader,
  node: AmountNode & Node,
  property: string,
  text: string | undefined,
  { what, unit, least, most }: AmountRule,
): Sourced<number> | undefined {
  if (text === undefined) return undefined;
  const origin = originOf(reader, node, property);
  const amount: Amount | undefined = parseAmount(text);
  const range = `${formatAmount({ value: least, unit })} to ${formatAmount({ value: most, unit })}`;
  if (!amount || dimensionOf(amount.unit) !== dimensionOf(unit)) {
    const units = spellingsOf(dimensionOf(unit)).join(', ');
    tell(reader, 'amount-unclear', origin, { what, spelling: text, reason: 'unit', units, range });
    return undefined;
  }
  const value = convert(amount, unit);
  if (value >= least && value <= most) return { value, origin };
  tell(reader, 'amount-unclear', origin, { what, spelling: text, reason: 'range', units: '', range });
  return undefined;
}
