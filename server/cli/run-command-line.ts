import { readArguments } from './arguments.ts';
import { better } from './better.ts';
import { check } from './check.ts';
import { cut } from './cut.ts';
import { draw } from './draw.ts';
import { figures } from './figures.ts';
import { options } from './options.ts';
import { pieces } from './pieces.ts';
import { pile } from './pile.ts';
import { recut } from './recut.ts';
import { takeoff } from './takeoff.ts';
import { CannotRun, USAGE } from './usage.ts';

/** Where a command writes. */
export interface Terminal {
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
}

/** Runs `slatwright` with the words after its name in a folder; the answer is the exit code. */
export async function runCommandLine(
  words: readonly string[],
  folder: string,
  terminal: Terminal,
): Promise<number> {
  try {
    const request = readArguments(words);
    switch (request.command) {
      case 'help':
        terminal.out(USAGE);
        return words.length === 0 ? 2 : 0;
      case 'check':
        return await check(request, folder, terminal);
      case 'draw':
        return await draw(request, folder, terminal);
      case 'pieces':
        return await pieces(request, folder, terminal);
      case 'figures':
        return await figures(request, folder, terminal);
      case 'takeoff':
        return await takeoff(request, folder, terminal);
      case 'options':
        return await options(request, folder, terminal);
      case 'recut':
        return await recut(request, folder, terminal);
      case 'better':
        return await better(request, folder, terminal);
      case 'pile':
        return await pile(request, folder, terminal);
      case 'cut':
        return cut(request, folder, terminal);
    }
  } catch (error) {
    const expected = error instanceof CannotRun;
    terminal.error(
      `${expected ? error.message : `slatwright failed: ${String(error instanceof Error ? error.stack : error)}`}\n`,
    );
    if (expected) terminal.error('slatwright help tells what it can do.\n');
    return 2;
  }
}
