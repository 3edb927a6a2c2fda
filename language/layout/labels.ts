import { twoDigits } from './names.ts';

// What is written on the end of a piece, short enough for a pencil and unique within its run:
//
//   P3       third post from station 0
//   B2-07    seventh slat of the second bay: from the top; upright, from the left
//   B2-B07   the same on the back, where both faces have slats (B2-BT for trim)
//   B2-T     trim board
//   B2-RT    rail at the top (RB at the bottom)
//   B2-SF1   first stiffener from the left, on the front (SB1 on the back)
//   B2-K     kick board
//   P3-NF    batten over the slats at it, on the front (NB on the back)
//   P3-CAP   its cap
//   P3-BL    collar at the bottom, on the left (TF at the top, in front)
//   B2-CLF   cleat at the left, on the front (CRB at the right, on the back; CT, CB at top and bottom)
//   P1-FL    filler between it and a wall at the left (FR at the right)
//   B2-UL    channel at the left (UR at the right, UT and UB at top and bottom)
//   B2-X3L   third spacer from the top at the left
//   P3-B     back half of a split post
//   B2-ZT    strip at the top that sets the posts, and comes off again (ZB at the bottom)
//   P3-ZL    brace along the run, to set it (ZA across the run), P3-ZLS its stake
//   R-07     seventh slat of the return that closes an offset (R-CLF and so on: its cleats; left is at the run before)
//   T-07     the same of a panel from one plane to the other
//   F-1      first board of a filler there
//   G1-..    the same for the leaf of the first gate from station 0, and
//   G1L-..   for the left leaf of a pair (G1R for the right one), and
//   G1-SH    stile at the hinges (SL at the latch)
//   G1-RM1   first middle rail from the top
//   G1-BR    brace (BR1 from the top where there are several; CA for a cable)

export function stiffenerLabel(panel: string, number: number, face: 'front' | 'back'): string {
  return `${panel}-S${initial(face)}${number}`;
}

export function kickLabel(panel: string): string {
  return `${panel}-K`;
}

export function battenLabel(post: string, face: 'front' | 'back'): string {
  return `${post}-N${initial(face)}`;
}

export function capLabel(post: string): string {
  return `${post}-CAP`;
}

export function collarLabel(
  post: string,
  end: 'bottom' | 'top',
  side: 'front' | 'back' | 'left' | 'right',
): string {
  return `${post}-${initial(end)}${initial(side)}`;
}

export function fillerLabel(post: string, side: 'start' | 'end'): string {
  return `${post}-F${side === 'start' ? 'L' : 'R'}`;
}

export function postLabel(number: number): string {
  return `P${number}`;
}

export function bayLabel(number: number): string {
  return `B${number}`;
}

/** Of what closes an offset. */
export function bridgeLabel(kind: 'return' | 'filler' | 'panel'): string {
  return { return: 'R', filler: 'F', panel: 'T' }[kind];
}

/** `side` of one leaf of a pair. */
export function gateLabel(number: number, side?: 'left' | 'right'): string {
  return `G${number}${side ? initial(side) : ''}`;
}

export function slatLabel(panel: string, course: number, behind = false): string {
  return `${panel}-${behind ? 'B' : ''}${twoDigits(course)}`;
}

export function trimLabel(panel: string, behind = false): string {
  return `${panel}-${behind ? 'B' : ''}T`;
}

export function railLabel(panel: string, end: 'top' | 'bottom' | `middle-${number}`): string {
  return `${panel}-R${initial(end)}${end.slice(7)}`;
}

export function cleatLabel(
  panel: string,
  end: 'left' | 'right' | 'top' | 'bottom',
  face: 'front' | 'back',
): string {
  return `${panel}-C${initial(end)}${initial(face)}`;
}

export function channelLabel(panel: string, end: 'left' | 'right' | 'top' | 'bottom'): string {
  return `${panel}-U${initial(end)}`;
}

export function spacerLabel(panel: string, end: 'left' | 'right' | 'top' | 'bottom', number: number): string {
  return `${panel}-X${number}${initial(end)}`;
}

/** Z for what comes off again. */
export function stripLabel(panel: string, end: 'top' | 'bottom'): string {
  return `${panel}-Z${initial(end)}`;
}

export function postBraceLabel(post: string, axis: 'along' | 'across'): string {
  return `${post}-Z${axis === 'along' ? 'L' : 'A'}`;
}

export function stakeLabel(post: string, axis: 'along' | 'across'): string {
  return `${postBraceLabel(post, axis)}S`;
}

/** Of the half of a split post that stands behind the slats. */
export function backHalfLabel(post: string): string {
  return `${post}-B`;
}

export function stileLabel(panel: string, end: 'hinge' | 'latch'): string {
  return `${panel}-S${initial(end)}`;
}

/** `number` where a leaf has more than one, from the top. */
export function braceLabel(panel: string, number?: number): string {
  return `${panel}-BR${number ?? ''}`;
}

export function cableLabel(panel: string, number?: number): string {
  return `${panel}-CA${number ?? ''}`;
}

const initial = (word: string): string => word.charAt(0).toUpperCase();
