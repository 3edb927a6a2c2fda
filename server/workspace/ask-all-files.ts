import type { Connection } from 'vscode-languageserver';

/**
 * A connection on which requests about the whole workspace are answered only when `complete`: a rename
 * that misses a file which has not been read yet would break it.
 */
export function askAllFiles(connection: Connection, complete: () => Promise<void>): Connection {
  type Register = (handler: (...args: never[]) => unknown) => unknown;
  const late =
    (register: Register): Register =>
    (handler) =>
      register(async (...args) => {
        await complete();
        return handler(...args);
      });
  return Object.assign(Object.create(connection) as Connection, {
    onRenameRequest: late(connection.onRenameRequest as Register),
    onReferences: late(connection.onReferences as Register),
    onWorkspaceSymbol: late(connection.onWorkspaceSymbol as Register),
  });
}
