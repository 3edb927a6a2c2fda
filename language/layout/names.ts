import type { GateSpec } from '../model/index.ts';

// Keys are paths of names, so that nothing above a piece in the text can change what it is called.

const LIKE_A_PART = /^(?:gate-)*(?:[pb]\d+|return|filler|panel)$/;

/** A name as one step of a key. */
function step(name: string): string {
  return name.replace(/[%/]/g, (mark) => (mark === '%' ? '%25' : '%2F'));
}

/** Of a run. */
export function runKey(name: string): string {
  return step(name);
}

/** Of a post or a bay, numbered from station 0. */
export function postKey(run: string, number: number): string {
  return `${runKey(run)}/p${number}`;
}

export function bayKey(run: string, number: number): string {
  return `${runKey(run)}/b${number}`;
}

/** Of what closes the offset from the run it comes after. */
export function bridgeKey(run: string, kind: 'return' | 'filler' | 'panel'): string {
  return `${runKey(run)}/${kind}`;
}

/** Of a gate's leaf, or of one leaf of a pair. A gate that is called like a post, a bay or a bridge is told apart from it. */
export function gateKey(run: string, { name, half }: Pick<GateSpec, 'name' | 'half'>): string {
  const gate = half?.of ?? name;
  const own = LIKE_A_PART.test(gate) ? `gate-${gate}` : step(gate);
  return `${runKey(run)}/${own}${half ? `/${half.side}` : ''}`;
}

/** Of a slat in a bay or a leaf; `behind` when it is of the back of two faces that both have slats. */
export function courseKey(panel: string, course: number, behind = false): string {
  return `${panel}/${behind ? 'back-' : ''}c${twoDigits(course)}`;
}

/** At least two digits, so that names sort as they are read. */
export function twoDigits(number: number): string {
  return String(number).padStart(2, '0');
}
