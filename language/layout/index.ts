/**
 * Job to Layout: every physical piece of a run with what the saw needs and its solid in space, and
 * the posts, bays, courses, openings and fits they follow from.
 *
 * Lives here: geometry of pieces. Does not live here: judgment (checks/), pictures (drawing/).
 */
export type * from './layout.ts';
export type * from './piece.ts';
