import { expect, it } from 'vitest';
import * as standards from './index.ts';

const STATES = ['primary', 'secondary', 'from memory'];

/** Ways to numbers that no source stands over. */
function unsourced(value: unknown, way: string, sourced: boolean): string[] {
  if (typeof value === 'number') return sourced ? [] : [way];
  if (typeof value !== 'object' || value === null) return [];
  const { source, section, confirmed } = value as Record<string, unknown>;
  const here = sourced || (Boolean(source) && Boolean(section) && STATES.includes(String(confirmed)));
  return Object.entries(value).flatMap(([name, inner]) => unsourced(inner, `${way}.${name}`, here));
}

const tables = Object.entries(standards).filter(([, table]) => typeof table === 'object');

it.each(tables)('%s has a source and a state for every value', (name, table) => {
  // Words that stand for a class of the table of soils; the values are in that table.
  if (name === 'SOIL_WORDS') return expect(Object.keys(table)).toContain('clay');
  expect(unsourced(table, name, false)).toEqual([]);
});

it('finds a value that has none', () => {
  expect(unsourced({ a: { value: 3, source: 'x', section: '', confirmed: 'primary' } }, 't', false)).toEqual([
    't.a.value',
  ]);
  expect(unsourced({ a: [{ b: 1 }] }, 't', false)).toEqual(['t.a.0.b']);
});

it('leaves no number standing by itself', () => {
  const bare = Object.entries(standards)
    .filter(([, value]) => typeof value === 'number')
    .map(([name]) => name);
  // A class of the table of soils, not a value.
  expect(bare).toEqual(['WEAKEST_SOIL']);
});
