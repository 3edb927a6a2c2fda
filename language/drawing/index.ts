/**
 * Pieces to views: groups of paths with stable keys, dimension strings, labels, and one mapping to
 * SVG that serves both the text writer and the live picture.
 *
 * Lives here: what is drawn and where. Does not live here: calculation of pieces, the editor, the DOM.
 */
export type { Chain, ChainSide } from './chains.ts';
export { type Ticket, type TicketBoard, type TicketPart, ticketSheet } from './cut-ticket.ts';
export { applyDelta, diffViews } from './delta.ts';
export { elevationOf, runLetter } from './elevation.ts';
export { eyeViews, type Looks } from './eye-view.ts';
export { hitsOf, pieceAt } from './find-piece.ts';
export { hashText } from './hash.ts';
export { labelSheet } from './label-sheet.ts';
export { leafChains } from './leaf-chains.ts';
export { leafElevation, leafLetter } from './leaf-elevation.ts';
export { FONT_STACK } from './paper-theme.ts';
export { outlinePath, rectPath } from './path-text.ts';
export { type Fill, type Ink, PENS, type Pen } from './pens.ts';
export { type Bounds, boundsOf, placeLabels } from './place-labels.ts';
export { planLetter, planOf, plansOf } from './plan.ts';
export { dimensionChains } from './run-chains.ts';
export { sectionLetter, sectionOf } from './section.ts';
export { settingSheet } from './setting-sheet.ts';
export { arrangeSheet, type Sheet, type SheetPlace } from './sheet.ts';
export { groupElement, labelElements, type SvgElement } from './svg-mapping.ts';
export { alikeTapers, taperLine, taperOf } from './taper.ts';
export { textWidth } from './text-width.ts';
export type * from './view.ts';
export { asStale, VIEW_KINDS, viewsOf } from './views.ts';
export { escapeXml, writeSvg } from './write-svg.ts';
