/**
 * Whole jobs of which every figure is worked out by hand beside its check, from sums and plane trigonometry: the text
 * beside each test, and nothing of the program in the arithmetic.
 */

export { gapsOf, type InUnit, inUnit } from './in-unit.ts';
export { openByHand } from './open-by-hand.ts';
export { closedOf, spansOf } from './spans-of.ts';
