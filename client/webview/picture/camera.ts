import type { Box } from '../../../language/drawing/index.ts';
import type { Camera } from '../../preview-protocol.ts';

/** Size of the window the picture is seen in, in CSS pixels. */
export interface Pane {
  readonly width: number;
  readonly height: number;
}

/** Pixels kept free around a fitted picture; more at the foot, where the buttons stand. */
const MARGIN = 20;
const FOOT = 44;
/** How far one may zoom from the fitted picture, out and in. */
const FARTHEST = 0.25;
const NEAREST = 60;

/** The whole of `box` in the middle of the pane, as large as it goes. Undefined while either has no size. */
export function fitted(box: Box, pane: Pane): Camera | undefined {
  const [x, y, width, height] = box;
  const wide = pane.width - 2 * MARGIN;
  const high = pane.height - MARGIN - FOOT;
  if (!(width > 0 && height > 0 && wide > 0 && high > 0)) return undefined;
  const scale = Math.min(wide / width, high / height);
  return {
    x: MARGIN + (wide - width * scale) / 2 - x * scale,
    y: MARGIN + (high - height * scale) / 2 - y * scale,
    scale,
  };
}

/** Letters smaller than this on the screen are a strain to read. */
const READABLE = 9;

/**
 * What a picture is first seen by: the whole of it where its letters can be read then, else from its top
 * as wide as the pane, the rest below.
 */
export function firstLook(box: Box, pane: Pane, letter: number): Camera | undefined {
  const whole = fitted(box, pane);
  if (!whole || whole.scale * letter >= READABLE) return whole;
  const [x, y, width] = box;
  const scale = Math.max(whole.scale, Math.min((pane.width - 2 * MARGIN) / width, LARGEST / letter));
  return { x: MARGIN - x * scale, y: MARGIN - y * scale, scale };
}

/** Larger or smaller by `factor`, the point under (px, py) staying where it is. */
export function zoomed(
  camera: Camera,
  factor: number,
  [px, py]: readonly [number, number],
  box: Box,
  pane: Pane,
): Camera {
  const whole = fitted(box, pane)?.scale ?? camera.scale;
  const wanted = camera.scale * factor;
  const low = Math.min(whole * FARTHEST, camera.scale);
  const high = Math.max(whole * NEAREST, camera.scale);
  const scale = Math.min(high, Math.max(low, wanted));
  const by = scale / camera.scale;
  return inReach({ x: px - (px - camera.x) * by, y: py - (py - camera.y) * by, scale }, box, pane);
}

/** Moved by pixels. */
export function panned(camera: Camera, dx: number, dy: number, box: Box, pane: Pane): Camera {
  return inReach({ ...camera, x: camera.x + dx, y: camera.y + dy }, box, pane);
}

/** A picture cannot be lost: some of it stays inside the pane. */
function inReach(camera: Camera, box: Box, pane: Pane): Camera {
  const [x, y, width, height] = box;
  return {
    x: within(camera.x, x * camera.scale, width * camera.scale, pane.width),
    y: within(camera.y, y * camera.scale, height * camera.scale, pane.height),
    scale: camera.scale,
  };
}

function within(offset: number, start: number, size: number, pane: number): number {
  const keep = Math.min(60, size / 2, pane / 2);
  return Math.min(pane - keep - start, Math.max(keep - size - start, offset));
}

/** The sheet point seen at a point of the pane. */
export function toSheet(camera: Camera, px: number, py: number): [number, number] {
  return [(px - camera.x) / camera.scale, (py - camera.y) / camera.scale];
}

/** Whether something kept from before can be looked through. */
export function isCamera(value: unknown): value is Camera {
  const { x, y, scale } = (value ?? {}) as Partial<Camera>;
  return Number.isFinite(x) && Number.isFinite(y) && Number.isFinite(scale) && (scale as number) > 0;
}

/** Letters are this many pixels high at most: a picture seen from near has room for more of them. */
const LARGEST = 12;

/** Size of letters in sheet millimeters: as laid out, or smaller when seen from near. */
export function letterAt(camera: Camera, laidOut: number): number {
  return Math.min(laidOut, LARGEST / camera.scale);
}
