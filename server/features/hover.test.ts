import { expect, it } from 'vitest';
import { openTexts } from '../testing/index.ts';

const REST = `
board plank { width 3-1/2"; thickness 3/4"; lengths 8' }
rip strip from plank to 1-1/2"
post pole { along 3-1/2"; through 3-1/2" }
cleat batten { width 3/4"; thickness 3/4" }
rail beam { width 3-1/2"; thickness 1-1/2" }
pattern weave(space = 1/2") { repeat plank; gap space; end anywhere; fit gaps 3/8" to 3/4" }
`;

const RUN = `job { measure inches to 1/16" }
run west { length 12' over posts; posts pole, 2 bays; height 6'; slats between posts; cleats batten; fill weave }
gate wicket in west { opening 42" from 3'; frame beam; fill weave }
`;

async function hover(text: string): Promise<string> {
  const { slat, document, params } = await openTexts({ 'a.slat': text + REST });
  const found = await slat.lsp.HoverProvider?.getHoverContent(document, params);
  return (found?.contents as { value: string } | undefined)?.value.replaceAll('\\', '') ?? '';
}

it('tells a length in the other system', async () => {
  // An inch is 25.4 mm exactly (National Bureau of Standards, Federal Register 24, 5348, July 1, 1959).
  const told = await hover('run a { height 7\' <|>6-1/2" }\n');
  expect(told).toContain('2298.7 mm');
  expect(told).toContain('kept exactly');
  expect(await hover('run a { height 24<|>00 mm }\n')).toContain('about 94-31/64"');
});

it('tells that a length had to be rounded', async () => {
  // 203 200 ticks an inch are no multiple of 3: a third of an inch has no whole tick.
  expect(await hover('run a { end gap 1<|>/3" }\n')).toContain('rounded once');
});

it('tells of a pattern how high a repeat is, how open it is and where its gaps close', async () => {
  const told = await hover(RUN.replace('fill weave }\ngate', 'fill wea<|>ve }\ngate'));
  // 0.5 / (3.5 + 0.5) = 12.5 %; atan(0.5 / 0.75) = 33.7 degrees.
  expect(told).toContain('repeats every 4"');
  expect(told).toContain('12.5 % open straight on');
  expect(told).toContain('33.7°');
});

it('tells of stock its section and span', async () => {
  const told = await hover('pattern p { repeat str<|>ip }\n');
  expect(told).toContain('1-1/2"');
  expect(told).toContain('(38.1 mm)');
  expect(told).toContain('ripped from plank');
});

it('tells of a run its bays, its pieces and how its pattern closes', async () => {
  const told = await hover(RUN.replace('run west', 'ru<|>n west'));
  expect(told).toMatch(/\d+ posts, \d+ bays? of [\d\-/" and]+ clear/);
  expect(told).toMatch(/\d+ slats/);
  expect(told).toMatch(/closes down|does not close/);
});

it('tells of a gate how large its leaf is', async () => {
  // 42 less the gaps taken for granted, 1/4 beside the hinges and 1/2 beside the latch.
  expect(await hover(RUN.replace('gate wicket', 'gate wic<|>ket'))).toContain('41-1/4" wide');
});

it('says what a statement is for', async () => {
  expect(await hover('run a { bot<|>tom 2" }\n')).toContain('lowest edge above ground');
});

it('lets nothing in a file become markup', async () => {
  const { slat, document, params } = await openTexts({
    'a.slat': 'board "<|>![x](http://a.b/c)<b>" { width 1"; thickness 1" }\n',
  });
  const found = await slat.lsp.HoverProvider?.getHoverContent(document, params);
  const { value: text } = (found?.contents ?? {}) as { value?: string };
  expect(text).toContain('board');
  expect(text).not.toMatch(/(?<!\\)[[\]<>!(]/);
});

it('tells of a run how it turns, what the saw is set to and which post it shares', async () => {
  const run = (name: string, more: string) =>
    `run ${name} { length 12'; posts pole, 2 bays; height 6'; slats on front face; fill weave; ${more} }\n`;
  const told = await hover(
    run('west', '') + run('no<|>rth', 'after west, turns left, inside angle 135°; corner miter'),
  );
  // A miter is half the turn: 45 degrees, 22-1/2 each.
  expect(told).toContain('turns left from west by 45° (inside angle 135°), mitered, saw at 22.5°');
  expect(told).toContain('shares post P3 of west');
});

it('tells of a run whether it is alike from both sides, and from where one sees through', async () => {
  const run = (slats: string) =>
    `run <|>bank { length 12'; posts pole, 2 bays; height 6'; slats ${slats}; fill weave; fit gaps 1/8" to 6" }\n`;
  expect(await hover(run('on front face'))).toMatch(/not alike from both sides, from B1-01 on/);
  expect(await hover(run('on both faces'))).toMatch(/(?<!not )alike from both sides(?! once)/);
  const told = await hover(run('on alternate faces'));
  // 17.5 * 3.5 + 16.5 g = 70 gives g = 0.5303, an overlap of (3.5 - g) / 2 = 1.4848 and atan(1.4848 / 3.5) = 23.0 degrees.
  expect(told).toMatch(/one sees through from 23(\.0)?° off square/);
  expect(told).toContain('alike from both sides once turned upside down');
});

it('tells of posts how they are bent and how deep they stand, with every step', async () => {
  const told = await hover(RUN.replace('posts pole', 'po<|>sts pole'));
  expect(told).toContain('west, post');
  expect(told).toContain('fb = P h / S');
  expect(told).toContain('One third'.toLowerCase());
  // 2.34 and 4.36 of IBC Eq. 18-1.
  expect(told).toContain('A = 2.34 P / (S1 b)');
  expect(told).toContain('rests on IBC, 1807.3.2.1');
  expect(told).toContain('Wind is not stated');
});

it('tells of a wind statement the pressure on each run, and of a gate its weight and hinges', async () => {
  const windy = RUN.replace('job {', 'job { wind 115 mph, exposure B, by ASCE 7-16;');
  const told = await hover(windy.replace('wind', 'wi<|>nd'));
  expect(told).toContain('west, wind');
  expect(told).toContain('q = 0.00256 Kz Kzt Kd V²');
  expect(told).toContain('ASCE 7-16');
  expect(await hover(RUN.replace('gate wicket', 'ga<|>te wicket'))).toContain('Weight of wicket');
});

it('tells of slats the span at which they still do', async () => {
  // 3-1/2 x 3/4, Western Cedars wet, 0.9 million psi, 9.6 psf: (384 x 0.9e6 x 0.75^3 / (12 x 5 x 120 x 9.6 / 144))^(1/3) = 67.2 in.
  const told = await hover(`${RUN}pattern p { repeat pla<|>nk; gap 1/2" }\n`);
  expect(told).toContain('laid flat, spans at most 67-1/4"');
});

it('tells at a wall how far it is off at the bottom and the top, and how near the post may stand', async () => {
  // Slats from 2 to 72 up. 1/2 in 70 toward the post: 2 * 0.5 / 70 = 0.014 at the bottom, 0.514 at the top.
  const wall = 'beg<|>ins at wall, 2" off, leans toward 1/2" in 70"';
  const told = await hover(RUN.replace('length 12', `${wall}; length 12`));
  expect(told).toContain('a wall past the first post');
  expect(told).toMatch(/at the bottom of what stands beside it, 2" up = 1\.986 in/);
  expect(told).toMatch(/at its top, 72" up = 1\.486 in/);
  expect(told).toMatch(/least distance off the post.* = 1\.563 in/);
  const filler = await hover(
    RUN.replace('length 12', 'begins at wall, 2" off; scri<|>bed filler plank; length 12'),
  );
  expect(filler).toContain('Taper of the filler P1-FL');
});

it('tells of temporary bracing its strips with their marks, its braces, and how many pieces that are', async () => {
  const told = await hover(
    RUN.replace('fill weave }\ngate', 'temp<|>orary bracing plank; fill weave }\ngate'),
  );
  expect(told).toContain('west, bay 1: two strips');
  expect(told).toContain('cut to the clear width');
  expect(told).toMatch(/west, P1-ZL: brace \d/);
  expect(told).toContain('temporary, no part of the screen');
  expect(told).toContain('until the concrete has set');
});
