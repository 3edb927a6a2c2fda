/**
 * Bundles what the extension ships into dist/: host, server and its worker, command line, webview, pages of findings.
 * Run by `npm run bundle`; with `--watch` it stays and bundles again on every change.
 */
import { copyFileSync, existsSync, globSync, mkdirSync, rmSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { type BuildOptions, build, context } from 'esbuild';

const watch = process.argv.includes('--watch');

const common: BuildOptions = {
  bundle: true,
  minify: !watch,
  sourcemap: watch ? 'inline' : false,
  legalComments: 'none',
  logLevel: 'warning',
};

const node: BuildOptions = {
  ...common,
  define: { 'import.meta.dirname': '__dirname', 'import.meta.filename': '__filename' },
  platform: 'node',
  format: 'cjs',
  target: 'node20',
  mainFields: ['module', 'main'],
};

const browser: BuildOptions = { ...common, platform: 'browser', format: 'iife', target: 'chrome120' };

const bundles: readonly (BuildOptions & { entryPoints: [string]; outfile: string })[] = [
  { ...node, entryPoints: ['client/extension.ts'], outfile: 'dist/extension.cjs', external: ['vscode'] },
  { ...node, entryPoints: ['server/main-node.ts'], outfile: 'dist/server.cjs' },
  { ...node, entryPoints: ['server/reckoning/worker-main.ts'], outfile: 'dist/reckoner.cjs' },
  {
    ...node,
    entryPoints: ['server/cli/main.ts'],
    outfile: 'dist/cli.cjs',
    banner: { js: '#!/usr/bin/env node' },
  },
  { ...browser, entryPoints: ['client/webview/main.ts'], outfile: 'dist/webview.js' },
  { ...browser, entryPoints: ['client/webview/style/webview.css'], outfile: 'dist/webview.css' },
  { ...browser, entryPoints: ['client/webview/stand-in/stand-in.ts'], outfile: 'dist/stand-in/stand-in.js' },
];

function copyFindingPages(): number {
  rmSync('dist/findings', { recursive: true, force: true });
  mkdirSync('dist/findings', { recursive: true });
  const pages = globSync('language/**/*.md');
  for (const page of pages) copyFileSync(page, join('dist/findings', basename(page)));
  return pages.length;
}

function reportSizes(): void {
  for (const { outfile } of bundles) {
    if (existsSync(outfile))
      console.log(`${outfile.padEnd(28)} ${(statSync(outfile).size / 1024).toFixed(0).padStart(6)} KB`);
  }
}

const present = bundles.filter(({ entryPoints: [entry] }) => {
  if (existsSync(entry)) return true;
  console.warn(`skipped: ${entry} is not there`);
  return false;
});

const pages = copyFindingPages();
if (watch) {
  for (const options of present) await (await context(options)).watch();
  console.log('watching');
} else {
  // One bundle that fails does not keep the others from being made; esbuild has told why.
  const results = await Promise.allSettled(present.map((options) => build(options)));
  if (results.some(({ status }) => status === 'rejected')) process.exitCode = 1;
  reportSizes();
  console.log(`dist/findings                ${String(pages).padStart(6)} pages`);
}
