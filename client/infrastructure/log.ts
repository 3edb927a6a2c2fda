import { type LogOutputChannel, window } from 'vscode';

/** Where the extension writes what it does; nothing leaves the machine. */
export type Log = LogOutputChannel;

export function createLog(): Log {
  return window.createOutputChannel('Slatwright', { log: true });
}
