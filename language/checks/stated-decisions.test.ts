import { expect, it } from 'vitest';
import { openJobs } from '../../tests/jobs/index.ts';

const YARD = `
board plank { width 5-1/2"; thickness 3/4" }
post pole { along 3-1/2"; through 3-1/2" }
pattern plain { repeat plank; gap 1/2"; end anywhere }
`;

/** Codes of what a run 1-1/2" above the ground is told, and which of them the job accepts. */
async function told(statements: string, bottom = '1-1/2"') {
  const text = `job "Bank" {\n${statements}\n}\n${YARD}
run bank { length 24'; posts pole, 4 bays; height 49"; bottom ${bottom}; fill plain; slats on front face }`;
  const { findings } = await openJobs({ '/bank.slat': text }).open('/bank.slat');
  return findings
    .filter(({ code }) => /^(clearance|threshold|accept)/.test(code))
    .map(({ code, accepted, suggestions }) => [code, accepted, ...suggestions].filter(Boolean).join(' '));
}

it("tells a finding from the job's own threshold on", async () => {
  expect(await told('')).toEqual(['clearance-low']);
  expect(await told('threshold clearance-low 1"')).toEqual([]);
  expect(await told('threshold clearance-low 3"', '2-1/2"')).toEqual(['clearance-low']);
});

it('keeps to the usual threshold when the stated one is of another kind, and says so', async () => {
  expect(await told('threshold clearance-low 1 times')).toEqual(['threshold-wrong-kind', 'clearance-low']);
});

it('shows an accepted finding with its reason, in the run named only', async () => {
  expect(await told('accept clearance-low because "gravel bed"')).toEqual(['clearance-low gravel bed']);
  expect(await told('accept clearance-low in bank because "gravel bed"')).toEqual([
    'clearance-low gravel bed',
  ]);
});

it('accepts no error, and suggests the name that was probably meant', async () => {
  expect(await told('accept no-room because "fine"', '3"')).toEqual(['accept-unknown']);
  expect(await told('threshold clearence-low 1"', '3"')).toEqual(['threshold-unknown clearance-low']);
});
