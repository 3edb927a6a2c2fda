import type { Uri } from 'vscode';

/** The name of a file without its folders. */
export function fileNameOf({ path }: Uri): string {
  return path.slice(path.lastIndexOf('/') + 1);
}
