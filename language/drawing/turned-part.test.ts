import fc from 'fast-check';
import { OrthographicCamera, Vector3 } from 'three';
import { expect, it } from 'vitest';
import { IMPERIAL, inches, TICKS_PER_MM, toMm } from '../units/index.ts';
import { elevationOf } from './elevation.ts';
import { pieceAt } from './find-piece.ts';
import { FROM_FRONT, fromBehind, fromCut, type Projection } from './project.ts';
import { sectionOf } from './section.ts';
import { crossing, hatchLines } from './section-cut.ts';
import { boxPiece, runByHand } from './testing/run-by-hand.ts';
import { turnedPath } from './turned-part.ts';

const LENGTH = inches(120);
const run = runByHand({
  bays: [inches(60), inches(42)],
  widths: [inches(5.5)],
  gap: inches(0.5),
  onFace: true,
});

// three.js, a general 3-D library: an orthographic camera that stands where the viewer stands. Its x is right,
// its y up, both from -1 to 1 over a frame of known size; its depth grows away from the eye.
const HALF = 5000;
const views: readonly (readonly [string, Projection, eye: readonly [number, number, number], x0: number])[] =
  [
    ['the front', FROM_FRONT, [0, -HALF, 0], 0],
    ['behind', fromBehind(LENGTH), [0, HALF, 0], toMm(LENGTH)],
    ['a cut', fromCut(0), [HALF, 0, 0], 0],
  ];

it.each(views)('sees from %s what a camera of a general library sees', (_, projection, eye, x0) => {
  const camera = new OrthographicCamera(-HALF, HALF, HALF, -HALF, 0, 2 * HALF);
  camera.up.set(0, 0, 1);
  camera.position.set(...eye);
  camera.lookAt(0, 0, 0);
  camera.updateMatrixWorld();
  const coordinate = fc.integer({ min: -3000, max: 3000 });
  fc.assert(
    fc.property(coordinate, coordinate, coordinate, (x, y, z) => {
      const seen = new Vector3(x, y, z).project(camera);
      const at = { x: 0, y: 0, away: 0 };
      projection(x * TICKS_PER_MM, y * TICKS_PER_MM, z * TICKS_PER_MM, at);
      expect(at.x - x0).toBeCloseTo(seen.x * HALF, 3);
      expect(at.y).toBeCloseTo(-seen.y * HALF, 3);
      expect(at.away).toBeCloseTo(seen.z * HALF, 3);
    }),
  );
});

it('turns paths end for end, and back again', () => {
  const path = 'M10 5H30V8H10ZM1.5 2L3 4M8 5a2 2 0 1 0 4 0a2 2 0 1 0 -4 0ZM5 5A4 4 0 0 1 9 9';
  const turned = turnedPath(path, 40);
  expect(turned).toBe('M30 5H10V8H30ZM38.5 2L37 4M32 5a2 2 0 1 1 -4 0a2 2 0 1 1 4 0ZM35 5A4 4 0 0 0 31 9');
  expect(turnedPath(turned, 40)).toBe(path);
});

it('draws the run from behind with station 0 at the right, dimensions the same and still to be read', () => {
  const front = elevationOf(run, IMPERIAL);
  const back = elevationOf(run, IMPERIAL, undefined, 'back');
  const length = toMm(run.spec.length.value);
  for (const one of front.labels.filter(({ kind }) => kind === 'mark')) {
    expect(back.labels.find(({ key }) => key === one.key)?.x).toBeCloseTo(length - one.x, 1);
  }
  const texts = (labels: typeof front.labels) =>
    labels.filter(({ kind }) => kind === 'dimension').map(({ text }) => text);
  expect(texts(back.labels).sort()).toEqual(texts(front.labels).sort());
  // Slats lie on the front: from behind a post stands before them, from the front it does not.
  const [x, y] = [toMm(run.posts[1]?.from ?? 0) + 20, -toMm(inches(4))];
  expect(pieceAt(front, x, y)).toMatch(/c\d+$/);
  expect(pieceAt(back, length - x, y)).toBe('bank/p2');
});

it('cuts across a run: each slat shows its thickness and its width', () => {
  const section = sectionOf(run, IMPERIAL);
  const faces = section?.groups.filter(({ style }) => style === 'section').flatMap(({ hits }) => hits) ?? [];
  const slats = run.pieces.filter(({ role, bay }) => role === 'slat' && bay === 1);
  expect(faces.map(({ piece }) => piece).sort()).toEqual(slats.map(({ key }) => key).sort());
  // 3/4" by 5-1/2", in millimeters of 25.4 to the inch.
  for (const { box } of faces) expect([box[2], box[3]]).toEqual([19.05, 139.7]);
  // The pole is marked from the datum: the lowest edge stands 2" above it.
  const bottoms = section?.labels.filter(({ key }) => key.includes('/pole/bottom-')).map(({ text }) => text);
  expect(bottoms).toHaveLength(slats.length);
  expect(bottoms).toContain('2"');
  expect(section?.groups.flatMap(({ hits }) => hits.map(({ piece }) => piece))).toContain('bank/p1');
});

it('finds a cut face, and hatches it within its edges', () => {
  const { solid } = boxPiece('a', 'slat', [0, 10], [2, 5], [1, 9]);
  expect(
    crossing(solid, 4)
      .map(([x, y, z]) => `${x} ${y} ${z}`)
      .sort(),
  ).toEqual(['4 2 1', '4 2 9', '4 5 1', '4 5 9']);
  const lines = hatchLines({ x0: 0, y0: 0, x1: 20, y1: 10, near: 0, far: 0 }, 4);
  expect(lines.length).toBe(7);
  for (const [x0, y0, x1, y1] of lines) {
    // At 45 degrees, and each sum of x and y a whole step.
    expect(y0 - y1).toBeCloseTo(x1 - x0, 9);
    expect((x0 + y0) % 4).toBeCloseTo(0, 9);
    for (const x of [x0, x1]) expect(x >= 0 && x <= 20).toBe(true);
    for (const y of [y0, y1]) expect(y >= -1e-9 && y <= 10 + 1e-9).toBe(true);
  }
});
