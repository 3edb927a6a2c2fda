/** A finding as a faulty job announces it, in a comment at the end of its line. */
export interface Expected {
  /** Counted from 1. */
  readonly line: number;
  readonly severity: string;
  readonly code: string;
  /** The text underlined; undefined where that does not matter. */
  readonly at?: string;
}

const ONE = /^(error|warning|information) ([a-z-]+)(?: at `([^`]+)`)?$/;

/**
 * Reads `// expect: error unit-missing at `7`, warning too-open` at the ends of lines. A line that says
 * "expect" and is not written so is refused, lest it should expect nothing.
 */
export function readExpectations(text: string): readonly Expected[] {
  return text.split('\n').flatMap((line, index) => {
    const told = /\/\/\s*expect\b:?(.*)$/i.exec(line)?.[1];
    if (told === undefined) return [];
    return told.split(/,\s*(?=(?:error|warning|information)\b)/).map((one): Expected => {
      const [, severity, code, at] = ONE.exec(one.trim()) ?? [];
      if (!severity || !code)
        throw new Error(`line ${index + 1} expects what cannot be read: ${told.trim()}`);
      return { line: index + 1, severity, code, ...(at === undefined ? {} : { at }) };
    });
  });
}
