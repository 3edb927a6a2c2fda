import { existsSync, readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { gzipSync } from 'node:zlib';

const root = resolve(import.meta.dirname, '../..');
const BUNDLES = [
  'dist/extension.cjs',
  'dist/server.cjs',
  'dist/reckoner.cjs',
  'dist/cli.cjs',
  'dist/webview.js',
  'dist/webview.css',
];

/** What is shipped, in bytes and packed. */
export function benchSizes(): void {
  console.log('\nBundles (KB)                 plain    gzip');
  for (const name of BUNDLES) {
    const file = resolve(root, name);
    if (!existsSync(file)) continue;
    const plain = statSync(file).size / 1024;
    const packed = gzipSync(readFileSync(file)).length / 1024;
    console.log(`${name.padEnd(26)} ${plain.toFixed(0).padStart(7)} ${packed.toFixed(0).padStart(7)}`);
  }
  const vsix = resolve(root, 'out/slatwright.vsix');
  if (existsSync(vsix))
    console.log(`out/slatwright.vsix        ${(statSync(vsix).size / 1024).toFixed(0).padStart(7)}`);
}
