import { parseArgs } from 'node:util';
import { CannotRun } from './usage.ts';

const COMMANDS = ['check', 'draw', 'pieces', 'figures'] as const;

/** A command line understood. */
export interface Request {
  readonly command: (typeof COMMANDS)[number] | 'help';
  readonly files: readonly string[];
  readonly format: 'text' | 'json' | 'csv';
  readonly out?: string;
}

/** Reads the words after `slatwright`; throws {@link CannotRun} with what to write instead. */
export function readArguments(words: readonly string[]): Request {
  const { values, positionals } = parsed(words);
  const [command, ...files] = positionals;
  if (values.help || command === undefined || command === 'help')
    return { command: 'help', files: [], format: 'text' };
  const known = COMMANDS.find((name) => name === command);
  if (!known) throw new CannotRun(`"${command}" is no command; known are ${COMMANDS.join(', ')}.`);
  if (files.length === 0) throw new CannotRun(`${known} needs a file: slatwright ${known} FILE`);
  if (values.json && values.csv) throw new CannotRun('Ask for --json or --csv, not both.');
  if (values.csv && known !== 'pieces') throw new CannotRun('--csv belongs to pieces.');
  if (values.json && known === 'draw')
    throw new CannotRun('draw writes SVG; --json belongs to check, pieces and figures.');
  if (known === 'draw' && !values.out) throw new CannotRun('draw needs --out DIR.');
  if (known !== 'draw' && values.out) throw new CannotRun('--out belongs to draw.');
  return {
    command: known,
    files,
    format: values.json ? 'json' : values.csv ? 'csv' : 'text',
    ...(values.out ? { out: values.out } : {}),
  };
}

function parsed(words: readonly string[]) {
  try {
    return parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        json: { type: 'boolean' },
        csv: { type: 'boolean' },
        out: { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
    });
  } catch (error) {
    throw new CannotRun(error instanceof Error ? error.message : String(error));
  }
}
