/**
 * A program, run by workbench.ts: runs `node ARGUMENTS...` and ends it, and all it started, as soon as
 * standard input closes. That happens by itself when the process that holds the other end is gone, however it
 * went, so that no workbench outlives the run that wanted it. Leads a process group of its own.
 */
import { spawn } from 'node:child_process';
import { killTree } from './run-command.ts';

const grouped = process.platform !== 'win32';
const child = spawn(process.execPath, process.argv.slice(2), { stdio: ['ignore', 'inherit', 'inherit'] });

function end(): void {
  if (!grouped) killTree(child.pid, false);
  killTree(process.pid, grouped);
}

child.once('error', end);
child.once('exit', end);
process.stdin.once('end', end);
process.stdin.once('error', end);
process.stdin.resume();
