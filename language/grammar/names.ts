/** Opening quotes and what closes them. */
const CLOSING: Readonly<Record<string, string>> = { '"': '"', '\u201C': '\u201D' };

/** Whether the text of a STRING token ends in its closing quote. */
export function isClosed(image: string): boolean {
  return image.length > 1 && image.endsWith(CLOSING[image.charAt(0)] ?? image.charAt(0));
}

/** The text between quotes; a missing closing quote is forgiven, a text without quotes is itself. */
export function unquote(image: string): string {
  const closing = CLOSING[image.charAt(0)];
  if (closing === undefined) return image;
  return image.slice(1, isClosed(image) ? -1 : undefined);
}

/** A name as it may be written in a file: bare if it can stand so, else in quotes. */
export function writtenName(name: string, reserved: ReadonlySet<string>): string {
  const bare =
    /^[A-Za-z_\u00AA-\u00FF\u0100-\u1FFF\u3040-\uD7FF][\w\-\u00AA-\u00FF\u0100-\u1FFF\u3040-\uD7FF]*$/;
  return bare.test(name) && !reserved.has(name) ? name : quoted(name);
}

/** A name in quotes: straight ones, or curly ones when it holds a straight one itself. */
export function quoted(name: string): string {
  const clean = name.replace(/[\r\n]/g, ' ');
  return clean.includes('"') ? `\u201C${clean.replace(/\u201D/g, '"')}\u201D` : `"${clean}"`;
}
