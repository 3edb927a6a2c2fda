import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';
import { runCommandLine } from '../../server/cli/run-command-line.ts';

const root = resolve(import.meta.dirname, '../..');

async function drawn(example: string): Promise<{ code: number; files: Record<string, string> }> {
  const out = mkdtempSync(join(tmpdir(), 'plan-'));
  try {
    const silent = { out: () => undefined, error: () => undefined };
    const code = await runCommandLine(['draw', `examples/${example}`, '--out', out], root, silent);
    const files = readdirSync(out).map((name) => [name, readFileSync(join(out, name), 'utf8')] as const);
    return { code, files: Object.fromEntries(files) };
  } finally {
    rmSync(out, { recursive: true });
  }
}

it('writes the plan of runs that have places beside their elevations', async () => {
  const { code, files } = await drawn('orchard-corner.slat');
  expect(code).toBe(0);
  expect(Object.keys(files).sort()).toEqual([
    'ditch-back.svg',
    'ditch-barrow-leaf-back.svg',
    'ditch-barrow-leaf.svg',
    'ditch-section.svg',
    'ditch.svg',
    'lane-back.svg',
    'lane-section.svg',
    'lane.svg',
    'plan.svg',
  ]);
  const plan = files['plan.svg'] ?? '';
  for (const text of ['18&#39; over posts', '15&#39; over posts', '90°', 'datum point', 'gate barrow'])
    expect(plan.replaceAll('&apos;', '&#39;').replaceAll(/(\d)'/g, '$1&#39;')).toContain(text);
});

it('writes none where runs stand alone', async () => {
  expect(Object.keys((await drawn('kitchen-garden.slat')).files)).not.toContain('plan.svg');
});
