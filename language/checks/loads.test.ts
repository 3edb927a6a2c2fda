import { expect, it } from 'vitest';
import { checked, screen } from './testing/checked.ts';

/** The sound screen in a job that says more of its place. */
const job = (...statements: string[]) =>
  [`inches to 1/16" }`, `inches to 1/16"; ${statements.join('; ')} }`] as const;
const LOADS =
  /^(slat-bends|slat-sags|post-bends|embed-|frost-|hole-|gap-closes|gap-grows|openness-relief|hinge)/;
const codes = async (...changes: (readonly [string, string])[]) =>
  (await checked(screen(...changes))).findings.map(({ code }) => code).filter((code) => LOADS.test(code));

it('says nothing of loads where no wind, soil or frost is stated and posts are of common size', async () => {
  expect(await codes()).toEqual([]);
});

it('judges slats and posts by the wind stated, and says at what spacing they would do', async () => {
  const windy = job('wind 150 mph, exposure D, by ASCE 7-16');
  expect(await codes(windy)).toEqual(['slat-bends', 'post-bends']);
  const { messages } = await checked(screen(windy), 'post-bends');
  expect(messages[0]).toMatch(/^In a wind of [\d.]+ psf, post 2 .* Posts at most .* clear would do/);
  const clear = /at most (\d+)" clear/.exec(messages[0] ?? '')?.[1];
  const closer = ['posts stake, 2 bays', `posts stake, at most ${clear}" clear`] as const;
  expect(await codes(windy, closer)).not.toContain('post-bends');
});

it("takes the job's own limit on how far slats bend", async () => {
  const breeze = 'wind pressure 12 psf';
  expect(await codes(job(breeze))).toEqual([]);
  expect(await codes(job(breeze, 'threshold slat-bends 400 times'))).toEqual(['slat-bends']);
});

it('tells of depth by the third of the post, and by the formula only where the soil is stated', async () => {
  // 50 in above ground: half is 25 in.
  const set = (depth: string) => ['height 50"; ', `embed ${depth}; height 50"; `] as const;
  expect(await codes(set('25"'))).toEqual([]);
  expect(await codes(set('24-1/2"'))).toEqual(['embed-shallow']);
  expect(await codes(job('threshold embed-shallow 0.33 times'), set('24-1/2"'))).toEqual([]);
  expect(await codes(job('soil clay'), set('25"'))).toEqual(['embed-under-formula']);
  expect(await codes(job('soil clay'), set('72"'))).toEqual([]);
});

it('tells of frost from the inch on that it is deeper than the posts', async () => {
  const set = (depth: string) => ['height 50"; ', `embed ${depth}; height 50"; `] as const;
  expect(await codes(job('frost 36"'), set('36"'))).toEqual([]);
  expect(await codes(job('frost 36"'), set('35"'))).toEqual(['frost-deeper']);
});

it('wants holes three times their post, with 2-1/2" around its corners', async () => {
  const dug = (diameter: string) => ['height 50"; ', `hole ${diameter} diameter; height 50"; `] as const;
  // 3 x 3.5 = 10.5; 10.5 / 2 - 3.5 / sqrt 2 = 2.775.
  expect(await codes(dug('10-1/2"'))).toEqual([]);
  expect(await codes(dug('10"'))).toEqual(['hole-narrow']);
  // By the threshold of two times 7 in would do, but for the concrete: 2 (2.5 + 2.475) = 9.95.
  expect(await codes(job('threshold hole-narrow 2 times'), dug('10"'))).toEqual([]);
  expect(await codes(job('threshold hole-narrow 2 times'), dug('9-3/4"'))).toEqual(['hole-narrow']);
});

it('tells of gaps only from a stated day of fitting', async () => {
  // Pine as unnamed: 3.5 x 0.0026 x 10 = 0.091 in from 8 to 18 %; the gap is 1/2 in.
  expect(await codes(job('fitted at 8 % moisture'))).toEqual([]);
  expect(await codes(job('fitted at 24 % moisture'))).toEqual(['gap-grows']);
  // Eleven gaps of 1/16 in and twelve slats of 3-63/64: closed by the first wet month.
  const tight = [
    ['width 3-1/2"; thickness 3/4"', 'width 3-7/8"; thickness 3/4"'],
    ['gap 1/2"', 'gap 1/16"'],
  ] as const;
  expect(await codes(job('fitted at 8 % moisture'), ...tight)).toContain('gap-closes');
});

it('tells that gaps are no relief from a stated speed on, and not of a frame half open', async () => {
  const speed = job('wind 90 mph, exposure B, by ASCE 7-16');
  const gaps = (gap: string) => ['gap 1/2"', `gap ${gap}`] as const;
  expect(await codes(speed)).not.toContain('openness-relief');
  expect(await codes(speed, gaps('1"'))).toContain('openness-relief');
  expect(await codes(gaps('1"'))).not.toContain('openness-relief');
  expect(await codes(speed, gaps('3"'))).not.toContain('openness-relief');
});
