import type { Layout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import { type BoardPlan, type BoardSearch, searchBoards } from './board-plan.ts';
import { demandOf, demandsByBought } from './demand.ts';
import { hardwareOf, type Item } from './hardware.ts';
import { type Price, priceOf } from './price.ts';

/** What is bought and cut for a job, and what it costs. */
export interface Takeoff {
  readonly plans: readonly BoardPlan[];
  readonly items: readonly Item[];
  /** Missing where the job states no money. */
  readonly price?: Price;
  /** Whether every plan of boards is known to be the cheapest. */
  readonly proven: boolean;
}

/** A takeoff whose plans of boards are improved as long as there is time. */
export interface TakeoffSearch {
  takeoff(): Takeoff;
  /** Whether nothing more is to be found out. */
  done(): boolean;
  /** Goes on until `enough`, which is asked every few milliseconds. */
  run(enough: () => boolean): void;
}

/** Stocks take turns of so many looks at the clock, so that a hard one does not keep the others waiting. */
const TURN = 3;

/** Begins a takeoff: a good plan of every stock at once, improved and proven by `run`. Pure. */
export function searchTakeoff(layout: Layout, job: Job): TakeoffSearch {
  const items = hardwareOf(layout, job);
  const searches = demandsByBought(demandOf(layout, job)).map((demands) => searchBoards(demands, job));
  return {
    takeoff: () => {
      const plans = searches.map((one) => one.plan());
      const price = priceOf(layout, job, plans, items);
      return { plans, items, ...(price ? { price } : {}), proven: plans.every(({ proven }) => proven) };
    },
    done: () => searches.every(isKnown),
    run: (enough) => {
      let over = enough();
      while (!over && !searches.every(isKnown)) {
        for (const { search } of searches.filter((one) => !isKnown(one))) {
          let looks = 0;
          search?.run(() => {
            over ||= enough();
            return over || search.proven() || ++looks > TURN;
          });
        }
      }
    },
  };
}

/** A takeoff with its plans as good as they get before `enough`. */
export function takeoffOf(layout: Layout, job: Job, enough: () => boolean): Takeoff {
  const search = searchTakeoff(layout, job);
  search.run(enough);
  return search.takeoff();
}

const isKnown = ({ search }: BoardSearch): boolean => !search || search.proven() || search.done();
