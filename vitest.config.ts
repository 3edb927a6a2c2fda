import { defineConfig } from 'vitest/config';

const WORKBENCH = 'tests/workbench/**/*.test.ts';
const NEVER = ['**/node_modules/**', 'dist/**', 'out/**'];

/**
 * Two projects, run one after the other by `npm test`: what runs in this process, on all cores; then what
 * drives a real editor, which wants the machine for itself. Time limits are for a busy machine of two cores.
 */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['{client,language,server,tests}/**/*.test.ts'],
          exclude: [...NEVER, WORKBENCH],
          environment: 'node',
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
          testTimeout: 240_000,
          // Keys and clicks of a driven browser get lost on a busy machine; what is wrong fails every time.
          retry: 2,
          // The first time, 0.8 GB are installed.
          hookTimeout: 1_800_000,
        },
      },
    ],
  },
});
