import { DefaultLexerErrorMessageProvider } from 'langium';

/** What to say of characters that mean nothing here, by how they begin. */
const HINTS: readonly (readonly [RegExp, string])[] = [
  [/^\/\*/, 'A comment opened with /* needs */ at its end.'],
  [/^[#/]/, 'A comment begins with //.'],
  [/^[\u2010-\u2015\u2212]/, 'Write a plain hyphen - instead of this dash.'],
  [/^[\u00BC-\u00BE\u2150-\u215E]/, 'Write the fraction with a slash, such as 5-1/2".'],
  [
    /^[\u2032\u2033\u2018\u2019\u201D]/,
    'A foot or inch mark follows a number, such as 5-1/2"; names stand in double quotes.',
  ],
  [/^[\u00D7*]/, 'Write the two sizes as two statements, such as width 5-1/2" and thickness 3/4".'],
  [
    /^-/,
    'A length has no sign; write up or down, or a hyphen only between inches and fraction, such as 5-1/2".',
  ],
  [/^\.\d/, 'Write a number with a digit before the point, such as 0.5.'],
  [/^:/, 'No colon is needed here; leave it out.'],
  [/^[[\]]/, 'Blocks stand in braces { }, arguments in parentheses ( ).'],
];

/** Says in a builder's words what is wrong with characters that no rule reads. */
export class SlatLexerMessages extends DefaultLexerErrorMessageProvider {
  override buildUnexpectedCharactersMessage(fullText: string, startOffset: number, length: number): string {
    const found = fullText.slice(startOffset, startOffset + Math.max(1, length));
    const rest = fullText.slice(startOffset, startOffset + 2);
    const hint = HINTS.find(([pattern]) => pattern.test(rest))?.[1] ?? 'Leave it out.';
    const shown = found.length > 20 ? `${found.slice(0, 20)}...` : found;
    return `\`${shown}\` means nothing here. ${hint}`;
  }
}
