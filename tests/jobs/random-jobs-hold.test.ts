import { expect, it } from 'vitest';
import { findOverlaps, findUnsupported, isInBay, type RunLayout } from '../../language/layout/index.ts';
import { randomJob } from '../fit-edits/random-jobs.ts';
import { openJobs } from './index.ts';

const JOBS = 200;

it('lays out jobs made at random so that parts add up, hold, and keep out of one another', async () => {
  const { open } = openJobs({});
  let sound = 0;
  for (let seed = 1_001; seed <= 1_000 + JOBS; seed++) {
    const { text } = randomJob(seed);
    const { layout, findings } = await open('/made/side.slat', text);
    expect(layout.runs, text).toHaveLength(1);
    const [run] = layout.runs;
    if (!run?.sound) {
      // What is not laid out is told of.
      expect(
        findings.some(({ severity }) => severity === 'error'),
        text,
      ).toBe(true);
      continue;
    }
    sound++;
    expect(findOverlaps(run), text).toEqual([]);
    expect(findUnsupported(run), text).toEqual([]);
    const [posts, clear] = [run.posts.map(({ from, to }) => to - from), run.bays.map((bay) => bay.clear)];
    expect(
      [...posts, ...clear].reduce((sum, part) => sum + part, 0),
      text,
    ).toBe(run.spec.length.value);
    for (const bay of run.bays.filter(({ gate }) => gate === undefined))
      expect(filledOf(run, bay.number), text).toBe(
        run.spec.infill.flip.upright ? bay.clear : run.top - run.bottom,
      );
    expect(new Set(run.pieces.map(({ key }) => key)).size, text).toBe(run.pieces.length);
    expect(new Set(run.pieces.map(({ label }) => label)).size, text).toBe(run.pieces.length);
  }
  expect(sound).toBeGreaterThan(JOBS / 2);
}, 120_000);

/** Slats, trim and openings of a bay in the direction its pattern reads. */
function filledOf({ pieces, openings, spec }: RunLayout, number: number): number {
  const axis = spec.infill.flip.upright ? 0 : 2;
  const infill = pieces.filter(
    (piece) =>
      (piece.role === 'slat' || piece.role === 'trim') && isInBay(piece, number) && piece.gate === undefined,
  );
  const sizes = infill.map(({ solid }) => {
    const along = solid.vertices.map((vertex) => vertex[axis]);
    return Math.max(...along) - Math.min(...along);
  });
  const open = openings.filter(({ bay, gate }) => bay === number && gate === undefined);
  const gaps = open.map(({ x0, x1, z0, z1 }) => (axis === 0 ? x1 - x0 : z1 - z0));
  return [...sizes, ...gaps].reduce((sum, part) => sum + part, 0);
}
