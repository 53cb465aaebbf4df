import { cloudflareTest } from '@cloudflare/vitest-plugin';
import { defineConfig } from 'vitest/config';

// A shared machine can be ten times slower than a quiet one: a limit is there to end what hangs, no more.
const testTimeout = 60_000;

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'node',
          testTimeout,
          include: ['test/**/*.test.ts'],
          exclude: ['test/workerd/**', 'test/browser/**', '**/node_modules/**'],
        },
      },
      {
        // The same suites, and the Worker itself, in the runtime it is deployed to.
        plugins: [
          cloudflareTest({
            main: './test/workerd/main.ts',
            wrangler: { configPath: './wrangler.toml' },
            miniflare: { durableObjects: { LEDGER: { className: 'LedgerObject', useSQLite: true } } },
          }),
        ],
        test: { name: 'workerd', testTimeout, include: ['test/workerd/**/*.test.ts'] },
      },
      {
        // The chat page in a real browser, against the running server.
        test: {
          name: 'browser',
          testTimeout,
          include: ['test/browser/**/*.test.ts'],
          fileParallelism: false,
        },
      },
    ],
  },
});
