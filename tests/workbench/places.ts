import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** This folder, absolute. */
export const WORKBENCH_ROOT = dirname(fileURLToPath(import.meta.url));

/** The repository, absolute. */
export const REPO_ROOT = join(WORKBENCH_ROOT, '..', '..');

/** Where results are left; not kept under version control. */
export const OUT_DIR = join(REPO_ROOT, 'out');

/** Where the workbench and the browser are installed; not kept under version control. */
export const MODULES_DIR = join(WORKBENCH_ROOT, 'node_modules');

/** The packaged extension. */
export const VSIX_PATH = join(OUT_DIR, 'slatwright.vsix');
