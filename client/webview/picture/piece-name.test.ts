import { expect, it } from 'vitest';
import { pieceName } from './piece-name.ts';

it.each([
  ['bank/b2/c07', 'bank, bay 2, slat 7'],
  ['bank/b2/back-c07', 'bank, bay 2, back slat 7'],
  ['bank/b2/back-trim', 'bank, bay 2, back trim'],
  ['bank/p3', 'bank, post 3'],
  ['bank/b2/cleat-left-front', 'bank, bay 2, left front cleat'],
  ['bank/b2/rail-top', 'bank, bay 2, top rail'],
  ['bank/orchard/stile-hinge', 'bank, orchard, hinge stile'],
  ['bank/orchard/brace', 'bank, orchard, brace'],
  ['bank/orchard/brace-2', 'bank, orchard, brace 2'],
  ['bank/orchard/cable-2', 'bank, orchard, cable 2'],
  ['bank/orchard/rail-middle-1', 'bank, orchard, middle rail 1'],
  ['bank/b1/stiffener-front-1', 'bank, bay 1, front stiffener 1'],
  ['bank/b1/spacer-right-02', 'bank, bay 1, right spacer 2'],
  ['bank/b1/channel-left', 'bank, bay 1, left channel'],
  ['bank/b1/kick', 'bank, bay 1, kick board'],
  ['bank/p1/filler-start', 'bank, post 1, start filler'],
  ['bank/filler/board-1', 'bank, filler, board 1'],
  ['bank/b1/strip-top', 'bank, bay 1, top strip'],
  ['bank/p2/brace-along', 'bank, post 2, brace along the run'],
  ['bank/p2/stake-across', 'bank, post 2, stake across the run'],
  ['east%2Fwest/p1', 'east/west, post 1'],
  ['50%/p1', '50%, post 1'],
])('calls %s %s', (key, name) => {
  expect(pieceName(key)).toBe(name);
});
