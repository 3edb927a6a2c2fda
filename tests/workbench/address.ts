import { resolve } from 'node:path';

/**
 * Address of a workbench at this port that opens a folder, with a file of it in the editor where one is named; the
 * file's path absolute or from the folder. One server opens any folder of the machine. Loading an address again that
 * names a file brings back this file alone, not what else was open: the folder's own address does that.
 */
export function addressIn(port: number, folder: string, file?: string): string {
  const path = resolve(folder);
  const address = `http://localhost:${port}/?folder=${encodeURI(path)}`;
  if (file === undefined) return address;
  const remote = `vscode-remote://localhost:${port}${encodeURI(resolve(path, file))}`;
  return `${address}&payload=${encodeURIComponent(JSON.stringify([['openFile', remote]]))}`;
}
