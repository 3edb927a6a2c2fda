import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import { runCommandLine } from '../run-command-line.ts';

/** What a command line wrote and how it ended. */
export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly error: string;
}

/** Runs the words after `slatwright` in a folder. */
export async function runHere(folder: string, ...words: string[]): Promise<Ended> {
  let [out, error] = ['', ''];
  const code = await runCommandLine(words, folder, {
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
  });
  return { code, out, error };
}

/** A folder on the disk with these files, gone when the test is over. */
export function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'slatwright-')));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}

/** A sound job of one run and one gate. */
export const SHED = `job "Shed" { measure inches to 1/16" }
board plank { width 5-1/2"; thickness 1" }
board narrow { width 3-1/2"; thickness 1" }
post stake { along 3-1/2"; through 3-1/2" }
rail bar { width 3-1/2"; thickness 1-1/2" }
pattern plain(slat = plank) { repeat slat; gap 1/2"; end anywhere; fit gaps 1/4" to 1" }
run side {
  seen from path
  length 218"
  posts stake, 4 bays
  height 62"; bottom 2"
  slats on front face
  fill plain
}
gate door in side {
  opening 40" from 89"
  hinges on left
  frame bar
  fill plain(slat = narrow)
  flip upright
}
`;
