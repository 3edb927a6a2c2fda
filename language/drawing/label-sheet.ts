import { PAPER } from './paper-theme.ts';
import { SHEET_WIDTH, sawSheet, tenth } from './saw-sheet.ts';
import { escapeXml } from './write-svg.ts';

/** Labels to be cut out and stuck on pieces, in rows of six. */
export function labelSheet(
  title: string,
  labels: readonly { readonly label: string; readonly note: string }[],
): string {
  const columns = 6;
  const [wide, high] = [SHEET_WIDTH / columns, 15];
  const height = 20 + high * Math.ceil(labels.length / columns);
  const cells = labels.map(({ label, note }, at) => {
    const [x, y] = [10 + (at % columns) * wide, 16 + Math.floor(at / columns) * high];
    return [
      `<rect x="${tenth(x)}" y="${y}" width="${tenth(wide)}" height="${high}" fill="none" stroke="${PAPER.ink.light}" stroke-width="0.15" stroke-dasharray="1 1"/>`,
      `<text x="${tenth(x + 3)}" y="${y + 6.5}" font-size="5" font-weight="600">${escapeXml(label)}</text>`,
      `<text x="${tenth(x + 3)}" y="${y + 11.5}" font-size="3.2">${escapeXml(note)}</text>`,
    ].join('\n');
  });
  return sawSheet(title, height, [...cells]);
}
