import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import { Cancellation } from 'langium';
import { afterEach, expect, it, vi } from 'vitest';
import { openTexts } from '../testing/index.ts';
import type { Reckoner } from './reckoner.ts';
import { SlicedReckoner } from './sliced-reckoner.ts';
import { BANK, LONG } from './testing/bank.ts';
import { type WorkerLike, WorkerReckoner } from './worker-reckoner.ts';

const none = Cancellation.CancellationToken.None;
const untold = () => undefined;
const running: Reckoner[] = [];
afterEach(() => {
  for (const one of running.splice(0)) one.dispose();
  vi.restoreAllMocks();
  vi.useRealTimers();
});

function thread(): Worker {
  return new Worker(new URL('./worker-main.ts', import.meta.url));
}

async function opened(texts: Record<string, string>, make: () => WorkerLike = thread) {
  const { shared, document } = await openTexts(texts);
  const slices = new SlicedReckoner(shared);
  const worker = new WorkerReckoner(shared, make, slices);
  running.push(worker);
  return { shared, uri: document.uri.toString(), slices, worker };
}

it('is answered alike by a worker and in slices, with files that are used', async () => {
  const [job, ...rest] = BANK.split('\n');
  const { uri, slices, worker } = await opened({
    'bank.slat': `use "stock.slat"\n${job}\n${rest.slice(3).join('\n')}`,
    'stock.slat': rest.slice(0, 3).join('\n'),
  });
  const here = await slices.reckon(uri, { kind: 'totals' }, untold, none);
  // 44" hold eleven slats of 3-1/2" and ten gaps of 1/2", 43-1/2"; the rest is spread. Two bays.
  expect(here?.runs[0]?.text).toMatch(
    /^22 slats, \d+ boards and 3 posts for \$[\d.]+, 16' long, \d+ % open$/,
  );
  expect(here?.job).toMatch(
    /^\d+ boards and 3 posts to buy, order \$[\d.]+ and more, price \$[\d.]+, proven cheapest$/,
  );
  expect(await worker.reckon(uri, { kind: 'totals' }, untold, none)).toEqual(here);
  for (const ask of [{ kind: 'pile' }, { kind: 'sheets' }, { kind: 'better', run: 'bank' }] as const)
    expect(await worker.reckon(uri, ask, untold, none)).toEqual(await slices.reckon(uri, ask, untold, none));
  expect(worker.crashes).toBe(0);
});

it('leaves what is canceled, in a worker and in slices, and goes on with what comes next', async () => {
  const { uri, slices, worker } = await opened({ 'bank.slat': LONG });
  for (const reckoner of [worker, slices]) {
    const source = new Cancellation.CancellationTokenSource();
    let told = 0;
    const answer = reckoner.reckon(
      uri,
      { kind: 'better', run: 'bank' },
      () => {
        told = performance.now();
        source.cancel();
      },
      source.token,
    );
    expect(await answer).toBeUndefined();
    // It was in the midst of it, and left it within a few slices.
    expect(told).toBeGreaterThan(0);
    expect(performance.now() - told).toBeLessThan(2500);
    expect(await reckoner.reckon(uri, { kind: 'totals' }, untold, none)).toBeDefined();
  }
  expect(worker.crashes).toBe(0);
});

it('lets other things have their turn between slices', async () => {
  const { uri, slices } = await opened({ 'bank.slat': LONG });
  const source = new Cancellation.CancellationTokenSource();
  let turns = 0;
  const clock = setInterval(() => turns++, 1);
  await slices.reckon(uri, { kind: 'better', run: 'bank' }, () => source.cancel(), source.token);
  clearInterval(clock);
  expect(turns).toBeGreaterThan(5);
});

it('works in slices when the worker is lost, and gives up on workers that are lost each time', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  let made = 0;
  const { uri, slices, worker } = await opened({ 'bank.slat': BANK }, () => {
    made++;
    return new Worker('throw new Error("lost")', { eval: true });
  });
  const here = await slices.reckon(uri, { kind: 'totals' }, untold, none);
  for (let time = 1; time <= 5; time++)
    expect(await worker.reckon(uri, { kind: 'totals' }, untold, none)).toEqual(here);
  expect(made).toBe(3);
  expect(worker.crashes).toBe(3);
});

it('takes up in slices what a worker was at when it was lost, and starts another for the next', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const threads: Worker[] = [];
  const { uri, worker } = await opened({ 'bank.slat': LONG }, () => {
    threads.push(thread());
    return threads.at(-1) as Worker;
  });
  let killed = false;
  const source = new Cancellation.CancellationTokenSource();
  const told = () => {
    if (killed) source.cancel();
    else void threads[0]?.terminate();
    killed = true;
  };
  // Told again after the loss, it is known to go on.
  expect(await worker.reckon(uri, { kind: 'better', run: 'bank' }, told, source.token)).toBeUndefined();
  expect(worker.crashes).toBe(1);
  expect(await worker.reckon(uri, { kind: 'totals' }, untold, none)).toBeDefined();
  expect(threads).toHaveLength(2);
});

it('ends its worker with itself, and answers what is left with nothing', async () => {
  const threads: Worker[] = [];
  const { uri, worker } = await opened({ 'bank.slat': LONG }, () => {
    threads.push(thread());
    return threads.at(-1) as Worker;
  });
  const answer = worker.reckon(uri, { kind: 'better', run: 'bank' }, () => worker.dispose(), none);
  const [only] = threads;
  if (!only) throw new Error('no worker was started');
  const ended = once(only, 'exit');
  expect(await answer).toBeUndefined();
  await ended;
  expect(await worker.reckon(uri, { kind: 'totals' }, untold, none)).toBeDefined();
  expect(threads).toHaveLength(1);
});

it('does not try in this thread what took all the memory of the worker', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const limits = { maxOldGenerationSizeMb: 6, maxYoungGenerationSizeMb: 1 };
  const small = () => new Worker(new URL('./worker-main.ts', import.meta.url), { resourceLimits: limits });
  const { uri, worker } = await opened({ 'bank.slat': BANK }, small);
  await expect(worker.reckon(uri, { kind: 'totals' }, untold, none)).rejects.toThrow('MEMORY');
  expect(worker.crashes).toBe(0);
});

it('ends a worker that does not leave what is canceled', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  let terminated = 0;
  const deaf: WorkerLike = {
    postMessage: () => undefined,
    on: () => undefined,
    terminate: () => terminated++,
  };
  const { uri, worker } = await opened({ 'bank.slat': BANK }, () => deaf);
  const source = new Cancellation.CancellationTokenSource();
  const answer = worker.reckon(uri, { kind: 'totals' }, untold, source.token);
  answer.catch(() => undefined);
  source.cancel();
  vi.advanceTimersByTime(4000);
  expect(terminated).toBe(0);
  vi.advanceTimersByTime(2000);
  expect(terminated).toBe(1);
  await expect(answer).rejects.toThrow('does not come to an end');
});

it('tells what cannot be worked out rather than taking the server along', async () => {
  const { uri, worker } = await opened({ 'bank.slat': BANK });
  expect(await worker.reckon(uri, { kind: 'better', run: 'nowhere' }, untold, none)).toBeNull();
  expect(await worker.reckon('file:///work/none.slat', { kind: 'totals' }, untold, none)).toBeUndefined();
});
