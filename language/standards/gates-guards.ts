import { type PublishedValue, primary, secondary, valued } from './source.ts';

/** Past any of these a leaf takes a third hinge: inches high, inches wide, pounds. */
export const THIRD_HINGE: Readonly<Record<'height' | 'width' | 'weight', PublishedValue>> = {
  height: valued(60, 'in', secondary('common practice', 'gate hinges')),
  width: valued(36, 'in', secondary('common practice', 'gate hinges')),
  weight: valued(60, 'lb', secondary('common practice', 'gate hinges')),
};

/** Hinge lines from the top and from the bottom of a leaf, inches. */
export const HINGE_PLACES: Readonly<Record<'fromTop' | 'fromBottom', PublishedValue>> = {
  fromTop: valued(6, 'in', secondary('common practice', 'gate hinges')),
  fromBottom: valued(10, 'in', secondary('common practice', 'gate hinges')),
};

/** Clear width of a door or gate that stands open at a right angle, for a wheelchair, inches. */
export const ACCESSIBLE_CLEAR: PublishedValue = valued(
  32,
  'in',
  primary('ADA Standards', '404.2.3, which holds for gates too'),
);

/** Boards soaked weigh so many times what they do dry. */
export const SOAKED: PublishedValue = valued(
  1.5,
  '',
  secondary('common practice', 'wet wood, 1.5 to 2 times'),
);

/** At any point along the top of a guard. */
export const GUARD_LOAD: PublishedValue = valued(200, 'lb', primary('IRC', 'Table R301.5 note d'));
/** Its least height above the deck. */
export const GUARD_HEIGHT: PublishedValue = valued(36, 'in', primary('IRC', 'R312.1.2'));
/** Tests of guard posts on deck edges are to this many times the load. */
export const GUARD_TEST_FACTOR: PublishedValue = valued(
  2.5,
  '',
  secondary('ASTM D7032 and published tests of guard posts', 'proof load'),
);
/** Allowable tension of the hold-down of a guard post of 36". */
export const HOLD_DOWN: PublishedValue = valued(1_800, 'lb', secondary('AWC DCA 6', 'guard post hold-down'));
/** Bolts apart, and the middle of them below the deck surface, inches: an example where nothing is stated. */
export const DECK_BOLTS: Readonly<Record<'apart' | 'below', PublishedValue>> = {
  apart: valued(4, 'in', secondary('residential deck guides', 'guard post bolts, 2-1/2 to 5 in apart')),
  below: valued(5, 'in', secondary('residential deck guides', 'guard post bolts')),
};
