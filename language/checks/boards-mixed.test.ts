import { expect, it } from 'vitest';
import { checked, SOUND, screen } from './testing/checked.ts';

const found = (widths: string, base = SOUND) =>
  checked(`${base}measured board slat { width ${widths} }\n`, 'boards-mixed');

it('tells boards of one stock that differ by more than a sixteenth in width', async () => {
  expect((await found('3-1/2"')).findings).toEqual([]);
  expect((await found('3-1/2", 3-7/16", 3-15/32"')).findings).toEqual([]);
  const { findings, messages } = await found('3-1/2", 3-3/8", 3-7/16"');
  expect(findings.map(({ at }) => at.path)).toEqual(['MeasuredBoard:slat']);
  expect(messages[0]).toContain('slat measures 3-3/8" to 3-1/2" wide, 1/8" apart');
});

it('takes the limit of the job', async () => {
  const base = screen(['to 1/16" }', 'to 1/16"; threshold boards-mixed 1/8" }']);
  expect((await found('3-1/2", 3-3/8"', base)).findings).toEqual([]);
});
