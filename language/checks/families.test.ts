import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { openJobs } from '../../tests/jobs/index.ts';
import { findingKind } from './index.ts';

const folder = new URL('../../examples/faulty/', import.meta.url);
const texts = Object.fromEntries(
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.slat'))
    .map((name) => [`/faulty/${name}`, readFileSync(new URL(name, folder), 'utf8')]),
);
const { open } = openJobs(texts);

it.each(Object.keys(texts))('%s is told of in whole sentences, with all their values', async (path) => {
  for (const { code, message } of (await open(path)).findings) {
    expect(message, code).not.toMatch(/undefined|NaN|Infinity|\[object|\$\{| {2}|\.\.(?!\/)|^\s|\s$/);
    expect(message, code).toMatch(/^["`A-Z0-9]|^[a-z][\w-]* (is|spans|are|comes|measures)/);
    expect(message, code).toMatch(/[.?]$/);
  }
});

it('refuses a code that is not registered', () => {
  expect(() => findingKind('no-such-code')).toThrow('no finding is registered as no-such-code');
});
