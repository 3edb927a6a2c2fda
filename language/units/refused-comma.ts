import type { Explain } from './explain.ts';
import { refuse } from './parsed-length.ts';
import { readLength } from './read-length.ts';

const COMMAS = /^(\d+(?:,\d+)+)(\.\d+)?(?!\d)(.*)$/;
const ONE_UNIT = /^(?: ?[a-z]+|['"])$/;

/** A comma inside a number: a thousands mark, a decimal comma, or a list written without spaces. */
export const explainComma: Explain = (t, through) => {
  const found = COMMAS.exec(t);
  if (!found) return /\d,\d/.test(t) ? through('decimal-comma', t.replace(/(\d),(?=\d)/g, '$1.')) : undefined;
  const [, head = '', part = '', rest = ''] = found;
  const groups = head.split(',');
  const [first = '', second = ''] = groups;
  const asDecimal = `${first}.${second}${rest}`;
  const oneComma = groups.length === 2 && part === '';

  if (first.length <= 3 && !first.startsWith('0') && groups.slice(1).every((group) => group.length === 3)) {
    const whole = through('thousands-mark', groups.join('') + part + rest);
    if (!oneComma || !readLength(asDecimal)?.ok || !whole.hint) return whole;
    // A screen is rather 4.2 m long than 4200 m; in any smaller unit the comma marks thousands.
    const fixes = [whole.hint, asDecimal];
    return refuse('thousands-mark', rest.trim() === 'm' ? fixes.reverse() : fixes);
  }
  const list = ONE_UNIT.test(rest) ? groups.map((group) => group + rest) : [];
  const asList = list.length > 0 && list.every((each) => readLength(each)?.ok) ? [list.join(', ')] : [];
  if (!oneComma) return refuse('not-a-length', asList);
  const decimal = through('decimal-comma', asDecimal);
  if (decimal.hint === undefined) return decimal;
  return refuse(decimal.problem, [...(decimal.hints ?? [decimal.hint]), ...asList]);
};
