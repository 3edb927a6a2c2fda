import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { FINDING_KINDS } from '../../language/checks/index.ts';
import { openJobs, textOfFinding } from '../jobs/index.ts';
import { type Expected, readExpectations } from './read-expectations.ts';

const folder = new URL('../../examples/faulty/', import.meta.url);
const names = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.slat'))
  .sort();
const texts = new Map(names.map((name) => [name, readFileSync(new URL(name, folder), 'utf8')]));

/**
 * Codes that no text brings about on its own, each with the test that does. Everything else is shown by a
 * file of the folder.
 */
const SHOWN_ELSEWHERE: Readonly<Record<string, string>> = {
  'use-limit': 'language/grammar/use-graph.test.ts: takes more than thirty files',
  'no-size': 'language/layout/run.test.ts: reading a job refuses sizes of nothing first',
  'too-many-pieces': 'language/layout/run.test.ts: reading a job refuses so many slats first',
  'rails-missing':
    'language/layout/run.test.ts: reading a job takes the only rail, or says that none is named',
  'cleats-missing':
    'language/layout/run.test.ts: reading a job takes the only cleat, or says that none is named',
  'pieces-overlap': 'language/layout/contacts.test.ts: no text that was found makes two pieces share a place',
};

/** The folder is the whole workspace, so that nothing above it can be used. */
const { open } = openJobs(Object.fromEntries([...texts].map(([name, text]) => [`/faulty/${name}`, text])));

it.each(names)('%s shows what it announces, and nothing else', async (name) => {
  const expected = readExpectations(texts.get(name) ?? '');
  const { document, findings } = await open(`/faulty/${name}`);
  const found = findings.map(({ code, severity, range }): Expected => {
    const line = range.start.line + 1;
    // Where the line does not say what is underlined, it does not matter.
    const free = expected.some((one) => one.line === line && one.code === code && one.at === undefined);
    const at = textOfFinding(document, range);
    return { line, severity, code, ...(free ? {} : { at }) };
  });
  expect(found).toEqual(expected);
});

it('shows its own code first of all in the file of that name', () => {
  const codes = new Set(FINDING_KINDS.map(({ code }) => code));
  for (const name of names.filter((one) => !one.startsWith('stock/'))) {
    const own = name.replace(/(\/.*)?$/, '').replace(/\.slat$/, '');
    expect(codes, name).toContain(own);
    expect(
      readExpectations(texts.get(name) ?? '').map(({ code }) => code),
      name,
    ).toContain(own);
  }
});

it('has a job for every finding that a text can bring about', () => {
  const shown = new Set(
    [...texts.values()].flatMap((text) => readExpectations(text).map(({ code }) => code)),
  );
  const missing = FINDING_KINDS.map(({ code }) => code).filter((code) => !shown.has(code));
  expect(missing.sort()).toEqual(Object.keys(SHOWN_ELSEWHERE).sort());
});

it.each(Object.entries(SHOWN_ELSEWHERE))('%s is brought about where it says', (code, where) => {
  const path = where.slice(0, where.indexOf(':'));
  const text = readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
  expect(text).toContain(
    code === 'use-limit' ? 'too-deep' : code === 'pieces-overlap' ? 'findOverlaps' : code,
  );
});
