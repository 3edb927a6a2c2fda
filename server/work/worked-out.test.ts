import { Cancellation, OperationCancelled } from 'langium';
import { expect, it } from 'vitest';
import type { WorkKeeper } from './keeper.ts';
import { workedOut } from './worked-out.ts';

const keeper = (untilLinked: () => Promise<void>) => ({ untilLinked }) as unknown as WorkKeeper;
const linked = keeper(async () => undefined);

it('gives what is worked out once the document is linked, by the address it is kept under', async () => {
  const { token } = new Cancellation.CancellationTokenSource();
  expect(await workedOut(linked, 'file:///c%3A/a.slat', token, (address) => address)).toBe(
    'file:///c%3A/a.slat',
  );
  expect(await workedOut(linked, 'file:///c:/a.slat', token, (address) => address)).toBe(
    'file:///c%3A/a.slat',
  );
});

it('answers nothing where it is canceled, before the document is linked or while it is worked out', async () => {
  const source = new Cancellation.CancellationTokenSource();
  const building = keeper(
    () =>
      new Promise((_, fail) => {
        source.token.onCancellationRequested(() => fail(OperationCancelled));
      }),
  );
  const answer = workedOut(building, 'file:///a.slat', source.token, () => 'found');
  source.cancel();
  expect(await answer).toBeNull();
  const broken = () => Promise.reject(new Error('left half way'));
  expect(await workedOut(linked, 'file:///a.slat', source.token, broken)).toBeNull();
});

it('hides no fault of its own', async () => {
  const { token } = new Cancellation.CancellationTokenSource();
  const broken = () => Promise.reject(new Error('not so'));
  await expect(workedOut(linked, 'file:///a.slat', token, broken)).rejects.toThrow('not so');
});
