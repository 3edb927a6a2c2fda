import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const WORKBENCH = 'tests/workbench/**/*.test.ts';
const NEVER = ['**/node_modules/**', 'dist/**', 'out/**'];

/** They take longest. Where no run is remembered files go by their size, and these are small: they would come last. */
const LONG = /\/tests\/(?:anything|better|recovery|fit-edits)\/|\/server\/reckoning\//;

/** Begins what takes longest first, so that the cores end together. */
class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isLong = ({ moduleId }: TestSpecification): boolean => LONG.test(moduleId);
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))];
  }
}

/**
 * Two projects, run one after the other by `npm test`: what runs in this process, on all cores; then what
 * drives a real editor, which wants the machine for itself. Time limits are for a busy machine of two cores.
 */
export default defineConfig({
  test: {
    // Left to itself, a machine of two cores would use one.
    maxWorkers: '100%',
    sequence: { sequencer: LongFirst },
    projects: [
      {
        test: {
          name: 'unit',
          include: ['{client,language,server,tests}/**/*.test.ts'],
          exclude: [...NEVER, WORKBENCH],
          environment: 'node',
          // Files share what a core has loaded and warmed: to load it for each anew took longer than most of them.
          isolate: false,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'workbench',
          include: [WORKBENCH],
          exclude: NEVER,
          environment: 'node',
          fileParallelism: false,
          globalSetup: 'tests/workbench/global-setup.ts',
          testTimeout: 240_000,
          // Keys and clicks of a driven browser get lost on a busy machine; what is wrong fails every time.
          retry: 2,
          // Opens a browser, the workbench in it and the preview.
          hookTimeout: 600_000,
        },
      },
    ],
  },
});
