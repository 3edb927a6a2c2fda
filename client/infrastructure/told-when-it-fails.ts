import { window } from 'vscode';

/** Tells what went wrong instead of leaving someone waiting; undefined then. */
export async function toldWhenItFails<T>(
  what: string,
  work: () => Thenable<T | undefined>,
): Promise<T | undefined> {
  try {
    return await work();
  } catch (error) {
    void window.showErrorMessage(`Slatwright: ${what} could not be worked out. ${String(error)}`);
    return undefined;
  }
}
