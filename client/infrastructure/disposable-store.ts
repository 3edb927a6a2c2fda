import type { Disposable } from 'vscode';

/** Owns disposables and lets all of them go at once, the last one first. */
export class DisposableStore implements Disposable {
  private readonly owned: Disposable[] = [];
  private disposed = false;

  /** Takes ownership; after the store is disposed of, lets the thing go right away. */
  add<T extends Disposable>(one: T): T {
    if (this.disposed) one.dispose();
    else this.owned.push(one);
    return one;
  }

  dispose(): void {
    this.disposed = true;
    for (let one = this.owned.pop(); one; one = this.owned.pop()) one.dispose();
  }
}
