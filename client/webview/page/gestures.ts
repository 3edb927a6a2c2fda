import type { Shown } from '../../preview-protocol.ts';
import { keyGesture } from './keys.ts';

/** What gestures ask for. Points are in pixels of the pane. */
export interface Gestures {
  zoom(factor: number, x: number, y: number): void;
  /** About the middle of the pane. */
  zoomMiddle(factor: number): void;
  pan(dx: number, dy: number): void;
  fit(): void;
  click(x: number, y: number): void;
  /** The pointer moved over the pane without a button, or left it. */
  hover(x: number | undefined, y: number): void;
  show(shown: Shown): void;
  /** Lights out. */
  clear(): void;
}

/** Pixels a pointer may wander and still have clicked. */
const STILL = 4;

/** Wheel, drag, pinch, double-click and keys on the drawing. */
export function listenToGestures(target: SVGElement, gestures: Gestures): void {
  listenToWheel(target, gestures);
  listenToPointers(target, gestures);
  target.addEventListener('dblclick', () => gestures.fit());
  target.addEventListener('keydown', (event) => {
    const gesture = keyGesture(event);
    if (!gesture) return;
    // Handled here: the editor around the page must not act on the same key.
    event.preventDefault();
    event.stopPropagation();
    if (gesture.kind === 'zoom') gestures.zoomMiddle(gesture.factor);
    else if (gesture.kind === 'pan') gestures.pan(gesture.dx, gesture.dy);
    else if (gesture.kind === 'show') gestures.show(gesture.show);
    else gestures[gesture.kind]();
  });
}

function listenToWheel(target: SVGElement, gestures: Gestures): void {
  target.addEventListener(
    'wheel',
    (event) => {
      event.preventDefault();
      const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 18 : event.deltaMode === 0 ? 1 : 300;
      if (event.shiftKey) {
        gestures.pan(-(event.deltaX || event.deltaY) * unit, 0);
        return;
      }
      // A pinch on a touchpad comes as a wheel with Control held, in small steps.
      const speed = event.ctrlKey && Math.abs(event.deltaY) < 50 ? 0.01 : 0.0018;
      const step = Math.max(-240, Math.min(240, event.deltaY * unit));
      const { x, y } = pointOf(target, event);
      gestures.zoom(Math.exp(-step * speed), x, y);
    },
    { passive: false },
  );
}

function listenToPointers(target: SVGElement, gestures: Gestures): void {
  const down = new Map<number, { x: number; y: number }>();
  let moved = 0;
  target.addEventListener('pointerdown', (event) => {
    if (event.button !== 0) return;
    if (down.size === 0) moved = 0;
    down.set(event.pointerId, pointOf(target, event));
    target.setPointerCapture(event.pointerId);
  });
  target.addEventListener('pointermove', (event) => {
    const now = pointOf(target, event);
    const before = down.get(event.pointerId);
    if (!before) {
      gestures.hover(now.x, now.y);
      return;
    }
    const others = [...down].filter(([id]) => id !== event.pointerId).map(([, point]) => point);
    const [other] = others;
    const travel = Math.hypot(now.x - before.x, now.y - before.y);
    // A hand that means to click trembles a little: nothing moves until it surely drags.
    if (moved + travel < STILL && !other) return;
    moved += travel;
    down.set(event.pointerId, now);
    target.classList.add('dragging');
    gestures.hover(undefined, 0);
    if (other) pinch(gestures, other, before, now);
    else gestures.pan(now.x - before.x, now.y - before.y);
  });
  const up = (event: PointerEvent): void => {
    if (!down.delete(event.pointerId) || down.size > 0) return;
    target.classList.remove('dragging');
    const { x, y } = pointOf(target, event);
    if (event.type === 'pointerup' && moved < STILL) gestures.click(x, y);
  };
  target.addEventListener('pointerup', up);
  target.addEventListener('pointercancel', up);
  target.addEventListener('pointerleave', () => gestures.hover(undefined, 0));
}

type Point = { readonly x: number; readonly y: number };

function pinch(gestures: Gestures, still: Point, before: Point, now: Point): void {
  const from = Math.hypot(before.x - still.x, before.y - still.y);
  const to = Math.hypot(now.x - still.x, now.y - still.y);
  if (from > 0 && to > 0) gestures.zoom(to / from, still.x, still.y);
}

function pointOf(target: SVGElement, event: MouseEvent): Point {
  const { left, top } = target.getBoundingClientRect();
  return { x: event.clientX - left, y: event.clientY - top };
}
