import { expect, it } from 'vitest';
import { inches, mm } from '../units/index.ts';
import { checked, fixed, screen } from './testing/checked.ts';

const gap = (text: string) => screen(['gap 1/2"', `gap ${text}`]);

it.each([
  ['unit-missing', '2', ['Write 2"', "Write 2'", 'Write 2 mm']],
  ['length-unknown-unit', '1 yard', ["Write 3'"]],
  ['length-spelling', '10 - 1/2"', ['Write 10-1/2"', 'Write 9-1/2"']],
])('offers %s every spelling of %s that may be meant', async (code, text, titles) => {
  const before = await checked(gap(text), code);
  expect(before.findings.map(({ at }) => at.path)).toEqual(['Pattern:rows/PatternGap.value']);
  const fixes = before.findings[0]?.fixes ?? [];
  expect(fixes.map(({ title }) => title)).toEqual(titles);
  for (const fix of fixes) {
    const after = await fixed(before, fix);
    expect(
      after.findings.map((finding) => finding.code),
      fix.title,
    ).not.toContain(code);
    expect(after.open.document.textDocument.getText()).toContain(
      `gap ${fix.title.slice('Write '.length)}; end`,
    );
  }
});

it('builds what the spelling chosen says', async () => {
  const before = await checked(gap('2'), 'unit-missing');
  const built = async (at: number) =>
    (await fixed(before, before.findings[0]?.fixes?.[at])).open.run().spec.infill.pattern.gap.value;
  expect(await built(0)).toBe(inches(2));
  expect(await built(1)).toBe(inches(24));
  expect(await built(2)).toBe(mm(2));
});

it('says in the message what the fixes write', async () => {
  const { messages, findings } = await checked(gap('10 - 1/2"'), 'length-spelling');
  expect(messages[0]).toMatch(/write 10-1\/2" or 9-1\/2"\.$/);
  // As a builder writes it down, the dash joins whole inches and their fraction.
  expect(findings[0]?.fixes?.map(({ preferred }) => preferred)).toEqual([true, false]);
});

it('puts a mistyped word right', async () => {
  const before = await checked(screen(['kind wood', 'kind wod']), 'unknown-word');
  const [fix] = before.findings[0]?.fixes ?? [];
  expect(fix?.title).toBe('Write wood');
  expect((await fixed(before, fix)).messages).toEqual([]);
});

it('offers no spelling where none suggests itself', async () => {
  const { findings, messages } = await checked(screen(['kind wood', 'kind zzzzzz']), 'unknown-word');
  expect(findings[0]?.fixes).toEqual([]);
  expect(messages[0]).toBe(
    '"zzzzzz" is no kind known here. Known are wood, composite, pvc, aluminum, steel.',
  );
});
