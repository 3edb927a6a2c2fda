import { symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { folderWith, runHere } from './testing/run-here.ts';

const YARD = 'board plank { width 5-1/2"; thickness 1" }\n';

/** Codes found when a job uses a path. */
async function found(folder: string, path: string, job = 'job.slat'): Promise<string[]> {
  writeFileSync(join(folder, job), `use "${path}"\nrip strip from plank to 2"\n`);
  const { out } = await runHere(folder, 'check', job, '--json');
  return JSON.parse(out).map(({ code }: { code: string }) => code);
}

it('uses a file of the folder, also through a link that stays inside', async () => {
  const folder = folderWith({ 'stock/yard.slat': YARD });
  symlinkSync(join(folder, 'stock'), join(folder, 'linked'));
  symlinkSync(join(folder, 'stock/yard.slat'), join(folder, 'yard.slat'));
  for (const path of ['stock/yard.slat', 'linked/yard.slat', 'yard.slat', './stock/../stock/yard.slat'])
    expect(await found(folder, path), path).toEqual([]);
});

it('uses nothing outside, by whatever way', async () => {
  const outside = folderWith({ 'yard.slat': YARD });
  const folder = folderWith({ 'deep/keep.slat': '' });
  symlinkSync(join(outside, 'yard.slat'), join(folder, 'file-link.slat'));
  symlinkSync(outside, join(folder, 'folder-link'));
  symlinkSync(join(folder, 'folder-link'), join(folder, 'link-to-link'));
  const ways = [
    `${outside}/yard.slat`,
    `../${outside.split('/').at(-1)}/yard.slat`,
    'file-link.slat',
    'folder-link/yard.slat',
    'link-to-link/yard.slat',
    'deep/../folder-link/yard.slat',
    `file://${outside}/yard.slat`,
    `%2e%2e/${outside.split('/').at(-1)}/yard.slat`,
  ];
  for (const path of ways) {
    const codes = await found(folder, path);
    expect(codes, path).toContain('unknown-name');
    expect(
      codes.some((code) => code === 'use-outside' || code === 'use-missing'),
      path,
    ).toBe(true);
  }
  for (const path of ways.slice(0, 6)) expect(await found(folder, path), path).toContain('use-outside');
});

it('says nothing of what stands in a file outside', async () => {
  const outside = folderWith({ 'secret.slat': 'hush hush\n' });
  const folder = folderWith({ 'job.slat': `use "${outside}/secret.slat"\n` });
  symlinkSync(join(outside, 'secret.slat'), join(folder, 'link.slat'));
  writeFileSync(join(folder, 'other.slat'), 'use "link.slat"\n');
  const { out } = await runHere(folder, 'check', 'job.slat', 'other.slat', '--json');
  expect(out).not.toContain('hush');
});
