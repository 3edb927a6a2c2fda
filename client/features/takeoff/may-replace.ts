import { Uri, window, workspace } from 'vscode';
import type { SheetFile } from '../../../server/protocol.ts';

const REPLACE = 'Replace';

/** Whether files may be written into a folder: someone is asked where it holds any of them already. */
export async function mayReplace(folder: Uri, files: readonly SheetFile[]): Promise<boolean> {
  const there = await Promise.all(
    files.map(async ({ name }) =>
      workspace.fs.stat(Uri.joinPath(folder, name)).then(
        () => [name],
        () => [],
      ),
    ),
  );
  const [first, ...others] = there.flat();
  if (first === undefined) return true;
  const named = others.length === 0 ? `${first} is` : `${first} and ${others.length} more are`;
  const detail = `${others.length === 0 ? 'It is' : 'They are'} overwritten by what this takeoff says.`;
  const answer = await window.showWarningMessage(
    `${named} in ${folder.fsPath} already. Replace ${others.length === 0 ? 'it' : 'them'}?`,
    { modal: true, detail },
    REPLACE,
  );
  return answer === REPLACE;
}
