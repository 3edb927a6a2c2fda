import { existsSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { ensureDir, type Progress, seconds } from './install.ts';
import { nodeBinary } from './node-binary.ts';
import { OUT_DIR, REPO_ROOT, VSIX_PATH } from './places.ts';
import { runNpm } from './run-command.ts';

const PACK_MS = 10 * 60_000;

/**
 * The packaged extension's path: the package that `SLATWRIGHT_VSIX` names, else a new one, built and packed now by
 * the repository's own `npm run package`. Throws with what that printed when it fails.
 */
export async function packExtension(progress: Progress = () => {}): Promise<string> {
  const given = process.env.SLATWRIGHT_VSIX;
  if (given) {
    if (!existsSync(given)) throw new Error(`SLATWRIGHT_VSIX names ${given}, which is not there.`);
    return resolve(given);
  }
  progress('Building and packing the extension ...');
  const start = Date.now();
  ensureDir(OUT_DIR);
  rmSync(VSIX_PATH, { force: true });
  const result = await runNpm(nodeBinary(), ['run', 'package'], { cwd: REPO_ROOT, timeout: PACK_MS });
  if (result.code !== 0 || !existsSync(VSIX_PATH))
    throw new Error(`The extension could not be packed (\`npm run package\`):\n${result.output.trim()}`);
  progress(`Packed in ${seconds(start)}.`);
  return VSIX_PATH;
}
