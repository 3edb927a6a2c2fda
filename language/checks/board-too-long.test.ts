import { expect, it } from 'vitest';
import { checked, screen } from './testing/checked.ts';

const found = (text: string) => checked(text, 'board-too-long');
const BETWEEN = ['slats on front face', 'slats between posts; cleats nib; end gap 1/8"'] as const;
/** Between posts a slat is its bay of 54" less two end gaps of 1/8". */
const lengths = (all: string) => ["cedar; lengths 16'", `cedar; lengths ${all}`] as const;

it('tells the piece, its length and the longest length its stock is sold in', async () => {
  const { findings, messages, open } = await found(screen(BETWEEN, lengths('4\', 40"')));
  expect(findings.map(({ args }) => args)).toEqual([
    expect.objectContaining({ length: '53-3/4"', stock: 'slat', longest: '48"', role: 'slat' }),
  ]);
  const slats = open.run().pieces.filter(({ role }) => role === 'slat');
  expect(findings[0]?.pieces).toEqual(slats.map(({ key }) => key));
  expect(messages[0]).toContain('is 53-3/4" long; slat comes in 48" at most');
  expect(findings[0]?.at.path).toBe('Pattern:rows/RepeatStatement/items');
});

it('lets a piece take all of the longest board, and no more', async () => {
  expect((await found(screen(BETWEEN, lengths('53-3/4"')))).findings).toEqual([]);
  expect((await found(screen(BETWEEN, lengths('53-11/16"')))).findings).toHaveLength(1);
});

it('knows no limit where no length is stated', async () => {
  expect((await found(screen(BETWEEN, ["cedar; lengths 16'", 'cedar']))).findings).toEqual([]);
});

it('holds a rip to the lengths of its board', async () => {
  const rip = [
    'pattern rows { repeat slat',
    'rip strip from slat to 3"\npattern rows { repeat strip',
  ] as const;
  const { findings } = await found(screen(BETWEEN, lengths('48"'), rip));
  expect(findings.map(({ args }) => [args.stock, args.longest])).toEqual([['strip', '48"']]);
});

it('says how much of a post is below ground', async () => {
  const { findings, messages } = await found(
    screen(['through 3-1/2"; lengths 16\'', 'through 3-1/2"; lengths 5\'']),
  );
  expect(findings.map(({ args }) => [args.role, args.longest])).toEqual([['post', '60"']]);
  expect(messages[0]).toContain('below ground');
});

it('holds every board that a run names to its lengths, a kick board and a filler at a wall too', async () => {
  const kick = await found(
    screen(
      ['pattern rows', 'board sill { width 5-1/2"; thickness 3/4"; lengths 4\' }\npattern rows'],
      ['bottom 2-1/2"', 'bottom 8-1/2"; kick board sill, 1/2" above ground'],
      ['height 50"', 'height 56"'],
    ),
  );
  expect(kick.findings.map(({ args }) => [args.stock, args.length, args.longest, args.stands])).toEqual([
    ['sill', '54"', '48"', 0],
  ]);
  const filler = await found(
    screen(
      ['pattern rows', 'board strip { width 3"; thickness 3/4"; lengths 3\' }\npattern rows'],
      ['posts stake', 'begins at wall, 1-1/2" off; scribed filler strip; posts stake'],
    ),
  );
  expect(filler.findings.map(({ args }) => [args.stock, args.stands])).toEqual([['strip', 1]]);
  expect(filler.messages[0]).toContain('a lower height');
});
