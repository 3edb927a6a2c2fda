import type { BaseParser } from 'langium';

/** What of a parser an error is raised with; the library keeps it to itself. */
interface Raiser {
  raiseNoAltException(): never;
  raiseEarlyExitException(): never;
  LA(ahead: number): object;
  /** Notes where the parser stands, and answers the error to throw. */
  SAVE_ERROR(error: Error): Error;
}

/** Stands in for the parser's own messages, which nobody is shown: explain-errors.ts says what to write instead. */
export const BRIEF_MESSAGE = 'Nothing the grammar knows.';

/**
 * Lets a parser raise an error without listing all that could have stood there instead, three tokens deep. In a
 * grammar of this many statements that list took longer than all else of a half-typed text: 10 ms and more for
 * each error, with every key. What is read and recovered stays the same.
 */
export function raiseBriefly(parser: BaseParser): void {
  const { wrapper } = parser as unknown as { wrapper: Raiser };
  const raise = (name: string): never => {
    const found = { token: wrapper.LA(1), previousToken: wrapper.LA(0), resyncedTokens: [] };
    // The library knows its errors by their names, not by their class.
    throw wrapper.SAVE_ERROR(Object.assign(new Error(BRIEF_MESSAGE), { name, ...found }));
  };
  wrapper.raiseNoAltException = () => raise('NoViableAltException');
  wrapper.raiseEarlyExitException = () => raise('EarlyExitException');
}
