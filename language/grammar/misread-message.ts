import { code, describe } from './expectations.ts';
import { quoted } from './names.ts';
import type { Reading } from './syntax-words.ts';
import type { TokenView } from './token-view.ts';

/** Where any word is read, what words are meant. */
const WORD_AFTER: Readonly<Record<string, string>> = {
  measure: 'the unit to measure in, such as `inches`, `feet` or `mm`',
  kind: 'what it is, such as `wood`, `aluminum` or `steel`',
};

/**
 * What to say where a statement or the head of a block stops making sense.
 *
 * @param at the place up to which it was read
 * @param readsAsName whether it could be read further if what stands there were a name
 */
export function misreadMessage(
  view: TokenView,
  at: number,
  reading: Reading,
  readsAsName: () => boolean,
): string {
  const { expected } = reading;
  const mayEnd = reading.ends.has(at);
  const before = code(view.image(at - 1));
  const visible = !view.isOver(at);
  const wants = (word: string) => expected.some((each) => each.kind === 'word' && each.word === word);
  if (visible && expected.some(({ kind }) => kind === 'name')) {
    const misnamed = misnamedMessage(view, at, reading, readsAsName);
    if (misnamed) return misnamed;
  }
  if (wants(')') && view.wordAt(at) !== '(' && view.wordAt(at) !== '=') {
    return `A closing parenthesis ) is missing after ${before}.`;
  }
  if (wants('{') && !visible) return `An opening brace { is missing after ${before}.`;
  const measured = mayEnd && visible ? measureMessage(view, at) : undefined;
  if (measured) return measured;
  const comes = WORD_AFTER[view.wordAt(at - 1)] ?? describe(expected, mayEnd);
  return `After ${before} comes ${comes}${visible ? `, not ${code(view.image(at))}` : ''}.`;
}

/** A name was wanted: is what stands there meant as one? */
function misnamedMessage(
  view: TokenView,
  at: number,
  reading: Reading,
  readsAsName: () => boolean,
): string | undefined {
  const image = view.image(at);
  if (/^[a-z]/.test(image)) {
    if (!readsAsName()) return undefined;
    return `${code(image)} is a word of the language; to use it as a name, put it in quotes: ${quoted(image)}.`;
  }
  const lengthToo = reading.expected.some(({ kind }) => kind === 'length');
  if (lengthToo || !/^\d/.test(image)) return undefined;
  return `A name begins with a letter; put any other in quotes: ${quoted(view.unspaced(at))}.`;
}

/** Slips in writing lengths that leave a statement with something over. */
function measureMessage(view: TokenView, at: number): string | undefined {
  const [first, second] = [view.wordAt(at - 1), view.wordAt(at)];
  const [before, image] = [view.image(at - 1), view.image(at)];
  if (first === 'LENGTH' && (second === 'NUMBER' || second === 'FRACTION')) {
    return `Give ${code(image)} its unit: ${before} ${image}".`;
  }
  const close = view.offset(at) - view.offset(at - 1) - before.length <= 1;
  if ((first === 'NUMBER' || first === 'FRACTION') && second === 'ID' && close) {
    return `${code(image)} is no unit; lengths are written with ' and ", or with mm, cm or m.`;
  }
  return undefined;
}
