import { spawn } from 'node:child_process';

export interface RunOptions {
  readonly cwd: string;
  readonly env?: NodeJS.ProcessEnv;
  /** Milliseconds after which the command and all it started are ended. */
  readonly timeout: number;
  /** Let the command write to our own output as it goes; otherwise it is collected. */
  readonly show?: boolean;
}

export interface RunResult {
  /** Exit code; null when a signal or the time limit ended it. */
  readonly code: number | null;
  /** Standard output and error, in order of arrival; empty when shown. */
  readonly output: string;
  readonly timedOut: boolean;
}

/**
 * Runs a program to its end in a process group of its own. Rejects only when it could not be started;
 * a failing program resolves with its code.
 */
export function runCommand(
  program: string,
  args: readonly string[],
  options: RunOptions,
): Promise<RunResult> {
  return new Promise((resolve, reject) => {
    const grouped = process.platform !== 'win32';
    const child = spawn(program, args, {
      cwd: options.cwd,
      env: options.env ?? process.env,
      stdio: ['ignore', options.show ? 'inherit' : 'pipe', options.show ? 'inherit' : 'pipe'],
      detached: grouped,
    });
    let output = '';
    const collect = (chunk: Buffer): void => {
      output += chunk.toString();
    };
    child.stdout?.on('data', collect);
    child.stderr?.on('data', collect);

    let timedOut = false;
    const end = (): void => killTree(child.pid, grouped);
    const timer = setTimeout(() => {
      timedOut = true;
      end();
    }, options.timeout);
    process.once('exit', end);
    const settle = (): void => {
      clearTimeout(timer);
      process.off('exit', end);
    };
    child.once('error', (error) => {
      settle();
      reject(error);
    });
    child.once('close', (code) => {
      settle();
      resolve({ code, output, timedOut });
    });
  });
}

/** Ends a process, and its whole group where it leads one. Does nothing when it is gone already. */
export function killTree(pid: number | undefined, grouped: boolean): void {
  if (pid === undefined) return;
  try {
    process.kill(grouped ? -pid : pid, 'SIGKILL');
  } catch {
    // Already gone.
  }
}

/**
 * Runs npm to its end, with the node and the npm that run this program where npm tells which.
 * Same contract as `runCommand`.
 */
export function runNpm(node: string, args: readonly string[], options: RunOptions): Promise<RunResult> {
  const script = process.env.npm_execpath;
  if (script?.endsWith('npm-cli.js')) return runCommand(node, [script, ...args], options);
  return runCommand(process.platform === 'win32' ? 'npm.cmd' : 'npm', args, options);
}
