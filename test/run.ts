import { startVitest } from 'vitest/node';

/** The README's test command: every project, then one closing line that any reader of logs can count. */
process.env.WRANGLER_SEND_METRICS = 'false';

const filters = process.argv.slice(2);
const vitest = await startVitest('test', filters, { run: true, watch: false });
const modules = vitest.state.getTestModules();

let passed = 0;
let failed = 0;
let skipped = 0;
const perProject = new Map<string, number>();
for (const module of modules) {
  if (module.errors().length > 0) failed += 1;
  for (const test of module.children.allTests()) {
    const { state } = test.result();
    if (state === 'passed') passed += 1;
    else if (state === 'failed') failed += 1;
    else skipped += 1;
    perProject.set(module.project.name, (perProject.get(module.project.name) ?? 0) + 1);
  }
}
const unhandled = vitest.state.getUnhandledErrors().length;
await vitest.close();

// A project that ran nothing is a failure, not a silence: the whole suite is what the README promises.
const expected = filters.length > 0 ? [] : ['node', 'workerd', 'browser'];
for (const project of expected) {
  if (perProject.get(project)) continue;
  console.error(`The ${project} project ran no test.`);
  failed += 1;
}
for (const [project, count] of perProject) console.log(`${project}: ${count} tests`);
console.log(`${passed} passed, ${failed + unhandled} failed, ${skipped} skipped`);
process.exit(failed + unhandled > 0 || passed === 0 ? 1 : 0);
