/**
 * What stands around the drawing: buttons, the status line, notices, and the gestures that move the camera.
 *
 * Lives here: HTML and input. Does not live here: svg.js, messages.
 */
export { type Gestures, listenToGestures } from './gestures.ts';
export { makePage, type Page } from './page.ts';
