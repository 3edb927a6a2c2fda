/**
 * Figures on what is laid out: shares, angles, spans.
 *
 * Lives here: calculations whose working can be shown. Does not live here: judgment on a figure
 * (checks/), the geometry of pieces (layout/).
 */
export { clearSpan } from './clear-span.ts';
export { cutOffAngle, openShare, openShareAtAngle } from './openness.ts';
export { seeThrough } from './see-through.ts';
