/**
 * Sizes of letters, in sheet millimeters. A step on a ladder is a quarter, so that an edit hardly ever
 * changes it, and where it does everything on the sheet is laid out anew at once.
 */
const STEP = 1.25;
const FIRST = 10;

/**
 * Share of the wider extent: with it, and the margins that dimensions take, a run of 24 feet fitted in
 * 600 pixels, half a window, has letters of 10 to 12.
 */
const SHARE = 0.023;

/** A sheet on paper is read closer: its letters are smaller. */
const PAPER = 0.5;

export type Reading = 'screen' | 'paper';

/** Size of letters for a picture of things `width` by `height` millimeters large. */
export function letterFor(width: number, height: number, reading: Reading = 'screen'): number {
  const extent = Math.max(width, 1.3 * height, 1);
  const wanted = extent * SHARE * (reading === 'paper' ? PAPER : 1);
  const steps = Math.round(Math.log(wanted / FIRST) / Math.log(STEP));
  return Math.round(FIRST * STEP ** Math.min(60, Math.max(-10, steps)) * 10) / 10;
}
