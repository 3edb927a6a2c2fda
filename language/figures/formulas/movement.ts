import { LUMBER_SHRINKAGE } from '../../standards/index.ts';

/** Growth of a length between two temperatures; in the unit of the length. Negative when it shrinks. */
export function thermalMovement(length: number, expansion: number, from: number, to: number): number {
  return length * expansion * (to - from);
}

/** Growth of a width of wood between two moisture contents in percent (Wood Handbook Eq. 13-2). */
export function moistureMovement(width: number, coefficient: number, from: number, to: number): number {
  return width * coefficient * (to - from);
}

/** Percent by which lumber as sawn is narrower (or thinner) than green at a moisture content (FPL-RP-489). */
export function shrunkFromGreen(side: 'width' | 'thickness', moisture: number): number {
  const [a, b] = LUMBER_SHRINKAGE[side];
  return a - b * moisture;
}

/** A size of lumber as sawn at one moisture content, from its size at another. */
export function sizeAtMoisture(side: 'width' | 'thickness', size: number, from: number, to: number): number {
  return (size * (1 - shrunkFromGreen(side, to) / 100)) / (1 - shrunkFromGreen(side, from) / 100);
}
