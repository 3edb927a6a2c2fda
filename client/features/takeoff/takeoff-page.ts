import type { TakeoffFiles } from '../../../server/protocol.ts';

/** The order as a table and every sheet as a picture, as Markdown. Nothing of it is markup but what is written here. */
export function takeoffPage(file: string, { order, sheets, notes }: TakeoffFiles): string {
  const [heads = [], ...rows] = order;
  const line = (cells: readonly string[]) => `| ${cells.map(inert).join(' | ')} |`;
  return [
    `# Takeoff of ${inert(file)}`,
    'Check each board before you cut it.',
    ...(notes.length > 0 ? [notes.map((note) => `- ${inert(note)}`).join('\n')] : []),
    '## Order',
    [line(heads), `|${heads.map(() => ' --- |').join('')}`, ...rows.map(line)].join('\n'),
    '## Sheets',
    ...sheets.map(
      ({ name, text }) =>
        `### ${inert(name)}\n\n![${inert(name)}](data:image/svg+xml;base64,${Buffer.from(text).toString('base64')})`,
    ),
    '',
  ].join('\n\n');
}

/** Text that Markdown shows as it is. */
function inert(text: string): string {
  return text
    .replaceAll(/[\\`*_{}[\]()#+\-.!|<>&~"]/g, (mark) => `&#${mark.charCodeAt(0)};`)
    .replaceAll(/[\r\n]+/g, ' ');
}
