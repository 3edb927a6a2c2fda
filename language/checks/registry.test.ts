import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { checkRun, FINDING_KINDS, findingKind, warningCodes } from './registry.ts';
import { checked, screen } from './testing/checked.ts';

const here = new URL('.', import.meta.url);
const codes = FINDING_KINDS.map((kind) => kind.code);
const pages = readdirSync(here).filter((name) => name.endsWith('.md'));

it('gives each code once', () => {
  expect(codes).toEqual([...new Set(codes)]);
});

it('has a page beside the check for every code, and no page for none', () => {
  expect(pages.sort()).toEqual(codes.map((code) => `${code}.md`).sort());
});

it.each(pages)('%s names its code, says what to do and what it rests on', (name) => {
  const text = readFileSync(new URL(name, here), 'utf8');
  expect(text).toMatch(/^# .+\n\n`[a-z-]+`\n/);
  expect(text).toContain(`\`${name.slice(0, -'.md'.length)}\``);
  expect(text).toContain('## What to do');
  expect(text).toContain('## What it rests on');
});

it('promises nothing it cannot know', () => {
  const words = /\b(approved|complies|compliant|is safe)\b/i;
  for (const name of pages) expect(readFileSync(new URL(name, here), 'utf8'), name).not.toMatch(words);
});

it('says what each finding rests on', () => {
  for (const kind of FINDING_KINDS) expect(kind.basis.source, kind.code).not.toBe('');
});

it('names the errors and warnings of a run as often as they are told', async () => {
  const { open } = await checked(
    screen(
      ['bottom 2-1/2"', 'bottom 9"; drop 4\' behind'],
      ['through 3-1/2"; lengths 16\'', 'through 3-1/2"; lengths 5\''],
    ),
  );
  const told = checkRun(open.run(), open.job).map(({ code }) => code);
  const warned = told.filter((code) => findingKind(code).severity !== 'information');
  expect(warned.length).toBeGreaterThan(1);
  expect(told.length).toBeGreaterThan(warned.length);
  expect([...warningCodes(open.run(), open.job)].sort()).toEqual(warned.sort());
});
