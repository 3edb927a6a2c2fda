import { describe, expect, it } from 'vitest';
import {
  boundsOf,
  type Chain,
  dimensionChains,
  leafChains,
  type PlacedLabel,
  placeLabels,
} from '../../language/drawing/index.ts';
import { type Measure, parseLength } from '../../language/units/index.ts';
import { allJobs, openAll } from '../jobs/index.ts';

const { open } = openAll();
const jobs = await Promise.all(allJobs.map(async ({ name, path }) => ({ name, opened: await open(path) })));

/** Ticks of a dimension as printed; metric ones are printed without their unit. */
function ticksOf(text: string, measure: Measure): number {
  const bare = /^[\d.]+$/.test(text);
  const parsed = parseLength(bare ? `${text} ${measure.unit}` : text);
  if (!parsed.ok) throw new Error(`${text} cannot be read as a length`);
  return parsed.ticks;
}

describe.each(jobs)('$name', ({ opened }) => {
  const measure = opened.job.measure.value;
  const chains: { where: string; all: readonly Chain[] }[] = opened.layout.runs.flatMap((run) => [
    { where: run.key, all: dimensionChains(run, measure) },
    ...run.leaves.map((leaf) => ({ where: `${run.key} ${leaf.gate}`, all: leafChains(run, leaf, measure) })),
  ]);

  it('prints dimensions that sum to those of their parent', () => {
    let summed = 0;
    for (const { where, all } of chains) {
      for (const child of all) {
        if (child.parent === undefined) continue;
        const parent = all.find(({ key }) => key === child.parent);
        const from = parent?.at.indexOf(child.at[0] ?? Number.NaN) ?? -1;
        const to = parent?.at.indexOf(child.at.at(-1) ?? Number.NaN) ?? -1;
        expect([from >= 0, to > from], `${where} ${child.key} in ${child.parent}`).toEqual([true, true]);
        const sum = (texts: readonly string[]) =>
          texts.reduce((all, text) => all + ticksOf(text, measure), 0);
        expect(sum(child.texts), `${where} ${child.key}`).toBe(sum(parent?.texts.slice(from, to) ?? []));
        summed++;
      }
    }
    expect(summed).toBeGreaterThan(2);
  });

  it('prints the length stated for the run', () => {
    for (const run of opened.layout.runs) {
      const [length] = dimensionChains(run, measure).filter(({ key }) => key === 'length');
      const stated = Math.round(run.spec.length.value / measure.step) * measure.step;
      expect(length?.texts.map((text) => ticksOf(text, measure))).toEqual([stated]);
    }
  });

  it('shows no label on another, at any size of letters', () => {
    let shown = 0;
    for (const view of opened.views()) {
      for (const size of [0.5, 1, 2, 4]) {
        const letter = view.letter * size;
        const placed = placeLabels(view.labels, letter);
        shown += placed.length;
        expect(collisions(placed, letter), `${view.key} at ${size}`).toEqual([]);
      }
    }
    expect(shown).toBeGreaterThan(20);
  });

  it('shows the title and the overall dimensions at the size it was laid out for', () => {
    for (const view of opened.views()) {
      const shown = new Set(placeLabels(view.labels, view.letter).map(({ label }) => label));
      const first = view.labels.filter(({ kind, priority }) => kind === 'title' || priority < 20);
      expect(first.some(({ kind }) => kind === 'title')).toBe(true);
      // A plan of one run, a section and what a viewer sees have no overall dimensions of their own.
      if (view.kind === 'front' || view.kind === 'back')
        expect(
          first.some(({ kind }) => kind === 'dimension'),
          view.key,
        ).toBe(true);
      for (const label of first) expect(shown.has(label), `${view.key}: ${label.text}`).toBe(true);
    }
  });
});

function collisions(placed: readonly PlacedLabel[], letter: number): string[] {
  const boxes = placed.map((one) => ({ text: one.label.text, box: boundsOf(one, letter) }));
  return boxes.flatMap(({ text, box }, i) =>
    boxes
      .slice(i + 1)
      .filter(
        ({ box: other }) => box[0] < other[2] && other[0] < box[2] && box[1] < other[3] && other[1] < box[3],
      )
      .map((other) => `${text} on ${other.text}`),
  );
}
