import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** The suites of the core alone, for `npm run mutate`: each change of its code must turn one of them red. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: { include: ['test/core/**/*.test.ts'], testTimeout: 60_000 },
});
