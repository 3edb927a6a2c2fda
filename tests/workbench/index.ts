/**
 * A real VS Code workbench (code-server) and a headless Chromium, for `npm start`, the end-to-end tests and the
 * bench. What lives here: installing, starting, driving and ending them. What may not: anything of the extension's
 * own sources; it is met here as its user meets it, as an installed package. Only start.ts and keeper.ts are
 * programs; importing anything else does nothing yet.
 *
 *   const vsix = await packExtension();                       // or SLATWRIGHT_VSIX=/path/to.vsix
 *   const workbench = await startWorkbench({ vsix, folder }); // installs on first use; a copy of a folder
 *   const browser = await launchBrowser();                    // or SLATWRIGHT_CHROMIUM=/path/to/chromium
 *   const page = await openPage(browser, workbench.url, { file: 'job.slat' });
 *   await runPaletteCommand(page, OPEN_PREVIEW);
 *   const picture = await waitForPicture(page);               // a frame locator: picture.locator('svg ...')
 *   await browser.close();
 *   await workbench.stop();
 *
 * How it works:
 * - This folder's own package.json keeps 0.8 GB out of what a build needs. The packages are installed without
 *   running their scripts; the workbench ships its compiled parts. One process installs at a time (install-lock.ts);
 *   a stamp of package-lock.json in node_modules says that it is done.
 * - The tests share one workbench (global-setup.ts), each file with a folder, a browser and a page of its own
 *   (at-bench.ts). What a page sets for the user, as its look, holds for the files after it: put it back.
 * - Each workbench has its user data, extensions and settings in a temporary folder of its own, and a free port of
 *   the loopback address, which the server picks (port 0) and tells. Webviews need a secure context: `localhost`
 *   or `127.0.0.1`.
 * - The server runs under keeper.ts in a process group of its own. When our end of the keeper's input closes, for
 *   whatever reason, the keeper ends the group: not even a killed test run leaves a server behind.
 * - The browser of the npm package needs libnss3, libnspr4 and libexpat; they are packed beside it, with a font,
 *   and are used where the machine has none.
 *
 * What was learned about this workbench:
 * - The command palette does not hear of extensions that turn up while it is open: open it again.
 * - Changes made to settings.json from outside are taken up once, if at all. State settings at the start; change the
 *   theme by the palette (`setTheme`).
 * - An address that names a file (`addressOf`) brings that file alone after a reload; the folder's address (`url`)
 *   brings back all editors, the preview among them, wherever the extension restores it.
 * - A tab that is `.active` is the active one of its group: with a preview open there are two.
 * - Problems and suggestions are virtual lists: only rows in sight are in the page. `innerText` of editor lines has
 *   no-break spaces for spaces.
 * - The webview's inner frame keeps the *name* `pending-frame`; its id is `active-frame`. With the webview focused
 *   the status bar has no line and column: read `.line-numbers.active-line-number`.
 * - Harmless noise on the console: 404 for `vsda`, a missing `spdlog`, refused requests to the extension gallery.
 */

export { addressIn } from './address.ts';
export { launchBrowser } from './browser.ts';
export { type BrowserBinary, findBrowser } from './browser-binary.ts';
export * from './editing.ts';
export { ensureDir, ensureInstalled, isInstalled, type Progress } from './install.ts';
export { nodeBinary } from './node-binary.ts';
export { packExtension } from './pack.ts';
export * from './page.ts';
export { OUT_DIR, REPO_ROOT, VSIX_PATH, WORKBENCH_ROOT } from './places.ts';
export * from './preview.ts';
export * from './problems.ts';
export { type RunOptions, type RunResult, runCommand } from './run-command.ts';
export { PLAIN_TYPING_SETTINGS, QUIET_SETTINGS, type Settings, type Theme } from './settings.ts';
export * from './totals.ts';
export { startWorkbench, type Workbench, type WorkbenchOptions } from './workbench.ts';
