import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Wide suites that plan thousands of jobs: they would turn an hour into a day, and what they catch the narrow ones must. */
const WIDE = [
  'explain',
  'what-if',
  'whole/any-job.test.ts',
  'caution/random-jobs.test.ts',
  'caution/contradictions.test.ts',
];

/** The narrow suites of the core, for `npm run mutate`: each change of its code must turn one of them red. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['test/core/**/*.test.ts'],
    exclude: [
      '**/node_modules/**',
      ...WIDE.map((each) => `test/core/${each}${each.endsWith('.ts') ? '' : '/**'}`),
    ],
    setupFiles: ['test/mutation/fewer-runs.ts'],
    testTimeout: 20_000,
  },
});
