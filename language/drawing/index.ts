/**
 * Pieces to views: groups of paths with stable keys, dimension strings, labels, and one mapping to
 * SVG that serves both the text writer and the live picture.
 *
 * Lives here: what is drawn and where. Does not live here: calculation of pieces, the editor, the DOM.
 */
export type * from './view.ts';
