/**
 * The picture in the page: svg.js elements patched by key, never set anew.
 *
 * Lives here: everything that knows svg.js. Does not live here: gestures, messages, HTML.
 */
export { Drawing } from './drawing.ts';
export { penRules } from './pen-rules.ts';
