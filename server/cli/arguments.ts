import { parseArgs } from 'node:util';
import type { CutAim } from '../../language/model/index.ts';
import { CannotRun } from './usage.ts';

const COMMANDS = [
  'check',
  'draw',
  'pieces',
  'figures',
  'recut',
  'takeoff',
  'options',
  'better',
  'pile',
  'cut',
] as const;

/** Commands that seek as long as they are given. */
const PLANNING: readonly string[] = ['cut', 'takeoff', 'options', 'better'];

/** What plans of boards are made for. */
const AIMS: readonly CutAim[] = ['cost', 'waste', 'settings'];

/** A command line understood. */
export interface Request {
  readonly command: (typeof COMMANDS)[number] | 'help';
  readonly files: readonly string[];
  readonly format: 'text' | 'json' | 'csv';
  readonly out?: string;
  /** How long proofs are sought; and of cut and takeoff what is to be least. */
  readonly seconds?: number;
  readonly by?: CutAim;
  /** Of cut and takeoff, with fewest settings: what it may cost more than the least, as a share. */
  readonly more?: number;
  /** Of better: the run it is sought for; every run when left out. */
  readonly run?: string;
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
  if (values.csv && known !== 'pieces' && known !== 'takeoff')
    throw new CannotRun('--csv belongs to pieces and takeoff.');
  if (values.json && known === 'draw') throw new CannotRun('draw writes SVG; --json belongs to the others.');
  if (known === 'draw' && !values.out) throw new CannotRun('draw needs --out DIR.');
  if (known !== 'draw' && known !== 'takeoff' && values.out)
    throw new CannotRun('--out belongs to draw, and to takeoff for its cut tickets.');
  if (known !== 'better' && values.run !== undefined) throw new CannotRun('--run belongs to better.');
  if (known === 'cut' && files.length > 1) throw new CannotRun('cut takes one file.');
  return {
    command: known,
    files,
    format: values.json ? 'json' : values.csv ? 'csv' : 'text',
    ...(values.out ? { out: values.out } : {}),
    ...(values.run === undefined ? {} : { run: values.run }),
    ...readCutOptions(known, values),
  };
}

function readCutOptions(
  command: Request['command'],
  {
    seconds,
    by,
    more,
  }: {
    readonly seconds?: string | undefined;
    readonly by?: string | undefined;
    readonly more?: string | undefined;
  },
): Pick<Request, 'seconds' | 'by' | 'more'> {
  const plans = PLANNING.includes(command);
  if (!plans && seconds !== undefined) throw new CannotRun(`--seconds belongs to ${PLANNING.join(', ')}.`);
  if (command !== 'cut' && command !== 'takeoff' && by !== undefined)
    throw new CannotRun('--by belongs to cut and takeoff.');
  const span = Number(seconds);
  if (seconds !== undefined && !(span >= 0 && span < 1e6))
    throw new CannotRun(`--seconds ${seconds}: write a number of seconds, such as 10.`);
  const aim = AIMS.find((one) => one === by);
  if (by !== undefined && !aim) throw new CannotRun(`--by ${by}: write cost, waste or settings.`);
  const over = Number(more);
  if (more !== undefined && aim !== 'settings') throw new CannotRun('--more goes with --by settings.');
  if (more !== undefined && !(over >= 0 && over <= 100))
    throw new CannotRun(`--more ${more}: write percent from 0 to 100, such as 5.`);
  return {
    ...(seconds === undefined ? {} : { seconds: span }),
    ...(aim ? { by: aim } : {}),
    ...(more === undefined ? {} : { more: over / 100 }),
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
        seconds: { type: 'string' },
        run: { type: 'string' },
        by: { type: 'string' },
        more: { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
    });
  } catch (error) {
    throw new CannotRun(error instanceof Error ? error.message : String(error));
  }
}
