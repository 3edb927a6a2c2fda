import { describe, expect, it } from 'vitest';
import type { Bay, FitResult, Leaf, Opening, Piece, RunLayout } from '../../language/layout/index.ts';
import { findOverlaps, findUnsupported, isInBay } from '../../language/layout/index.ts';
import { facesOf, type Mounting, standsBetween } from '../../language/model/index.ts';
import { allJobs, openAll } from './index.ts';

const { open } = openAll();
const opened = await Promise.all(
  allJobs.map(async ({ name, path }) => ({ name, runs: (await open(path)).layout.runs })),
);
const runs = opened.flatMap(({ name, runs }) => runs.map((run) => ({ name: `${name}: ${run.key}`, run })));

type Span = readonly [from: number, to: number];

it('lays out every run of every job', () => {
  expect(opened.map(({ runs: own }) => own.length).every((count) => count > 0)).toBe(true);
  expect(runs.filter(({ run }) => !run.sound || run.pieces.length === 0)).toEqual([]);
  expect(runs.some(({ run }) => run.leaves.length > 0)).toBe(true);
  expect(runs.some(({ run }) => run.fits.some(({ chosen }) => !chosen))).toBe(true);
});

describe.each(runs)('$name', ({ run }) => {
  it('is as long as its posts and bays together, to the tick', () => {
    const parts = [...run.posts, ...run.bays].map(({ from, to }): Span => [from, to]);
    expect(covered(parts)).toEqual([0, run.spec.length.value]);
    expect(run.posts).toHaveLength(run.bays.length + 1);
    for (const bay of run.bays) expect(bay.clear).toBe(bay.to - bay.from);
  });

  it('fills every bay with slats and openings, to the tick', () => {
    for (const bay of run.bays.filter(({ gate }) => gate === undefined)) {
      const openings = run.openings.filter((one) => belongs(one, bay));
      const between = openings.map(({ x0, x1, z0, z1 }): Span => (uprightIn(run, bay) ? [x0, x1] : [z0, z1]));
      const spans = [...slatSpans(run, bay), ...between];
      // Slats on both faces lie in front of one another.
      const apart = facesOf(mountingIn(run, bay)).length < 2;
      expect(covered(spans, apart), `bay ${bay.number}`).toEqual(spaceOf(run, bay));
    }
  });

  it('sets slats from edge to edge of every bay and leaf with the gap that was worked out', () => {
    // A pair of leaves has a test of its own: two fits, of which one may be the other's mirror image.
    const filled = run.bays.filter(
      (bay) => bay.gate === undefined || (leafOf(run, bay) && !leafOf(run, bay)?.spec.half),
    );
    expect(filled.length).toBeGreaterThan(0);
    for (const bay of filled) {
      const fit = run.fits.find((one) => one.gate === bay.gate && one.bays.includes(bay.number));
      if (!fit) throw new Error(`bay ${bay.number} is not fitted`);
      for (const side of new Set(slatsOf(run, bay).map((slat) => slat.side))) checkFace(run, bay, fit, side);
    }
  });

  it('has the same lines in every level bay, and where the ground falls away more of them below', () => {
    // Bays that step with the ground step their lines.
    if (run.spec.infill.flip.upright || run.spec.slope?.value === 'in-steps') return;
    const bays = run.bays.filter((bay) => bay.gate === undefined);
    // A last course that follows the ground differs from bay to bay.
    const lines = bays.map((bay) =>
      slatsOf(run, bay)
        .filter(({ cut }) => !cut.taper)
        .map((slat): readonly [number | undefined, ...Span] => [slat.course, ...extent(slat, 2)])
        .sort((a, b) => b[2] - a[2]),
    );
    const shared = Math.min(...lines.map((own) => own.length));
    for (const own of lines) expect(own.slice(0, shared)).toEqual(lines[0]?.slice(0, shared));
    const tapered = (bay: Bay) => slatsOf(run, bay).some(({ cut }) => cut.taper);
    const whole = bays.filter((bay) => !tapered(bay));
    expect(whole.length).toBeGreaterThan(0);
    const reached = new Set(whole.map((bay) => run.reach.get(bay.number)?.[0]));
    expect(new Set(whole.map((bay) => slatsOf(run, bay).length)).size).toBe(reached.size);
  });

  it('has no two pieces in one place and none in the air', () => {
    expect(findOverlaps(run)).toEqual([]);
    expect(findUnsupported(run)).toEqual([]);
  });

  it('hangs each leaf in its opening with the gaps asked for', () => {
    for (const leaf of run.leaves) {
      const { opening, station, hingeGap, latchGap, hinges } = leaf.spec;
      const [left, right] = hinges.value === 'left' ? [hingeGap, latchGap] : [latchGap, hingeGap];
      expect(leaf.x0).toBe(station.value + left.value);
      expect(leaf.x1).toBe(station.value + opening.value - right.value);
      const own = run.pieces.filter((piece) => piece.gate === leaf.gate && piece.role !== 'post');
      expect(outline(own, 0)).toEqual([leaf.x0, leaf.x1]);
      expect(outline(own, 2)).toEqual([leaf.z0, leaf.z1]);
    }
  });
});

/** Slats of one face of a bay from edge to edge, with the gap of its fit between them. */
function checkFace(run: RunLayout, bay: Bay, fit: FitResult, side: Piece['side']): void {
  const slats = slatsOf(run, bay).filter((slat) => slat.side === side);
  const [from, to] = spaceOf(run, bay);
  const spans = slats.map((slat) => extent(slat, uprightIn(run, bay) ? 0 : 2)).sort((a, b) => a[0] - b[0]);
  const gaps = spans.slice(1).map(([start], i) => start - (spans[i]?.[1] ?? Number.NaN));
  const widths = spans.map(([start, end]) => end - start);
  const edges = [(spans[0]?.[0] ?? Number.NaN) - from, to - (spans.at(-1)?.[1] ?? Number.NaN)];
  expect(sum([...edges, ...widths, ...gaps]), `bay ${bay.number}`).toBe(to - from);
  expect(Math.min(...edges, ...gaps)).toBeGreaterThanOrEqual(0);
  if (!fit.chosen) {
    expect(Math.max(...edges)).toBeGreaterThanOrEqual(fit.leftover);
    return;
  }
  const { gap, lead, tail, count } = fit.chosen;
  // By turns on both faces: half a pitch more at the end where this face has a space.
  const shift = mountingIn(run, bay).kind === 'alternate' ? ((widths[0] ?? 0) + gap) / 2 : 0;
  const [least, most] = edges.sort((a, b) => a - b) as [number, number];
  const ends = shift > 0 ? [lead, tail + shift] : [lead, tail].sort((a, b) => a - b);
  expect(Math.abs(least - (ends[0] ?? 0)) + Math.abs(most - (ends[1] ?? 0))).toBeLessThanOrEqual(
    shift > 0 ? 2 : 0,
  );
  for (const one of gaps) expect(Math.abs(one - gap)).toBeLessThanOrEqual(1);
  const built = slats.filter(({ role }) => role === 'slat').length;
  // Under a level top more slats go on below where the ground falls away.
  if (
    run.spec.slope?.value !== 'in-steps' &&
    bay.gate === undefined &&
    from < run.bottom &&
    !uprightIn(run, bay)
  )
    expect(built).toBeGreaterThan(count);
  else expect(built).toBe(count);
}

function mountingIn(run: RunLayout, bay: Bay): Mounting {
  return (leafOf(run, bay)?.spec ?? run.spec).infill.mounting.value;
}

/** First and last of spans that follow one another without a hole; throws where they do not. */
function covered(spans: readonly Span[], apart = true): Span {
  const sorted = [...spans].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const [first] = sorted;
  if (!first) throw new Error('nothing is there');
  return sorted.slice(1).reduce((all, [from, to]): Span => {
    if (apart ? from !== all[1] : from > all[1])
      throw new Error(`one ends at ${all[1]}, the next begins at ${from}`);
    return [all[0], Math.max(all[1], to)];
  }, first);
}

/** Slats and trim of a bay in the direction its pattern reads. */
function slatSpans(run: RunLayout, bay: Bay): Span[] {
  return slatsOf(run, bay).map((slat) => extent(slat, uprightIn(run, bay) ? 0 : 2));
}

function sum(parts: readonly number[]): number {
  return parts.reduce((all, one) => all + one, 0);
}

/** What the pattern has to fill. */
function spaceOf(run: RunLayout, bay: Bay): Span {
  const upright = uprightIn(run, bay);
  const leaf = leafOf(run, bay);
  if (!leaf) return upright ? [bay.from, bay.to] : (run.reach.get(bay.number) ?? [run.bottom, run.top]);
  const whole: Span = upright ? [leaf.x0, leaf.x1] : [leaf.z0, leaf.z1];
  const { frame, infill } = leaf.spec;
  const inset = standsBetween(infill.mounting.value) ? frame.value.width.value : 0;
  return [whole[0] + inset, whole[1] - inset];
}

function uprightIn(run: RunLayout, bay: Bay): boolean {
  return (leafOf(run, bay)?.spec ?? run.spec).infill.flip.upright;
}

function leafOf(run: RunLayout, bay: Bay): Leaf | undefined {
  return run.leaves.find((leaf) => leaf.bay === bay.number);
}

function slatsOf(run: RunLayout, bay: Bay): Piece[] {
  const infill = run.pieces.filter(({ role }) => role === 'slat' || role === 'trim');
  return infill.filter((piece) => belongs(piece, bay));
}

function belongs(one: Pick<Piece | Opening, 'bay' | 'gate'> & Pick<Piece, 'until'>, bay: Bay): boolean {
  return bay.gate === undefined ? isInBay(one, bay.number) && one.gate === undefined : one.gate === bay.gate;
}

function extent(piece: Piece, axis: 0 | 2): Span {
  return outline([piece], axis);
}

function outline(pieces: readonly Piece[], axis: 0 | 2): Span {
  const along = pieces.flatMap(({ solid }) => solid.vertices.map((vertex) => vertex[axis]));
  return [Math.min(...along), Math.max(...along)];
}
