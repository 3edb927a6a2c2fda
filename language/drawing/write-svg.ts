import { PAPER, styleSheet, type Theme } from './paper-theme.ts';
import { hundredth } from './path-text.ts';
import { placeLabels } from './place-labels.ts';
import { groupElement, labelElements, type SvgElement } from './svg-mapping.ts';
import type { View } from './view.ts';

const THEMES: Readonly<Record<'paper', Theme>> = { paper: PAPER };

/**
 * A view as a self-contained SVG document. One user unit is a millimeter of the real thing; `width` and
 * `height` say the size of the sheet so that its letters are 3 mm high on paper.
 */
export function writeSvg(view: View, theme: keyof typeof THEMES = 'paper'): string {
  const colors = THEMES[theme];
  const [x, y, width, height] = view.box;
  const scale = 3 / view.letter;
  const labels = placeLabels(view.labels, view.letter);
  const side = `as seen from ${view.side}; lengths are written along the dimension lines`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${hundredth(width * scale)}mm" height="${hundredth(height * scale)}mm" viewBox="${x} ${y} ${width} ${height}">`,
    `<title>${escapeXml(view.title)}</title>`,
    `<desc>${escapeXml(view.stale ? `Last good picture, ${side}` : `Drawn ${side}`)}</desc>`,
    `<style>${escapeXml(styleSheet(colors, view.letter))}</style>`,
    `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="${colors.sheet}"/>`,
    ...view.groups.map(groupElement).map(elementText),
    ...labels.flatMap((placed) => labelElements(placed, view.letter)).map(elementText),
    '</svg>',
    '',
  ].join('\n');
}

function elementText({ tag, attrs, text }: SvgElement): string {
  const written = Object.entries(attrs).map(([name, value]) => ` ${name}="${escapeXml(String(value))}"`);
  const open = `<${tag}${written.join('')}`;
  return text === undefined ? `${open}/>` : `${open}>${escapeXml(text)}</${tag}>`;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};

/** Text as XML character data or attribute value; characters XML 1.0 does not allow become U+FFFD. */
export function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD')
    .replace(/[&<>"']/g, (character) => ENTITIES[character] as string);
}
