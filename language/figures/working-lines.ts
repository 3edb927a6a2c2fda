import { type Amount, formatAmount, inSystem, type System } from '../units/index.ts';
import { keepsWithin, type Working, type WorkingInput } from './working.ts';

/** A working as lines of plain text, amounts in the units of a system: the same wherever it is read. */
export function workingLines(working: Working, system: System): readonly string[] {
  const show = (amount: Amount) => formatAmount(inSystem(amount, system));
  const { figure, limit, formula, inputs, steps, basis, notes } = working;
  const keeps = keepsWithin(working);
  const held = limit && `${limit.name}: ${limit.is} ${show(limit)}; ${keeps ? 'within' : 'not within'}`;
  return [
    formula,
    ...inputs.map((input) => inputLine(input, show)),
    ...steps.map(({ says, value }) => (value ? `${says} = ${show(value)}` : says)),
    `comes to ${show(figure)}${held ? ` (${held})` : ''}`,
    ...[
      ...new Set(
        basis.map(({ source, section, confirmed }) => `rests on ${source}, ${section} (${SURE[confirmed]})`),
      ),
    ],
    ...notes,
  ];
}

function inputLine({ name, symbol, value, from }: WorkingInput, show: (amount: Amount) => string): string {
  const what = symbol === '' ? name : `${name}, ${symbol}`;
  return `${what} = ${typeof value === 'string' ? value : show(value)} (${from})`;
}

const SURE = {
  primary: 'seen in the text itself',
  secondary: 'seen in a second source',
  'from memory': 'from memory; check it before you lean on it',
} as const;
