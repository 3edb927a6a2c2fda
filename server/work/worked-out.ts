import { type Cancellation, isOperationCancelled, URI } from 'langium';
import type { WorkKeeper } from './keeper.ts';

/** The spelling of an address that documents are kept under. */
export function normalUri(uri: string): string {
  return URI.parse(uri).toString();
}

/**
 * What a request comes to once the names of its document are linked; null where it is canceled before that or while it
 * is worked out, which is no fault to tell anyone of.
 */
export async function workedOut<T>(
  keeper: WorkKeeper,
  uri: string,
  cancelToken: Cancellation.CancellationToken,
  work: (address: string) => Promise<T> | T,
): Promise<T | null> {
  const address = normalUri(uri);
  try {
    await keeper.untilLinked(address, cancelToken);
    return await work(address);
  } catch (error) {
    if (cancelToken.isCancellationRequested || isOperationCancelled(error)) return null;
    throw error;
  }
}
