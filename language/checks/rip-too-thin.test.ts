import { expect, it } from 'vitest';
import { checked, screen } from './testing/checked.ts';

/** Twelve slats of 3-1/2" with gaps of 1/2" are 47-1/2"; a thirteenth is what is over, less a gap. */
function found(over: number, board = 'width 3-1/2"') {
  const text = screen(
    ['width 3-1/2"; thickness 3/4"', `${board}; thickness 3/4"`],
    ['end anywhere', 'end anywhere; fit rip last not under 1/4"'],
    ['height 50"', `height ${50.5 + over}"`],
  );
  return checked(text, 'rip-too-thin');
}

it('tells the width of the strip, and stands at the remedy that allowed it', async () => {
  const { findings, messages, open } = await found(1);
  expect(findings.map(({ args, at }) => ({ ...args, path: at.path }))).toEqual([
    { slat: 'slat', width: '1"', least: '1-3/4"', path: 'Pattern:rows/Fit' },
  ]);
  const ripped = open.run().pieces.filter(({ cut }) => cut.ripped);
  expect(findings[0]?.pieces).toEqual(ripped.map(({ key }) => key));
  expect(messages[0]).toContain('The ripped slat comes out 1" wide; under 1-3/4"');
});

it('lets a strip be half its board, and no narrower', async () => {
  expect((await found(1.75)).findings).toEqual([]);
  expect((await found(1.6875)).findings).toHaveLength(1);
});

it('lets no strip be under 1-1/2 inches, however narrow its board', async () => {
  // Nineteen slats of 2" with gaps of 1/2" are 47"; half a board would be 1".
  const narrow = 'width 2"';
  expect((await found(-0.5 + 1.5, narrow)).findings).toEqual([]);
  expect((await found(-0.5 + 1.4375, narrow)).findings.map(({ args }) => args.least)).toEqual(['1-1/2"']);
});

it('asks 40 mm of a job in millimeters', async () => {
  // Ten slats of 70 mm with gaps of 10 mm are 790 mm; half a board would be 35 mm.
  const metric = (height: number) =>
    checked(
      screen(
        ['inches to 1/16"', 'mm to 1 mm'],
        ['width 3-1/2"; thickness 3/4"', 'width 70 mm; thickness 20 mm'],
        ['gap 1/2"; end anywhere', 'gap 10 mm; end anywhere; fit rip last not under 5 mm'],
        ['height 50"; bottom 2-1/2"', `height ${height} mm; bottom 50 mm`],
      ),
      'rip-too-thin',
    );
  expect((await metric(850 + 40)).findings).toEqual([]);
  expect((await metric(850 + 39)).findings.map(({ args }) => [args.width, args.least])).toEqual([
    ['39 mm', '40 mm'],
  ]);
});
