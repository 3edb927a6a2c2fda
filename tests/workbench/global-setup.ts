import { mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { PLAIN_TYPING_SETTINGS, packExtension, startWorkbench } from './index.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** The one workbench that all files of these tests are served by, each a folder of its own. */
    workbench: { readonly port: number };
  }
}

/** Ends what was started, where it was. */
let end: (() => Promise<void>) | undefined;

/** Packs the extension and starts a workbench with it, once for all files of the project. */
export async function setup(project: TestProject): Promise<void> {
  const vsix = await packExtension(console.log);
  // An address names the folder to open, so that the server's own may be empty.
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'slatwright-no-')));
  const discard = (): void => rmSync(folder, { recursive: true, force: true });
  try {
    const settings = PLAIN_TYPING_SETTINGS;
    const workbench = await startWorkbench({ vsix, folder, settings, progress: console.log });
    project.provide('workbench', { port: workbench.port });
    end = async () => {
      if (project.vitest.state.getCountOfFailedTests() > 0) console.log(workbench.log());
      await workbench.stop();
      discard();
    };
  } catch (error) {
    discard();
    throw error;
  }
}

/** Ends the workbench. Where a test has failed, the server's own words are shown. */
export async function teardown(): Promise<void> {
  await end?.();
}
