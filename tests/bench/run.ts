import { execFileSync } from 'node:child_process';
import { cpus, loadavg } from 'node:os';
import { resolve } from 'node:path';
import { benchCutting } from './cutting-bench.ts';
import { benchServer } from './server-bench.ts';
import { benchSizes } from './sizes-bench.ts';
import { benchWebview } from './webview-bench.ts';
import { benchWorkbench } from './workbench-bench.ts';

const asked = process.argv.slice(2);
const wanted = (part: string): boolean => asked.length === 0 || asked.includes(part);

execFileSync('npm', ['run', '--silent', 'build'], {
  cwd: resolve(import.meta.dirname, '../..'),
  stdio: 'ignore',
});
console.log(
  `${cpus().length} cores, ${cpus()[0]?.model.trim()}, Node ${process.version}, load ${(loadavg()[0] ?? 0).toFixed(1)}`,
);
if (wanted('sizes')) benchSizes();
if (wanted('cutting')) benchCutting();
if (wanted('server')) await benchServer();
if (wanted('webview')) await benchWebview();
if (wanted('workbench')) await benchWorkbench();
