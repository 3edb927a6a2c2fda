import { expect, it } from 'vitest';
import { checked, fixed, screen } from './testing/checked.ts';

/** Posts of the sound screen are 50" above the ground: braces meet them 33" up. Property lines 30" off on either side. */
const between = (bracing: string) =>
  screen(
    ['job "Sound" {', 'job "Sound" { property line 30" behind bank; property line 30" in front of bank;'],
    ['fill rows', `temporary bracing ${bracing}; fill rows`],
  );

it('tells of feet past both property lines, once, and offers the greatest way out that does', async () => {
  const found = await checked(between('nib'), 'brace-foot-blocked');
  expect(found.messages).toEqual([
    'The brace across the run of P1 has no place for its foot 33" out, either way: that is past the property line. So it is at 2 more. ' +
      'Set the feet nearer or farther with `out`, or hold that post another way.',
  ]);
  // By hand: in steps of 6" the next are 30", past the line by half a stake, and 24".
  const [fix] = found.findings[0]?.fixes ?? [];
  expect(fix?.title).toBe('Set the feet 24" out');
  expect(fix?.changes[0]?.text).toBe('temporary bracing nib, 33" up, 24" out');
  const after = await fixed(found, fix);
  expect(after.findings).toEqual([]);
  expect(after.open.layout.runs[0]?.temporary.braced).toHaveLength(3);
});

it('keeps all else that the statement says', async () => {
  const found = await checked(
    between(`nib, 2' 6" up, strips at 6" and 40", stakes bar 30", bay by bay`),
    'brace-foot-blocked',
  );
  expect(found.findings[0]?.fixes?.[0]?.changes[0]?.text).toBe(
    'temporary bracing nib, 30" up, 24" out, strips at 6" and 40", stakes bar 30", bay by bay',
  );
});

it('tells of strips and braces longer than their stock', async () => {
  const long = screen(
    ['thickness 3/4" }', 'thickness 3/4"; lengths 4\' }'],
    ['fill rows', 'temporary bracing nib; fill rows'],
  );
  const { messages } = await checked(long, 'board-too-long');
  expect(messages).toHaveLength(1);
  expect(messages[0]).toMatch(/^B1-ZT is .*; nib comes in 48" at most\./);
});
