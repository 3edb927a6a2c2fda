import { DECK_BOLTS, GUARD_HEIGHT, GUARD_LOAD, HOLD_DOWN } from '../../standards/index.ts';
import { deckEdge } from '../formulas/index.ts';
import type { Working } from '../working.ts';
import { amount, input, STATICS, step } from './amounts.ts';

/** A post on the edge of a deck: pounds at the level of allowable stress, and inches. */
export interface DeckPost {
  /** Wind on the face the post carries. */
  readonly force: number;
  /** Of its resultant above the deck surface. */
  readonly arm: number;
  /** Bolts, and their middle below the deck surface; as in residential deck guides where nothing is said. */
  readonly boltsApart?: number;
  readonly boltsBelow?: number;
}

export interface DeckPostFigures {
  /** Of the wind over that of the load a guard is made for. */
  readonly overGuard: number;
  /** Pull in the upper bolt over what a tested hold-down for a guard bears. */
  readonly overHoldDown: number;
  readonly working: Working;
}

/** What wind asks of the connection at a deck's edge, beside the load of a guard. */
export function deckPostFigures(post: DeckPost, where: Working['where']): DeckPostFigures {
  const bolts = {
    boltsApart: post.boltsApart ?? DECK_BOLTS.apart.value,
    boltsBelow: post.boltsBelow ?? DECK_BOLTS.below.value,
  };
  const wind = deckEdge({ load: post.force, arm: post.arm, ...bolts });
  const guard = deckEdge({ load: GUARD_LOAD.value, arm: GUARD_HEIGHT.value, ...bolts });
  const stated = (value: number | undefined) =>
    value === undefined ? 'not stated: as in deck guides' : 'stated';
  return {
    overGuard: wind.moment / guard.moment,
    overHoldDown: wind.upper / HOLD_DOWN.value,
    working: {
      code: 'deck-edge',
      title: 'Connection of a post at the edge of the deck',
      where,
      formula: 'M = P h; T = P (h + e + a / 2) / a',
      inputs: [
        input('wind on the post', 'P', amount(post.force, 'lb'), 'as laid out'),
        input('its arm above the deck', 'h', amount(post.arm, 'in'), 'as laid out'),
        input('bolts apart', 'a', amount(bolts.boltsApart, 'in'), stated(post.boltsApart)),
        input(
          'middle of the bolts below the deck',
          'e',
          amount(bolts.boltsBelow, 'in'),
          stated(post.boltsBelow),
        ),
        input('load of a guard', '', amount(GUARD_LOAD.value, 'lb'), 'IRC Table R301.5, at 36 in'),
      ],
      steps: [
        step('moment of the wind at the deck, M', amount(wind.moment / 12, 'ft-lb')),
        step('moment of the guard load, which such posts are made for', amount(guard.moment / 12, 'ft-lb')),
        step('bolt couple about their middle', amount(wind.couple, 'lb')),
        step('lower bolt', amount(wind.lower, 'lb')),
      ],
      figure: amount(wind.upper, 'lb'),
      limit: { name: 'tested hold-down of a guard post', is: 'at most', ...amount(HOLD_DOWN.value, 'lb') },
      basis: [STATICS, GUARD_LOAD, HOLD_DOWN, DECK_BOLTS.apart],
      notes: [
        'This connection is for an engineer, or for a connector tested for it: a screen catches more wind than a guard does, and a deck edge that gives way falls on people.',
      ],
    },
  };
}
