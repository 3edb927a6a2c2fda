/** Rows of comma-separated values after RFC 4180, quotes and the apostrophe before what looks like a formula taken off. */
export function csvRows(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [[]];
  for (const [, quoted, bare = '', end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r?\n|$)/g)) {
    const cell = quoted === undefined ? bare : quoted.replaceAll('""', '"');
    rows.at(-1)?.push(cell.replace(/^'(?=[=+\-@\t])/, ''));
    if (end === '') break;
    if (end !== ',') rows.push([]);
  }
  return rows.filter((row) => row.some((cell) => cell !== ''));
}
