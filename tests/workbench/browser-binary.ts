import {
  constants,
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { access } from 'node:fs/promises';
import { delimiter, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { createBrotliDecompress } from 'node:zlib';
import { MODULES_DIR } from './places.ts';
import { runCommand } from './run-command.ts';

/** A browser that starts on this machine. */
export interface BrowserBinary {
  readonly path: string;
  /** Variables it needs beside our own environment. */
  readonly env: Readonly<Record<string, string>>;
  /** What it says of itself, and where it came from: for people. */
  readonly description: string;
}

const NAMES_ON_PATH = [
  'chromium-headless-shell',
  'chrome-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
];
const KNOWN_PLACES: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
};
const PACKED_DIR = join(MODULES_DIR, '@sparticuz', 'chromium', 'bin');
const UNPACKED_DIR = join(MODULES_DIR, '.chromium');
const FONTS_FILE = 'fonts-here.conf';
const UNPACK_MS = 5 * 60_000;
const VERSION_MS = 60_000;

/**
 * A Chromium for the tests: the one `SLATWRIGHT_CHROMIUM` names, else one on the path, else the one that
 * comes with the workbench's packages (Linux on x64; `ensureInstalled` first), with the shared libraries and
 * the fonts packed beside it where the machine has none. Each is tried before it is answered.
 * Throws, saying what was tried and what to do, when none starts.
 */
export async function findBrowser(): Promise<BrowserBinary> {
  const named = process.env.SLATWRIGHT_CHROMIUM;
  if (named) {
    const tried = await tryBrowser(named, {});
    if (tried.version === undefined)
      throw new Error(`SLATWRIGHT_CHROMIUM names ${named}, which does not start:\n${tried.why}`);
    return { path: named, env: {}, description: `${tried.version}, as SLATWRIGHT_CHROMIUM says` };
  }
  const failures: string[] = [];
  for (const path of [...(await onPath(NAMES_ON_PATH)), ...(KNOWN_PLACES[process.platform] ?? [])]) {
    if (!existsSync(path)) continue;
    const tried = await tryBrowser(path, {});
    if (tried.version !== undefined) return { path, env: {}, description: `${tried.version}, ${path}` };
    failures.push(`${path}: ${tried.why}`);
  }
  const packed = await packedBrowser(failures);
  if (packed) return packed;
  throw new Error(
    [
      'No browser that starts was found for the workbench.',
      ...failures.map((failure) => `  ${failure}`),
      whatToDo(),
    ].join('\n'),
  );
}

async function packedBrowser(failures: string[]): Promise<BrowserBinary | undefined> {
  if (process.platform !== 'linux' || process.arch !== 'x64' || !existsSync(PACKED_DIR)) return undefined;
  await unpack();
  const path = join(UNPACKED_DIR, 'chromium');
  const fonts: Record<string, string> = existsSync('/etc/fonts/fonts.conf')
    ? {}
    : { FONTCONFIG_FILE: join(UNPACKED_DIR, FONTS_FILE), HOME: process.env.HOME ?? UNPACKED_DIR };
  const libraries = { LD_LIBRARY_PATH: join(UNPACKED_DIR, 'libraries', 'lib') };
  for (const [env, origin] of [
    [fonts, 'from the npm package @sparticuz/chromium'],
    [{ ...fonts, ...libraries }, 'from the npm package @sparticuz/chromium, with the libraries beside it'],
  ] as const) {
    const tried = await tryBrowser(path, env);
    if (tried.version !== undefined) return { path, env, description: `${tried.version}, ${origin}` };
    failures.push(`${path} (${origin}): ${tried.why}`);
  }
  return undefined;
}

/** Unpacks the browser once, beside the packages; a half unpacked one is never left in place. */
async function unpack(): Promise<void> {
  if (existsSync(UNPACKED_DIR)) return;
  const temporary = `${UNPACKED_DIR}-${process.pid}`;
  rmSync(temporary, { recursive: true, force: true });
  mkdirSync(temporary, { recursive: true });
  try {
    await decompress('chromium.br', join(temporary, 'chromium'), 0o755);
    await unpackTar('swiftshader.tar.br', temporary);
    await unpackTar('fonts.tar.br', join(temporary, 'fonts'));
    await unpackTar('al2023.tar.br', join(temporary, 'libraries'));
    writeFileSync(join(temporary, FONTS_FILE), fontsFile());
    renameSync(temporary, UNPACKED_DIR);
  } catch (error) {
    rmSync(temporary, { recursive: true, force: true });
    // Another process may have been first.
    if (!existsSync(UNPACKED_DIR)) throw error;
  }
}

/** Where the packed fonts are; the file packed beside them names folders that only some hosts have. */
function fontsFile(): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>/usr/share/fonts</dir>
  <dir>${join(UNPACKED_DIR, 'fonts')}</dir>
  <cachedir>${join(UNPACKED_DIR, 'fonts-cache')}</cachedir>
</fontconfig>
`;
}

async function unpackTar(name: string, into: string): Promise<void> {
  mkdirSync(into, { recursive: true });
  const tar = join(into, 'packed.tar');
  await decompress(name, tar);
  const result = await runCommand('tar', ['-xf', tar], { cwd: into, timeout: UNPACK_MS });
  rmSync(tar);
  if (result.code !== 0) throw new Error(`tar ended with code ${result.code} on ${name}:\n${result.output}`);
}

async function decompress(name: string, to: string, mode = 0o644): Promise<void> {
  await pipeline(
    createReadStream(join(PACKED_DIR, name)),
    createBrotliDecompress(),
    createWriteStream(to, { mode }),
  );
}

async function tryBrowser(
  path: string,
  env: Readonly<Record<string, string>>,
): Promise<{ version: string; why?: undefined } | { version?: undefined; why: string }> {
  try {
    const result = await runCommand(path, ['--version'], {
      cwd: '/',
      env: { ...process.env, ...env },
      timeout: VERSION_MS,
    });
    const last = result.output.trim().split('\n').at(-1) ?? '';
    if (result.code === 0 && last !== '') return { version: last };
    return { why: last || `ended with code ${result.code}` };
  } catch (error) {
    return { why: (error as Error).message };
  }
}

async function onPath(names: readonly string[]): Promise<string[]> {
  const found: string[] = [];
  for (const name of names)
    for (const dir of (process.env.PATH ?? '').split(delimiter)) {
      const path = join(dir, name);
      if (
        await access(path, constants.X_OK).then(
          () => true,
          () => false,
        )
      ) {
        found.push(path);
        break;
      }
    }
  return found;
}

function whatToDo(): string {
  if (process.platform === 'linux' && existsSync('/etc/debian_version')) {
    const sudo = process.getuid?.() === 0 ? '' : 'sudo ';
    return `Install one and try again: ${sudo}apt-get update && ${sudo}apt-get install -y chromium-headless-shell`;
  }
  return 'Install Chromium or Chrome, or name one in SLATWRIGHT_CHROMIUM, and try again.';
}
