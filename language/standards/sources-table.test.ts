import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import * as formulas from '../figures/formulas/index.ts';

const here = new URL('.', import.meta.url);
const rows = readFileSync(new URL('SOURCES.md', here), 'utf8')
  .split('\n')
  .flatMap((line) => {
    const found = /^\| (.+) \| `(\w+)` \| (.+) \| `([\w-]+\.test\.ts)`: (.+) \|$/.exec(line);
    return found ? [{ name: found[2] ?? '', file: found[4] ?? '', title: found[5] ?? '' }] : [];
  });

it('lists every calculation once', () => {
  const named = Object.entries(formulas)
    .filter(([, value]) => typeof value === 'function')
    .map(([name]) => name);
  expect(rows.map(({ name }) => name).sort()).toEqual(named.sort());
});

it.each(rows)('$name is held by the test named', ({ name, file, title }) => {
  const text = readFileSync(new URL(`../figures/formulas/${file}`, here), 'utf8');
  expect(text).toContain(`'${title}'`);
  expect(text).toContain(name);
});
