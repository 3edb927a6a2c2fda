import { worstDeckPost } from '../figures/index.ts';
import { DECK_BOLTS, GUARD_HEIGHT, GUARD_LOAD, HOLD_DOWN } from '../standards/index.ts';
import type { RunCheck } from './define.ts';
import { atMostText, loadText } from './loads-text.ts';

/** Wind that asks more of a post at a deck's edge than what such posts are usually made for. */
export const deckPostMoment: RunCheck = {
  kind: {
    code: 'deck-post-moment',
    severity: 'warning',
    stage: 'layout',
    basis: {
      kind: 'published',
      source: 'IRC, the load of a guard; AWC DCA 6, the hold-down of a guard post; statics',
      section: 'Table R301.5: 200 lb at 36 in; 1,800 lb',
      confirmed: 'secondary',
    },
    message: (a) =>
      `${a.wind} asks ${a.moment} of post ${a.post} at the deck, where a guard asks ${a.guard}, and a pull of ${a.pull} in the upper of two bolts ${a.apart} apart, where a usual hold-down bears ${a.holdDown}. ` +
      `${a.clear === '' ? '' : `Posts at most ${a.clear} clear would keep within both. `}The connection is for an engineer, or for connectors tested for such a load.`,
  },
  check: (run, job) => {
    const worst = worstDeckPost(run, job);
    const { deck } = run.spec;
    if (!worst || !deck || worst.used <= 1) return [];
    const { load, overGuard, overHoldDown, clearThatDoes } = worst;
    const guard = (GUARD_LOAD.value * GUARD_HEIGHT.value) / 12;
    const wind = loadText(load.wind.pressure, 'psf', job);
    return [
      {
        code: 'deck-post-moment',
        at: deck.statement,
        args: {
          wind: load.wind.stated ? `A wind of ${wind}` : `The standard's least wind of ${wind}`,
          post: load.mark.number,
          moment: loadText(guard * overGuard, 'ft-lb', job),
          guard: loadText(guard, 'ft-lb', job),
          pull: loadText(HOLD_DOWN.value * overHoldDown, 'lb', job),
          holdDown: loadText(HOLD_DOWN.value, 'lb', job),
          apart: loadText(DECK_BOLTS.apart.value, 'in', job),
          clear: clearThatDoes === undefined ? '' : atMostText(clearThatDoes, job),
        },
        pieces: [load.mark.key],
        related: load.wind.stated
          ? [{ at: load.wind.working.where.origin, note: 'the wind is stated here' }]
          : [],
      },
    ];
  },
};
