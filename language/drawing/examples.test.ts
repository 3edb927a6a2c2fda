import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { EmptyFileSystem, URI } from 'langium';
import { beforeAll, expect, it } from 'vitest';
import { createSlatCoreServices, type SlatFile } from '../grammar/index.ts';
import { layOutJob, type RunLayout } from '../layout/index.ts';
import { buildJob } from '../model/index.ts';
import type { Measure } from '../units/index.ts';
import { leafChains } from './leaf-chains.ts';
import { dimensionChains } from './run-chains.ts';
import { unequalChains } from './testing/unequal-chains.ts';
import { viewsOf } from './views.ts';
import { writeSvg } from './write-svg.ts';

const folder = resolve(import.meta.dirname, '../../examples');
const jobs: { name: string; measure: Measure; runs: readonly RunLayout[] }[] = [];

function slatFiles(under: string): string[] {
  return readdirSync(resolve(folder, under)).filter((name) => name.endsWith('.slat'));
}

beforeAll(async () => {
  const { shared } = createSlatCoreServices(EmptyFileSystem);
  const { LangiumDocumentFactory, LangiumDocuments, DocumentBuilder, UseGraph } = shared.workspace;
  const names = [...slatFiles('.'), ...slatFiles('library').map((name) => `library/${name}`)];
  const documents = names.map((name) =>
    LangiumDocumentFactory.fromString<SlatFile>(
      readFileSync(resolve(folder, name), 'utf8'),
      URI.parse(`file:///examples/${name}`),
    ),
  );
  for (const document of documents) LangiumDocuments.addDocument(document);
  await DocumentBuilder.build(documents);
  const roots = new Map(documents.map((one) => [one.uri.toString(), one.parseResult.value]));
  for (const name of slatFiles('.')) {
    const uri = `file:///examples/${name}`;
    const seen = [...UseGraph.closure(uri).files].filter((other) => other !== uri);
    const root = roots.get(uri);
    if (!root) throw new Error(`${name} was not read`);
    const job = buildJob(root, { uri, used: seen.flatMap((other) => roots.get(other) ?? []) });
    jobs.push({ name, measure: job.measure.value, runs: layOutJob(job).runs });
  }
});

it('adds every chain of every example up, as printed, to its parent', () => {
  let chains = 0;
  for (const { name, measure, runs } of jobs) {
    for (const run of runs) {
      const own = dimensionChains(run, measure);
      chains += own.length;
      expect(unequalChains(own, measure), `${name} ${run.key}`).toEqual([]);
      for (const leaf of run.leaves) {
        expect(unequalChains(leafChains(run, leaf, measure), measure), `${name} ${leaf.gate}`).toEqual([]);
      }
    }
  }
  expect(chains).toBeGreaterThan(20);
});

it('dimensions the slats and the posts of every example', () => {
  for (const { name, measure, runs } of jobs) {
    expect(runs.length, name).toBeGreaterThan(0);
    for (const run of runs) {
      const kinds = dimensionChains(run, measure).map((one) => one.kind);
      expect(kinds, `${name} ${run.key}`).toEqual(
        expect.arrayContaining(['overall', 'posts', 'heights', 'slats']),
      );
    }
  }
});

it('draws every piece of every example in one view or another', () => {
  for (const { measure, runs } of jobs) {
    const views = viewsOf(runs, measure);
    const drawn = new Set(
      views.flatMap((view) => view.groups.flatMap((one) => one.hits.map((hit) => hit.piece))),
    );
    for (const run of runs) {
      const missing = run.pieces.filter((piece) => !drawn.has(piece.key) && piece.role !== 'cleat');
      expect(missing.map((piece) => piece.key)).toEqual([]);
    }
    for (const view of views) expect(writeSvg(view)).not.toMatch(/NaN|Infinity/);
  }
});
