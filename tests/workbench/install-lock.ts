import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';
import { WORKBENCH_ROOT } from './places.ts';

const LOCK_DIR = join(WORKBENCH_ROOT, '.install-lock');
const OWNER_FILE = join(LOCK_DIR, 'pid');
/** A lock without an owner's number is one that is being taken, unless it has been so for this long. */
const OWNERLESS_MS = 5_000;

/**
 * Does `work` while no other process of this machine does the same, waiting up to `timeout` milliseconds
 * for its turn. A lock left by a process that is gone is taken over.
 */
export async function withInstallLock<T>(
  timeout: number,
  onWait: () => void,
  work: () => Promise<T>,
): Promise<T> {
  const deadline = Date.now() + timeout;
  let waited = false;
  while (!take()) {
    if (ownerIsGone()) {
      rmSync(LOCK_DIR, { recursive: true, force: true });
      continue;
    }
    if (Date.now() > deadline)
      throw new Error(
        `Another process has been installing the workbench for too long. If none is, remove ${LOCK_DIR}.`,
      );
    if (!waited) onWait();
    waited = true;
    await delay(250);
  }
  const release = (): void => rmSync(LOCK_DIR, { recursive: true, force: true });
  process.once('exit', release);
  try {
    return await work();
  } finally {
    process.off('exit', release);
    release();
  }
}

function take(): boolean {
  try {
    mkdirSync(LOCK_DIR);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
  writeFileSync(OWNER_FILE, String(process.pid));
  return true;
}

function ownerIsGone(): boolean {
  try {
    const owner = Number.parseInt(readFileSync(OWNER_FILE, 'utf8'), 10);
    if (Number.isNaN(owner)) return lockIsOld();
    process.kill(owner, 0);
    return false;
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'ESRCH') return true;
    return code === 'ENOENT' && lockIsOld();
  }
}

function lockIsOld(): boolean {
  const stat = statSync(LOCK_DIR, { throwIfNoEntry: false });
  return stat !== undefined && Date.now() - stat.mtimeMs > OWNERLESS_MS;
}
