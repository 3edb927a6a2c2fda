/**
 * The text with control characters shown as escapes: a name in a file must not be able to move the
 * cursor of the terminal it is printed on, or color it.
 */
export function printable(text: string): string {
  return text.replace(CONTROLS, (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

// Control characters, and the separators that some terminals take for line ends.
const CONTROLS = /[\p{Cc}\u2028\u2029]/gu;
