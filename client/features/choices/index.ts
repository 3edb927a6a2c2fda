/**
 * Choices for a run that nothing else beats, and what a pile still gives: asked for by command, lens or action.
 *
 * Lives here: asking, showing, inserting what is chosen. Does not live here: the search, and its words (server).
 */
export { activateChoices } from './activate.ts';
