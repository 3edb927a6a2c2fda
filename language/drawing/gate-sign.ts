import type { Leaf } from '../layout/index.ts';
import { toMm } from '../units/index.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import { linePath } from './path-text.ts';
import type { Group } from './view.ts';

/** The sign for a swinging leaf: from both corners at the latch to the middle of the hinge side. */
export function gateSign(prefix: string, leaf: Leaf): Group {
  const [left, right] = [toMm(leaf.x0), toMm(leaf.x1)];
  const [top, low] = [-toMm(leaf.z1), -toMm(leaf.z0)];
  const [hinge, latch] = leaf.spec.hinges.value === 'left' ? [left, right] : [right, left];
  const middle = (top + low) / 2;
  const path = linePath(latch, top, hinge, middle) + linePath(latch, low, hinge, middle);
  return lineGroup(`${prefix}/swing-${leaf.gate}`, 'swing', path, BEFORE_ALL + 1);
}
