/**
 * Comma-separated values after RFC 4180: quoted where needed, quotes doubled, lines ended by CR LF. What a
 * spreadsheet would take for a formula gets an apostrophe, which spreadsheets read as "text follows".
 */
export function asCsv(rows: readonly (readonly string[])[]): string {
  const inert = (text: string) => (/^[=+\-@\t]/.test(text) ? `'${text}` : text);
  const quoted = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  const cell = (text: string) => quoted(inert(text));
  return rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}
