import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';
import { addressIn } from './address.ts';
import { CODE_SERVER_ENTRY, ensureInstalled, type Progress } from './install.ts';
import { nodeBinary } from './node-binary.ts';
import { WORKBENCH_ROOT } from './places.ts';
import { killTree, runCommand } from './run-command.ts';
import { QUIET_SETTINGS, type Settings, THEME_NAMES, type Theme } from './settings.ts';

export interface WorkbenchOptions {
  /** The packaged extension to install; a workbench without one is possible. */
  readonly vsix?: string;
  /** The folder to open. The workbench writes what is saved there: give tests a copy. */
  readonly folder: string;
  /** Port on 127.0.0.1; a free one when left out or 0. */
  readonly port?: number;
  /** Over and above `QUIET_SETTINGS`. */
  readonly settings?: Settings;
  readonly theme?: Theme;
  readonly progress?: Progress;
}

export interface Workbench {
  /** Address that opens the folder. */
  readonly url: string;
  readonly port: number;
  readonly folder: string;
  readonly userDataDir: string;
  /** Address that opens the folder with this file of it in the editor, as `addressIn` makes it. */
  addressOf(file: string): string;
  /** What the server has written so far: for reports of failures. */
  log(): string;
  /** Ends the workbench and all it started, and removes its temporary folders. May be called twice. */
  stop(): Promise<void>;
}

const INSTALL_EXTENSION_MS = 120_000;
const START_MS = 90_000;
const STOP_MS = 10_000;

/**
 * Starts a VS Code workbench on this machine, with user data, extensions and settings of its own in a temporary
 * folder, answering on the loopback address only. Installs it first where needed. It ends with `stop()`, and at
 * the latest with this process. Throws with the server's own words when it does not come up.
 */
export async function startWorkbench(options: WorkbenchOptions): Promise<Workbench> {
  await ensureInstalled(options.progress);
  const home = mkdtempSync(join(tmpdir(), 'slatwright-'));
  const discard = (): void => rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  process.once('exit', discard);
  try {
    const userDataDir = join(home, 'user');
    const settings: Settings = {
      ...QUIET_SETTINGS,
      'workbench.colorTheme': THEME_NAMES[options.theme ?? 'light'],
      ...options.settings,
    };
    mkdirSync(join(userDataDir, 'User'), { recursive: true });
    writeFileSync(join(userDataDir, 'User', 'settings.json'), JSON.stringify(settings, null, 2));

    if (options.vsix) await installExtension(home, resolve(options.vsix));
    const server = await startServer(home, options.port ?? 0);
    const folder = resolve(options.folder);
    return {
      url: addressIn(server.port, folder),
      port: server.port,
      folder,
      userDataDir,
      addressOf: (file) => addressIn(server.port, folder, file),
      log: server.log,
      async stop() {
        await server.stop();
        process.off('exit', discard);
        discard();
      },
    };
  } catch (error) {
    process.off('exit', discard);
    discard();
    throw error;
  }
}

async function installExtension(home: string, vsix: string): Promise<void> {
  const result = await runCommand(
    nodeBinary(),
    [CODE_SERVER_ENTRY, ...ownPlaces(home), '--install-extension', vsix, '--force'],
    { cwd: home, env: serverEnvironment(), timeout: INSTALL_EXTENSION_MS },
  );
  // The exit code is 0 for some failures.
  if (result.code !== 0 || !/was successfully installed/.test(result.output))
    throw new Error(`${vsix} could not be installed in the workbench:\n${result.output.trim()}`);
}

interface Server {
  readonly port: number;
  log(): string;
  stop(): Promise<void>;
}

async function startServer(home: string, port: number): Promise<Server> {
  const grouped = process.platform !== 'win32';
  const keeper = spawn(
    nodeBinary(),
    [
      join(WORKBENCH_ROOT, 'keeper.ts'),
      CODE_SERVER_ENTRY,
      ...ownPlaces(home),
      ...['--auth', 'none', '--bind-addr', `127.0.0.1:${port}`],
      ...['--disable-telemetry', '--disable-update-check', '--disable-workspace-trust'],
      ...['--disable-getting-started-override', '--reconnection-grace-time', '5'],
    ],
    { cwd: home, env: serverEnvironment(), stdio: ['pipe', 'pipe', 'pipe'], detached: grouped },
  );
  let output = '';
  const collect = (chunk: Buffer): void => {
    output += chunk.toString();
  };
  keeper.stdout.on('data', collect);
  keeper.stderr.on('data', collect);
  keeper.stdin.on('error', () => {});
  const end = (): void => killTree(keeper.pid, grouped);
  // Before the folder is removed, which waits in the same queue.
  process.prependOnceListener('exit', end);
  const stop = async (): Promise<void> => {
    process.off('exit', end);
    end();
    await gone(keeper, grouped);
  };
  const log = (): string => output;
  try {
    return { port: await answering(keeper, log), log, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

/** The server's port, once it answers there. */
async function answering(keeper: ChildProcess, log: () => string): Promise<number> {
  const deadline = Date.now() + START_MS;
  let failure: string | undefined;
  keeper.once('error', (error) => {
    failure = error.message;
  });
  keeper.once('exit', (code, signal) => {
    failure = `it ended with ${signal ?? `code ${code}`}`;
  });
  while (Date.now() < deadline && failure === undefined) {
    const port = /HTTP server listening on http:\/\/127\.0\.0\.1:(\d+)/.exec(log())?.[1];
    if (port && (await isHealthy(Number(port)))) return Number(port);
    await delay(50);
  }
  throw new Error(`The workbench did not start: ${failure ?? 'no answer in time'}\n${log().trim()}`);
}

async function isHealthy(port: number): Promise<boolean> {
  try {
    const answer = await fetch(`http://127.0.0.1:${port}/healthz`, { signal: AbortSignal.timeout(5_000) });
    return answer.ok;
  } catch {
    return false;
  }
}

/** Waits until no process of the group is left. */
async function gone(keeper: ChildProcess, grouped: boolean): Promise<void> {
  const deadline = Date.now() + STOP_MS;
  while (Date.now() < deadline) {
    const ended = keeper.exitCode !== null || keeper.signalCode !== null;
    if (ended && !(grouped && groupLives(keeper.pid))) return;
    await delay(20);
  }
}

function groupLives(leader: number | undefined): boolean {
  if (leader === undefined) return false;
  try {
    process.kill(-leader, 0);
    return true;
  } catch {
    return false;
  }
}

function ownPlaces(home: string): string[] {
  return [
    ...['--config', join(home, 'config.yaml')],
    ...['--user-data-dir', join(home, 'user')],
    ...['--extensions-dir', join(home, 'extensions')],
  ];
}

/** Our environment, less what would change how the workbench runs: other editors' and test runners' marks. */
function serverEnvironment(): NodeJS.ProcessEnv {
  const env: NodeJS.ProcessEnv = {};
  for (const [name, value] of Object.entries(process.env))
    if (
      !/^(VSCODE_|VITEST|CODE_SERVER_|ELECTRON_|npm_)/i.test(name) &&
      !/^(NODE_OPTIONS|NODE_ENV|NODE_V8_COVERAGE|PORT|PASSWORD|HASHED_PASSWORD|GITHUB_TOKEN)$/.test(name)
    )
      env[name] = value;
  return env;
}
