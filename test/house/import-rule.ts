import { cruise, type ICruiseOptions, type ICruiseResult } from 'dependency-cruiser';

/**
 * The import rule: core imports nothing, flows imports core, the machine, the schemas and pure libraries, src imports both,
 * nothing imports test, no cycles. Read with swc, since the cruiser can't use TypeScript 7 and would
 * silently read no module at all; so the count is asserted too.
 */
const FLOWS_MAY_USE = 'xstate|zod|fraction\\.js|fuse\\.js|minisearch';

const RULES: ICruiseOptions = {
  parser: 'swc',
  doNotFollow: { path: 'node_modules' },
  tsPreCompilationDeps: true,
  validate: true,
  enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'default'] },
  ruleSet: {
    forbidden: [
      {
        name: 'core-imports-nothing',
        severity: 'error',
        from: { path: '^core/' },
        to: { pathNot: '^core/' },
      },
      {
        name: 'flows-imports-core-and-pure-libraries',
        severity: 'error',
        from: { path: '^flows/' },
        to: { pathNot: `^(core|flows)/|^node_modules/(${FLOWS_MAY_USE})(/|$)` },
      },
      {
        name: 'nothing-imports-test',
        severity: 'error',
        from: { pathNot: '^test/' },
        to: { path: '^test/' },
      },
      { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
      {
        name: 'resolvable',
        severity: 'error',
        from: {},
        to: { couldNotResolve: true, pathNot: '^(cloudflare:|node:)' },
      },
    ],
  },
};

/** What the rule finds in these folders: broken imports in words, and how many modules of each were read. */
export async function readImports(
  folders: readonly string[],
  baseDir = process.cwd(),
): Promise<{ broken: string[]; modules: Map<string, number> }> {
  const { output } = await cruise([...folders], { ...RULES, baseDir });
  const result = output as ICruiseResult;
  const modules = new Map(folders.map((folder) => [folder, 0]));
  for (const { source } of result.modules) {
    const folder = source.split('/')[0] ?? '';
    if (modules.has(folder)) modules.set(folder, (modules.get(folder) ?? 0) + 1);
  }
  const broken = result.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`);
  return { broken, modules };
}

if (import.meta.main) {
  const { broken, modules } = await readImports(['core', 'flows', 'src']);
  const counts = [...modules].map(([folder, count]) => `${folder} ${count}`).join(', ');
  const unread = [...modules].filter(([, count]) => count < 10).map(([folder]) => folder);
  for (const line of broken) console.error(line);
  for (const folder of unread)
    console.error(`import rule: fewer than ten modules of ${folder} were read; the rule saw nothing`);
  console.log(`import rule: ${counts} modules, ${broken.length} broken`);
  process.exitCode = broken.length + unread.length > 0 ? 1 : 0;
}
