import type { RunLayout } from '../../layout/index.ts';
import type { Job } from '../../model/index.ts';
import { inches, type Ticks } from '../../units/index.ts';
import { type DeckPostFigures, deckPostFigures } from './deck-edge.ts';
import { heldByDeck, type PostLoad, postLoads } from './posts.ts';
import { oncePerRun } from './remember.ts';

/** Closer posts than this are no remedy. */
const CLOSEST = inches(24);

/** The post at the edge of a deck of which wind asks the most. */
export interface DeckPostLoad extends DeckPostFigures {
  readonly load: PostLoad;
  /** The larger of its two shares: of a guard's moment, and of a hold-down's pull. */
  readonly used: number;
  /** Clear between posts at which both would just be kept, where closer posts help. */
  readonly clearThatDoes?: Ticks;
}

/** Undefined where no deck's frame holds the posts. */
export const worstDeckPost = oncePerRun(workOut);

function workOut(run: RunLayout, job: Job): DeckPostLoad | undefined {
  if (!heldByDeck(run) || !run.spec.deck) return undefined;
  const at = run.spec.deck.statement;
  const all = postLoads(run, job).map((load): DeckPostLoad => {
    const { mark, force, arm, tributary, wind } = load;
    const label = `${run.spec.name}, post ${mark.number}`;
    const found = deckPostFigures({ force, arm }, { origin: at, label, run: run.key, pieces: [mark.key] });
    const used = Math.max(found.overGuard, found.overHoldDown);
    const clear = Math.floor(tributary / Math.max(1, used)) - (mark.to - mark.from);
    const unstated = 'Wind is not stated: the floor of the standard, to tell screens apart by.';
    const notes = wind.stated ? found.working.notes : [unstated, ...found.working.notes];
    return {
      ...found,
      working: { ...found.working, notes },
      load,
      used,
      ...(used > 1 && clear >= CLOSEST ? { clearThatDoes: clear } : {}),
    };
  });
  return all.reduce<DeckPostLoad | undefined>(
    (most, one) => (most && most.used >= one.used ? most : one),
    undefined,
  );
}
