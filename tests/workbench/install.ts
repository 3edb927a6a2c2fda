import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { withInstallLock } from './install-lock.ts';
import { nodeBinary } from './node-binary.ts';
import { MODULES_DIR, WORKBENCH_ROOT } from './places.ts';
import { type RunOptions, runNpm } from './run-command.ts';

const CODE_SERVER_DIR = join(MODULES_DIR, 'code-server');
const VSCODE_DIR = join(CODE_SERVER_DIR, 'lib', 'vscode');
const STAMP_FILE = join(MODULES_DIR, '.slatwright-installed');

/** The program that runs the workbench. */
export const CODE_SERVER_ENTRY = join(CODE_SERVER_DIR, 'out', 'node', 'entry.js');

const STEP_MS = 15 * 60_000;

/** Takes one line of progress, without a line end. */
export type Progress = (line: string) => void;

/** True when the workbench that package-lock.json asks for is in place. */
export function isInstalled(): boolean {
  return (
    existsSync(STAMP_FILE) && readFileSync(STAMP_FILE, 'utf8') === stamp() && existsSync(CODE_SERVER_ENTRY)
  );
}

/**
 * Puts the workbench and the browser into this folder's node_modules (about 0.8 GB), unless they are
 * there. Needs the npm registry the first time. No package's own scripts are run and nothing is compiled.
 * Throws with what npm said when a step fails; may be called again.
 */
export async function ensureInstalled(progress: Progress = () => {}): Promise<void> {
  if (isInstalled()) return;
  await withInstallLock(
    2 * STEP_MS,
    () => progress('Waiting for another process that installs the workbench ...'),
    async () => {
      if (isInstalled()) return;
      const start = Date.now();
      progress('Installing a VS Code workbench for the browser (once, about 0.8 GB) ...');
      await npmStep('1 of 2: packages', ['ci', '--ignore-scripts'], WORKBENCH_ROOT, progress);
      await npmStep(
        "2 of 2: the workbench's own packages",
        ['install', '--omit=dev', '--ignore-scripts'],
        VSCODE_DIR,
        progress,
      );
      writeFileSync(STAMP_FILE, stamp());
      progress(`Workbench installed in ${seconds(start)}.`);
    },
  );
}

async function npmStep(
  title: string,
  args: readonly string[],
  cwd: string,
  progress: Progress,
): Promise<void> {
  progress(`  ${title} ...`);
  const node = nodeBinary();
  const start = Date.now();
  const options: RunOptions = { cwd, env: npmEnvironment(node), timeout: STEP_MS };
  const result = await runNpm(node, [...args, '--no-audit', '--no-fund'], options);
  if (result.code !== 0) {
    const why = result.timedOut
      ? `did not finish in ${STEP_MS / 60_000} minutes`
      : `ended with code ${result.code}`;
    throw new Error(
      `The workbench could not be installed: \`npm ${args.join(' ')}\` in ${cwd} ${why}.\n` +
        `${result.output.trim().split('\n').slice(-25).join('\n')}\n` +
        'It needs the npm registry and about 0.8 GB of disk. Run the same command again to go on.',
    );
  }
  progress(`  ${title}: done in ${seconds(start)}`);
}

/** Our own environment, less what an outer npm run says of itself, with our Node first on the path. */
function npmEnvironment(node: string): NodeJS.ProcessEnv {
  const env: NodeJS.ProcessEnv = {};
  for (const [name, value] of Object.entries(process.env))
    if (!/^npm_(config_(local_prefix|prefix|omit|include|global|workspace)|package_|lifecycle_)/i.test(name))
      env[name] = value;
  env.PATH = `${dirname(node)}${process.platform === 'win32' ? ';' : ':'}${process.env.PATH ?? ''}`;
  return env;
}

function stamp(): string {
  return createHash('sha256')
    .update(readFileSync(join(WORKBENCH_ROOT, 'package-lock.json')))
    .digest('hex');
}

/** Seconds since `start`, for people. */
export function seconds(start: number): string {
  return `${((Date.now() - start) / 1000).toFixed(1)} s`;
}

/** Makes a folder and those above it. */
export function ensureDir(dir: string): string {
  mkdirSync(dir, { recursive: true });
  return dir;
}
