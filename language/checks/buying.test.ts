import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';

const YARD = `
material pine { treated }
board plank { width 5-1/2"; thickness 1"; lengths 8' $9.20 each, 12' $14.10 each }
post pole { along 3-1/2"; through 3-1/2"; made of pine; lengths 8' $14 each }
pattern even { repeat plank; gap 1/2"; end anywhere; fit gaps 1/4" to 1" }
run bank { length 11'; posts pole, 2 bays; height 57"; bottom 2"; slats on front face; joints at every post; fill even }
`;

async function codes(text: string, yard = YARD): Promise<readonly string[]> {
  const { findings } = await openJob(yard + text);
  return findings.map(({ code }) => code);
}

it('asks for no price where no stock has one, and for each where one has', async () => {
  expect(await codes('')).not.toContain('no-price');
  expect(await codes('', YARD.replace(' $14 each', ''))).toContain('no-price');
  expect(await codes('', YARD.replaceAll(/ \$[\d.]+ each/g, ''))).not.toContain('no-price');
});

it('takes boards on hand that a piece fits, and tells of those that none fits', async () => {
  expect(await codes(`on hand { plank 1 of 6' }`)).not.toContain('bought-unused');
  expect(await codes(`on hand { plank 1 of 5' }`)).toContain('bought-unused');
});

it('asks for sealer and spares only where the job is priced, until both are there', async () => {
  expect(await codes('')).not.toEqual(expect.arrayContaining(['treated-ends']));
  const bare = await codes('quote { labor $48 per hour }');
  expect(bare).toEqual(expect.arrayContaining(['treated-ends', 'spares-few']));
  const whole = await codes('job { spares at least 1 }\nquote { labor $48 per hour; price sealer $22 each }');
  expect(whole).not.toContain('treated-ends');
  expect(whole).not.toContain('spares-few');
  const more = 'job { spares at least 1; threshold spares-few 40 % }\nquote { labor $48 per hour }';
  expect(await codes(more)).toContain('spares-few');
});

it.each([
  // A slat of 1 inch wants two inches in the post; it has one and seven eighths, and just two.
  ['2-7/8"', ['screw-short']],
  ['3"', []],
  // Slat and post are 4-1/2 inches; the point stays an eighth inside.
  ['4-3/8"', []],
  ['4-7/16"', ['screw-through']],
])('judges screws of %s by what holds them', async (length, told) => {
  const found = await codes(`job { screws ${length} }`);
  expect(found.filter((code) => code.startsWith('screw-'))).toEqual(told);
});

it('moves with the job’s own thresholds', async () => {
  expect(await codes('job { screws 2-1/2"; threshold screw-short 1.5 times }')).not.toContain('screw-short');
  expect(await codes('job { screws 2-1/2" }')).toContain('screw-short');
});

it('tells of a deposit over its limit at the cent, not below', async () => {
  const quote = (limit: string) => `job { spares at least 1 }\nquote { deposit 10 %, at most ${limit} }`;
  // 20 slats of 5' 5-7/8" come two to 12 ft or one to 8 ft: the plan and spares are the takeoff's; only the limit moves.
  expect(await codes(quote('$1'))).toContain('deposit-over-limit');
  expect(await codes(quote('$10,000'))).not.toContain('deposit-over-limit');
});

it('tells of pieces that leave a board no trim, by the trim the job states', async () => {
  // Slats are 5' 5-15/16" of boards of 5' 7".
  const yard = YARD.replace("lengths 8' $9.20 each, 12' $14.10 each", `lengths 5' 7" $9 each`);
  expect(await codes('', yard)).not.toContain('board-overfilled');
  expect(await codes(`job { saw kerf 1/8", trim 1-1/2" }`, yard)).toContain('board-overfilled');
});
