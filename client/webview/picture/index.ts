/**
 * What the page knows of the picture: its state, where it is looked at from, what pieces are called.
 *
 * Lives here: plain data and pure functions. Does not live here: the DOM, messages.
 */
export * from './camera.ts';
export { type Picked, pickAt } from './pick.ts';
export { NO_PICTURE, type PictureState, receive } from './picture-state.ts';
export { pieceName } from './piece-name.ts';
