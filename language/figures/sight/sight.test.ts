import * as THREE from 'three';
import { expect, it } from 'vitest';
import { openJobs } from '../../../tests/jobs/index.ts';
import { openShareAtAngle } from '../openness.ts';
import { areaOf, eyesOf, type PlaceArea, type Scene, sceneOf } from './scene.ts';
import { sightOf } from './sight.ts';
import { worstSight } from './worst-sight.ts';

const YARD = `
board plank { width 3-1/2"; thickness 3/4" }
post pole { along 3-1/2"; through 3-1/2" }
rail beam { width 3-1/2"; thickness 1-1/2" }
pattern even(space = 1/2") { repeat plank; gap space; end anywhere }
`;

async function sceneFor(text: string) {
  const { job, layout } = await openJobs({ '/bank.slat': YARD + text }).open('/bank.slat');
  const { viewers, places } = job;
  const [viewer, place] = [viewers[0], places[0]];
  if (!viewer || !place) throw new Error('the text names a viewer and a place');
  const scene = sceneOf(layout, [viewer.at.run, place.at.run]);
  if (scene === undefined || scene === 'apart') throw new Error('no scene');
  const area = areaOf(scene, place);
  if (!area) throw new Error('no area');
  return { scene, area, eyes: eyesOf(scene, viewer) };
}

/** Share of a place that is seen, by rays through the middles of a fine grid, with three's mesh ray casting. */
function seenByRays(
  { runs }: Scene,
  { plane, window }: PlaceArea,
  eye: readonly number[],
  across: number,
): number {
  const SCALE = 1 / 8000;
  const meshes = runs.flatMap(({ solids }) =>
    solids.map(({ vertices }) => {
      const geometry = new THREE.BufferGeometry();
      geometry.setAttribute(
        'position',
        new THREE.Float32BufferAttribute(
          vertices.flatMap(([x, y, z]) => [x * SCALE, y * SCALE, z * SCALE]),
          3,
        ),
      );
      geometry.setIndex(
        [
          [0, 1, 2, 3],
          [4, 7, 6, 5],
          [0, 4, 5, 1],
          [1, 5, 6, 2],
          [2, 6, 7, 3],
          [3, 7, 4, 0],
        ].flatMap(([a = 0, b = 0, c = 0, d = 0]) => [a, b, c, a, c, d]),
      );
      return new THREE.Mesh(geometry, new THREE.MeshBasicMaterial({ side: THREE.DoubleSide }));
    }),
  );
  for (const mesh of meshes) mesh.updateMatrixWorld();
  const from = new THREE.Vector3(...eye.map((value) => value * SCALE));
  const caster = new THREE.Raycaster();
  const [x0, z0, x1, z1] = window;
  let seen = 0;
  let rays = 0;
  // Not a square grid: its rows would beat with the slats.
  const up = across * 3 + 1;
  for (let i = 0; i < across; i++) {
    for (let j = 0; j < up; j++) {
      const x = x0 + ((i + 0.5) / across) * (x1 - x0);
      const z = z0 + ((j + 0.5) / up) * (z1 - z0);
      const target = new THREE.Vector3(
        (plane.origin[0] + x * plane.along[0]) * SCALE,
        (plane.origin[1] + x * plane.along[1]) * SCALE,
        z * SCALE,
      );
      caster.set(from, target.clone().sub(from).normalize());
      caster.far = target.distanceTo(from);
      rays++;
      if (caster.intersectObjects(meshes, false).length === 0) seen++;
    }
  }
  return seen / rays;
}

const LEVEL = `run bank { length 16'; posts pole, 2 bays; height 5'; bottom 2"; fill even; slats on front face }`;
const UPRIGHT = `run bank { length 16'; posts pole, 2 bays; height 5'; bottom 2"; fill even; flip upright; rails beam; slats on front face }`;
const BOTH = `run bank { length 16'; posts pole, 2 bays; height 5'; bottom 2"; fill even(space = 2"); slats on alternate faces }`;
const CORNER = `${LEVEL}
run foot { after bank, turns left; length 10'; posts pole, 2 bays; height 4'; bottom 2"; fill even; slats on front face }`;

it.each([
  ['level slats, from above', LEVEL, `at 9' along bank, 12' behind; eye 9'`],
  ['level slats, from the side', LEVEL, `at 1' along bank, 5' behind; eye 5' 4"`],
  ['upright slats, from the side', UPRIGHT, `at 1' along bank, 5' behind; eye 5' 4"`],
  ['slats by turns on both faces', BOTH, `at 6' along bank, 7' behind; eye 5' 4"`],
  ['two runs round a corner', CORNER, `at 20' along bank, 6' behind; eye 5' 4"`],
])('sees as much as rays do: %s', { timeout: 60_000 }, async (_, runs, viewer) => {
  const { scene, area, eyes } = await sceneFor(
    `${runs}\nviewer window { ${viewer} }\nplace seat { at 8' along bank, 9' in front; width 6'; from 6" to 5' 6" }`,
  );
  const eye = eyes[0] ?? [0, 0, 0];
  const sight = sightOf(scene, area, eye);
  // 60 by 181 rays, each hit or missed: an edge may fall either way in one row or column of the grid in thirty.
  expect(Math.abs(sight.seen - seenByRays(scene, area, eye, 60))).toBeLessThan(0.01);
  expect(sight.seen).toBeGreaterThan(0.005);
  const { gates, through, over, under, past } = sight.ways;
  expect(gates + through + over + under + past).toBeCloseTo(sight.seen, 9);
});

/**
 * The closed form for level slats: at an angle a off square, of a gap g between slats of thickness t there is left
 * max(0, g - t tan a), over a pitch of w + g (parallel light; so the eye stands far off and the place is small).
 */
it('comes to the closed form for a far eye', async () => {
  for (const [rise, tolerance] of [
    [0, 0.002],
    [100, 0.003],
    [250, 0.003],
  ] as const) {
    const { scene, area, eyes } = await sceneFor(
      `${LEVEL}\nviewer hill { at 6' along bank, 1000' behind; eye ${32 + rise * 12}" }
       place wall { at 6' along bank, 3" in front; width 2'; from 1' 4-11/16" to 3' 8-11/16" }`,
    );
    const sight = sightOf(scene, area, eyes[0] ?? [0, 0, 0]);
    const angle = (Math.atan2(rise, 1000) * 180) / Math.PI;
    const gap = scene.runs[0]?.run.openings.find(({ between }) => between);
    const g = (gap?.z1 ?? 0) - (gap?.z0 ?? 0);
    // Seven whole pitches of 4 in, so that the share is that of one.
    expect(g).toBe(203200 / 2);
    expect(Math.abs(sight.seen - openShareAtAngle(g, 203200 * 3.5, 203200 * 0.75, angle))).toBeLessThan(
      tolerance,
    );
  }
});

it('tells ways apart: over a low screen, past its end, under it', async () => {
  const low = `run bank { length 16'; posts pole, 2 bays; height 3'; bottom 1'; fill even(space = 0"); slats on front face }`;
  const from = async (viewer: string, place: string) => {
    const { scene, area, eyes } = await sceneFor(
      `${low}\nviewer window { ${viewer} }\nplace seat { ${place} }`,
    );
    return sightOf(scene, area, eyes[0] ?? [0, 0, 0]).ways;
  };
  // By similar triangles: from 60 in up and 120 in off, past the far top edge of the slats, 2-1/2 in beyond and
  // 36 in up, a place 120 in beyond is seen from 60 - 240 * 24 / 122.5 = 12.98 in up.
  const over = await from(
    `at 5' along bank, 10' behind; eye 5'`,
    `at 5' along bank, 10' in front; width 1'; from 0" to 2'`,
  );
  expect(over.over).toBeCloseTo(1 - (60 - (240 * 24) / 122.5) / 24, 6);
  expect(over.past).toBe(0);
  // From 144 in along, past the near edge of the end post, 192 in along and 118-1/4 in off, to 240 in off.
  const past = await from(
    `at 12' along bank, 10' behind; eye 2'`,
    `at 20' along bank, 10' in front; width 4'; from 2' to 2' 1"`,
  );
  expect(past.past).toBeCloseTo(1 - (144 + (48 * 240) / 118.25 - 216) / 48, 6);
  const under = await from(
    `at 5' along bank, 1' behind; eye 6"`,
    `at 5' along bank, 1' in front; width 1'; from 1" to 6"`,
  );
  expect(under.under).toBeCloseTo(1, 6);
});

it('finds the worst spot of a stretch', async () => {
  const { scene, area, eyes } = await sceneFor(
    `${LEVEL}\nviewer path { at 2' along bank, 10' behind; to 26' along bank, 10' behind; eye 5' 4" }
     place seat { at 8' along bank, 8' in front; width 4'; from 1' to 4' }`,
  );
  const worst = worstSight(scene, area, eyes);
  const [from, to] = eyes;
  if (!worst || !from || !to) throw new Error('no sight');
  for (let i = 0; i <= 40; i++) {
    const t = i / 40;
    const eye = from.map((value, axis) => value + t * ((to[axis] ?? 0) - value)) as [number, number, number];
    expect(sightOf(scene, area, eye).seen).toBeLessThanOrEqual(worst.seen + 0.01);
  }
});

it('says when two runs stand no one knows where', async () => {
  const { layout } = await openJobs({
    '/bank.slat': `${YARD}${LEVEL}
run far { length 16'; posts pole, 2 bays; height 3'; bottom 1'; fill even; slats on front face }`,
  }).open('/bank.slat');
  expect(sceneOf(layout, ['bank', 'far'])).toBe('apart');
  expect(sceneOf(layout, ['bank'])).not.toBe('apart');
});
