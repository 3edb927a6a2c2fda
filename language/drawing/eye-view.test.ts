import * as THREE from 'three';
import { expect, it } from 'vitest';
import { openJobs } from '../../tests/jobs/index.ts';
import { areaOf, coveredArea, eyesOf, sceneOf, sightOf } from '../figures/index.ts';
import { eyeViews } from './eye-view.ts';

const TEXT = `
board plank { width 3-1/2"; thickness 3/4" }
post pole { along 3-1/2"; through 3-1/2" }
pattern even { repeat plank; gap 3/4"; end anywhere }
run bank { length 16'; posts pole, 3 bays; height 5'; bottom 2"; fill even; slats on front face }
viewer kitchen { at 9' along bank, 12' behind; eye 5' 4"; floor up 3' }
viewer path { at 4' along bank, 9' in front; eye 5' }
place seat { at 8' along bank, 6' in front; width 5'; from 1' to 4' }
place door { at 6' along bank, 10' behind; width 3'; from 1' to 6' }
`;

async function opened() {
  const { job, layout } = await openJobs({ '/bank.slat': TEXT }).open('/bank.slat');
  return { job, layout, views: eyeViews(layout.runs, job, job.measure.value) };
}

it('draws a place for each viewer who has a screen before it, and for no other', async () => {
  const { views } = await opened();
  expect(views.map(({ key }) => key)).toEqual(['%eye/kitchen/seat', '%eye/path/door']);
  expect(views[0]?.title).toMatch(/^seat as kitchen sees it: \d/);
});

it('leaves as much of the place uncovered as is seen', async () => {
  const { views, job, layout } = await opened();
  for (const [view, viewer, place] of [
    [views[0], job.viewers[0], job.places[0]],
    [views[1], job.viewers[1], job.places[1]],
  ] as const) {
    const scene = sceneOf(layout, ['bank']);
    if (!view || !viewer || !place || !scene || scene === 'apart') throw new Error('no view');
    const area = areaOf(scene, place);
    const [eye] = eyesOf(scene, viewer);
    if (!area || !eye) throw new Error('no sight');
    const drawn = view.groups.flatMap(({ hits }) =>
      hits.map(({ box: [x, y, w, h], outline }) => outline ?? [x, y, x + w, y, x + w, y + h, x, y + h]),
    );
    const path = view.groups.find(({ style }) => style === 'place')?.path ?? '';
    const [x0, y0, x1, y1] = (path.match(/-?[\d.]+/g) ?? []).map(Number) as [number, number, number, number];
    const covered = coveredArea([x0, y0, x1, y1], drawn) / ((x1 - x0) * (y1 - y0));
    // The sheet is rounded to a hundredth of a millimeter.
    expect(1 - covered).toBeCloseTo(sightOf(scene, area, eye).seen, 3);
  }
});

it("projects as three's perspective camera does", async () => {
  const { views, job, layout } = await opened();
  const scene = sceneOf(layout, ['bank']);
  const [viewer, place] = [job.viewers[0], job.places[0]];
  if (!scene || scene === 'apart' || !viewer || !place) throw new Error('no scene');
  const [eye] = eyesOf(scene, viewer);
  const run = layout.runs[0];
  if (!eye || !run) throw new Error('no eye');
  const camera = new THREE.PerspectiveCamera(90, 1, 1, 1e6);
  camera.up.set(0, 0, 1);
  camera.position.set(eye[0] / 8000, eye[1] / 8000, eye[2] / 8000);
  // Straight across the run, toward its front: from behind station 0 is at the right.
  camera.lookAt(eye[0] / 8000, eye[1] / 8000 - 1000, eye[2] / 8000);
  camera.updateMatrixWorld();
  const distance = (eye[1] - place.at.off) / 8000;
  const slat = run.pieces.find(({ key }) => key === 'bank/b2/c01');
  const hit = views[0]?.groups.flatMap(({ hits }) => hits).find(({ piece }) => piece === slat?.key);
  const corners = slat?.solid.vertices.map(([x, y, z]) => {
    const at = new THREE.Vector3(x / 8000, y / 8000, z / 8000).project(camera);
    // Half a picture of 90 degrees is as wide as it is far.
    return [at.x * distance, 0 - (eye[2] / 8000 + at.y * distance)] as const;
  });
  if (!hit || !corners) throw new Error('no slat');
  const [, y, width, height] = hit.box;
  const [xs, ys] = [corners.map(([at]) => at), corners.map(([, at]) => at)];
  expect(Math.max(...ys)).toBeCloseTo(y + height, 1);
  expect(Math.min(...ys)).toBeCloseTo(y, 1);
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(width, 1);
});
