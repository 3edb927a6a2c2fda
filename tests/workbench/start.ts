/**
 * `npm start`: builds and packs the extension, opens it with an example job in a real VS Code workbench, prints the
 * example's findings and the workbench's address, and runs until Ctrl+C. Without a terminal, or with CI=true, it
 * drives that workbench once under a headless browser, saves what it saw as out/start.png, and ends: with 0 when
 * the picture came, else with 1.
 */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import {
  ensureInstalled,
  launchBrowser,
  nodeBinary,
  OPEN_PREVIEW,
  OUT_DIR,
  openPage,
  packExtension,
  REPO_ROOT,
  runCommand,
  runPaletteCommand,
  screenshot,
  startWorkbench,
  type Workbench,
  waitForEditor,
  waitForPicture,
} from './index.ts';

const EXAMPLES = join(REPO_ROOT, 'examples');
const EXAMPLE = 'bicycle-court.slat';
const SCREENSHOT = join(OUT_DIR, 'start.png');
/** How long the picture may take to come up by itself before the command is run. */
const BY_ITSELF_MS = 60_000;
const CHECK_MS = 60_000;

const say = (line: string): void => console.log(line);

async function main(): Promise<void> {
  // Leaving through exit ends what was started: each of them waits for that.
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const)
    process.once(signal, () => process.exit(signal === 'SIGINT' ? 130 : 143));

  const interactive = process.stdout.isTTY === true && process.env.CI !== 'true';
  const vsix = await packExtension(say);
  await ensureInstalled(say);
  await printFindings();
  say('Starting the workbench ...');
  const workbench = await startWorkbench({
    vsix,
    folder: EXAMPLES,
    port: Number(process.env.PORT ?? 0),
    settings: { 'slatwright.preview.openAutomatically': true },
    progress: say,
  });
  if (interactive) await serve(workbench);
  else await driveOnce(workbench);
}

async function printFindings(): Promise<void> {
  const file = join('examples', EXAMPLE);
  say(`\nFindings of ${file}:`);
  const result = await runCommand(nodeBinary(), [join('dist', 'cli.cjs'), 'check', file], {
    cwd: REPO_ROOT,
    timeout: CHECK_MS,
  });
  say(result.output.trim() || 'none');
  if (result.code !== 0 && result.code !== 1)
    throw new Error(`\`slatwright check ${file}\` could not run (code ${result.code}).`);
  say('');
}

async function serve(workbench: Workbench): Promise<void> {
  const address = workbench.addressOf(EXAMPLE);
  say(`The workbench is at\n\n  ${address}\n`);
  say('What you save there is saved in examples/. Ctrl+C ends it.');
  openInBrowser(address);
  await new Promise(() => {
    // Until a signal comes.
    setInterval(() => {}, 60_000);
  });
}

/** Shows the address in the desktop's own browser, where there is a desktop; the printed address does else. */
function openInBrowser(address: string): void {
  const [program, ...args] =
    process.platform === 'darwin'
      ? ['open', address]
      : process.env.DISPLAY || process.env.WAYLAND_DISPLAY
        ? ['xdg-open', address]
        : [];
  if (!program) return;
  const child = spawn(program, args, { stdio: 'ignore', detached: true });
  child.on('error', () => {});
  child.unref();
}

async function driveOnce(workbench: Workbench): Promise<void> {
  say(`The workbench is at ${workbench.url}`);
  say('Driving it once under a headless browser ...');
  const browser = await launchBrowser();
  const page = await openPage(browser, workbench.addressOf(EXAMPLE));
  try {
    await waitForEditor(page, EXAMPLE);
    const byItself = await waitForPicture(page, BY_ITSELF_MS).then(
      () => true,
      () => false,
    );
    if (!byItself) {
      await runPaletteCommand(page, OPEN_PREVIEW);
      await waitForPicture(page);
    }
    // Let fonts and the first fit settle before the picture is taken.
    await page.waitForTimeout(1_000);
    say(`The picture came ${byItself ? 'by itself' : `with \`${OPEN_PREVIEW}\``}.`);
  } catch (error) {
    say(workbench.log());
    throw error;
  } finally {
    await screenshot(page, SCREENSHOT);
    say(`Saved ${SCREENSHOT}`);
    await browser.close();
    await workbench.stop();
  }
}

main().then(
  () => process.exit(0),
  (error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  },
);
