/**
 * Widths of printable ASCII from the space on, in thousandths of the font size: for each character
 * the wider of DejaVu Sans and Liberation Sans (which has the widths of Arial), read from the fonts'
 * own tables. Other sans fonts are narrower than that or close to it.
 */
const WIDTHS = [
  318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636,
  636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 556, 1015, 684, 686, 722, 770, 667, 611, 778, 752, 295,
  500, 667, 557, 863, 748, 787, 667, 787, 722, 667, 611, 732, 684, 989, 685, 667, 685, 390, 337, 390, 838,
  556, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521,
  392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838,
];

/** Fractions, primes, dashes and signs that lengths are written with. */
const OTHERS: ReadonlyMap<string, number> = new Map([
  ['½', 969],
  ['¼', 969],
  ['¾', 969],
  ['′', 227],
  ['″', 374],
  ['–', 500],
  ['×', 838],
  ['·', 318],
  ['°', 500],
]);

/** Length of a text in font sizes; never less than what common sans fonts need. */
export function textWidth(text: string): number {
  let sum = 0;
  for (const character of text) {
    const code = character.codePointAt(0) as number;
    // Letters with marks are as wide as without; beyond Latin, Greek and Cyrillic count a full square.
    sum += WIDTHS[code - 32] ?? OTHERS.get(character) ?? (code < 0x530 ? 800 : 1000);
  }
  return sum / 1000;
}
