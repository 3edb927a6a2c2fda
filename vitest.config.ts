import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['{client,language,server,tests}/**/*.test.ts'],
    exclude: ['**/node_modules/**', 'dist/**', 'out/**'],
    environment: 'node',
    testTimeout: 20_000,
  },
});
