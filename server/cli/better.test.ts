import { expect, it } from 'vitest';
import { folderWith, runHere, SHED } from './testing/run-here.ts';

it('prints choices as a table with the edits that build them', async () => {
  const folder = folderWith({ 'shed.slat': SHED });
  const { code, out } = await runHere(folder, 'better', 'shed.slat', '--seconds', '3');
  expect(code).toBe(0);
  for (const part of ['Choices for side', 'length bought', 'see-through', 'now', 'ways were laid out'])
    expect(out).toContain(part);
  expect(out).not.toMatch(/NaN|undefined|\[object/);
});

const SMALL = `job "Small" { measure mm to 1 mm }
board slat-90 { width 90 mm; thickness 20 mm; lengths 2 m }
post stake { along 90 mm; through 90 mm; lengths 2 m }
pattern even(space = 15 mm) { repeat slat-90; gap space; end anywhere; fit gaps 10 mm to 30 mm }
run side {
  length 2 m; posts stake, 1 bays; height 1000 mm; bottom 70 mm; embed 700 mm
  slats on front face; fill even
}
`;

it('gives figures and edits as JSON', async () => {
  const folder = folderWith({ 'shed.slat': SMALL });
  const { code, out } = await runHere(
    folder,
    'better',
    'shed.slat',
    '--json',
    '--seconds',
    '3',
    '--run',
    'side',
  );
  expect(code).toBe(0);
  const { version, runs } = JSON.parse(out);
  expect(version).toBe(1);
  expect(runs).toHaveLength(1);
  expect(runs[0].choices.length).toBeGreaterThan(0);
  for (const { edits, waste, seeThrough } of runs[0].choices) {
    expect(edits.length).toBeGreaterThan(0);
    expect(edits[0].range.start.line).toBeGreaterThanOrEqual(0);
    expect(waste).toBeGreaterThanOrEqual(0);
    expect(seeThrough).toBeLessThanOrEqual(1);
  }
});

it('tells of a run that is not there', async () => {
  const folder = folderWith({ 'shed.slat': SHED });
  const { code, error } = await runHere(folder, 'better', 'shed.slat', '--run', 'nowhere');
  expect(code).toBe(2);
  expect(error).toContain('There is no run nowhere.');
});
