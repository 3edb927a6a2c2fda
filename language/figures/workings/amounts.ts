import type { Origin } from '../../model/index.ts';
import type { Published } from '../../standards/index.ts';
import { type Amount, type Ticks, toInches, type UnitName } from '../../units/index.ts';
import type { WorkingInput, WorkingStep } from '../working.ts';
import type { Known } from './material-values.ts';

export const amount = (value: number, unit: UnitName): Amount => ({ value, unit });

/** A length of the layout as an amount, in inches. */
export const inchesOf = (ticks: Ticks): Amount => amount(toInches(ticks), 'in');

export function input(name: string, symbol: string, value: Amount | string, from: string): WorkingInput {
  return { name, symbol, value, from };
}

/** A value of a material, with where it is from. */
export function known(name: string, symbol: string, { value, from }: Known, unit: UnitName): WorkingInput {
  return input(name, symbol, amount(value, unit), from);
}

export function step(says: string, value?: Amount): WorkingStep {
  return value === undefined ? { says } : { says, value };
}

/** Where a value of the text comes from, in a word. */
export function fromOf({ why }: Origin): string {
  if (why === 'default') return 'not stated: common practice';
  return why === 'stated' ? 'stated' : 'as laid out';
}

/** What needs no table. */
export const STATICS: Published = {
  source: 'statics',
  section: 'equilibrium, and bending of straight bars',
  confirmed: 'primary',
};
