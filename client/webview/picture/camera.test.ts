import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Box } from '../../../language/drawing/index.ts';
import { firstLook, fitted, isCamera, letterAt, panned, toSheet, zoomed } from './camera.ts';

const box: Box = [-100, -50, 2000, 1000];
const pane = { width: 800, height: 600 };

it('fits all of the sheet into the pane', () => {
  const camera = fitted(box, pane);
  expect(camera).toBeDefined();
  if (!camera) return;
  const left = -100 * camera.scale + camera.x;
  const top = -50 * camera.scale + camera.y;
  expect(left).toBeGreaterThanOrEqual(0);
  expect(top).toBeGreaterThanOrEqual(0);
  expect(left + 2000 * camera.scale).toBeLessThanOrEqual(pane.width);
  expect(top + 1000 * camera.scale).toBeLessThanOrEqual(pane.height);
});

it('fits nothing while there is nothing, or no room', () => {
  expect(fitted([0, 0, 0, 0], pane)).toBeUndefined();
  expect(fitted(box, { width: 0, height: 0 })).toBeUndefined();
});

it('zooms about the point under the pointer', () => {
  const camera = fitted(box, pane);
  if (!camera) throw new Error('does not fit');
  const at = toSheet(camera, 300, 200);
  const [x, y] = toSheet(zoomed(camera, 1.7, [300, 200], box, pane), 300, 200);
  expect(x).toBeCloseTo(at[0], 6);
  expect(y).toBeCloseTo(at[1], 6);
});

it('never loses the picture and never stops being a camera, whatever is done to it', () => {
  const step = fc.record({
    factor: fc.double({ min: 0.01, max: 100, noNaN: true }),
    x: fc.integer({ min: -2000, max: 2000 }),
    y: fc.integer({ min: -2000, max: 2000 }),
  });
  fc.assert(
    fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
      let camera = fitted(box, pane) ?? { x: 0, y: 0, scale: 1 };
      for (const { factor, x, y } of steps) {
        camera = panned(zoomed(camera, factor, [x, y], box, pane), x, y, box, pane);
        expect(isCamera(camera)).toBe(true);
        const left = box[0] * camera.scale + camera.x;
        const top = box[1] * camera.scale + camera.y;
        expect(left).toBeLessThan(pane.width);
        expect(top).toBeLessThan(pane.height);
        expect(left + box[2] * camera.scale).toBeGreaterThan(0);
        expect(top + box[3] * camera.scale).toBeGreaterThan(0);
      }
    }),
  );
});

it('takes only a camera for one', () => {
  for (const value of [undefined, null, {}, { x: 0, y: 0, scale: 0 }, { x: Number.NaN, y: 0, scale: 1 }]) {
    expect(isCamera(value)).toBe(false);
  }
});

it('keeps letters as laid out from afar, and of one size on the screen from near', () => {
  expect(letterAt({ x: 0, y: 0, scale: 0.05 }, 140)).toBe(140);
  expect(letterAt({ x: 0, y: 0, scale: 1 }, 140)).toBe(letterAt({ x: 0, y: 0, scale: 2 }, 140) * 2);
});

it('first shows the whole where its letters can be read, else the top of it as wide as the pane', () => {
  const tall: Box = [0, 0, 1000, 4000];
  const small = { width: 500, height: 600 };
  expect(firstLook(tall, small, 100)).toEqual(fitted(tall, small));
  const near = firstLook(tall, small, 20);
  expect(near?.scale).toBeCloseTo((500 - 40) / 1000, 9);
  expect([near?.x, near?.y]).toEqual([20, 20]);
});
