import type { Cancellation } from 'langium';
import { afterEach, expect, it, vi } from 'vitest';
import { openTexts } from '../testing/index.ts';
import type { Reckoner } from './reckoner.ts';
import { BANK } from './testing/bank.ts';
import type { Totals } from './totals.ts';

afterEach(() => vi.useRealTimers());

const uri = 'file:///work/bank.slat';
const NOTHING: Totals = { job: 'first', runs: [], lines: [], pieces: {} };

/** Answers when it is told to. */
class SlowReckoner implements Reckoner {
  readonly asked: {
    answer: (totals: Totals) => void;
    told: (totals: Totals) => void;
    token: Cancellation.CancellationToken;
  }[] = [];

  reckon(_uri: string, _ask: unknown, told: unknown, token: Cancellation.CancellationToken): Promise<never> {
    return new Promise((answer) =>
      this.asked.push({
        answer: answer as unknown as (totals: Totals) => void,
        told: told as (totals: Totals) => void,
        token,
      }),
    );
  }

  dispose(): void {}
}

async function opened() {
  const reckoner = new SlowReckoner();
  const open = await openTexts(
    { 'bank.slat': BANK, 'other.slat': '' },
    { work: { Reckoner: () => reckoner } },
  );
  const begun = (times: number) =>
    vi.waitFor(() => expect(reckoner.asked).toHaveLength(times), { timeout: 10_000 });
  return { ...open, keeper: open.shared.work.Totals, reckoner, begun };
}

it('works nothing out that nobody wants', async () => {
  const { keeper, reckoner, change } = await opened();
  await change('bank.slat', `${BANK}// more`);
  await new Promise((resume) => setTimeout(resume, 1300));
  expect(reckoner.asked).toHaveLength(0);
  expect(keeper.of(uri)).toEqual({ stale: true });
});

it('keeps the last totals as stale through a change, and cancels what is for the text before', async () => {
  const { keeper, reckoner, change, begun } = await opened();
  keeper.want(uri);
  await begun(1);
  reckoner.asked[0]?.answer(NOTHING);
  await vi.waitFor(() => expect(keeper.of(uri)).toEqual({ totals: NOTHING, stale: false }));
  await change('bank.slat', `${BANK}// one`);
  expect(keeper.of(uri)).toEqual({ totals: NOTHING, stale: true });

  keeper.want(uri);
  await begun(2);
  await change('bank.slat', `${BANK}// two`);
  expect(reckoner.asked[1]?.token.isCancellationRequested).toBe(true);
  // What comes late of the text before is not taken.
  reckoner.asked[1]?.told({ ...NOTHING, job: 'late' });
  reckoner.asked[1]?.answer({ ...NOTHING, job: 'late' });
  await begun(3);
  expect(keeper.of(uri)).toEqual({ totals: NOTHING, stale: true });
  reckoner.asked[2]?.answer({ ...NOTHING, job: 'second' });
  await vi.waitFor(() => expect(keeper.of(uri).totals?.job).toBe('second'));
});

it('waits until typing rests', async () => {
  const { keeper, reckoner, change, begun } = await opened();
  keeper.follow(uri);
  for (let key = 0; key < 5; key++) await change('bank.slat', `${BANK}// ${key}`);
  await begun(1);
  await new Promise((resume) => setTimeout(resume, 300));
  expect(reckoner.asked).toHaveLength(1);
});

it('tells of a change in a used file, which a client does not know of', async () => {
  const { keeper, change, reckoner, begun } = await opened();
  await change('bank.slat', `use "other.slat"\n${BANK}`);
  keeper.want(uri);
  await begun(1);
  reckoner.asked[0]?.answer(NOTHING);
  await vi.waitFor(() => expect(keeper.of(uri).stale).toBe(false));
  const heard: string[] = [];
  keeper.onChanged((of, other) => heard.push(`${other} ${of}`));
  await change('other.slat', 'board more { width 3"; thickness 1" }');
  expect(heard).toEqual([`file ${uri}`]);
  expect(keeper.of(uri)).toEqual({ totals: NOTHING, stale: true });
});
