import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readImports } from './import-rule.ts';

/** Some four hundred modules are read: a second alone, many on a machine that does seven other things. */
const READING_ALL = 60_000;

test(
  'the three folders keep the import rule, and every one of them is really read',
  async () => {
    const { broken, modules } = await readImports(['core', 'flows', 'src']);
    expect(broken).toEqual([]);
    for (const [folder, count] of modules) expect(count, folder).toBeGreaterThan(10);
  },
  READING_ALL,
);

const BREACHES: [name: string, path: string, text: string][] = [
  [
    'core-imports-nothing',
    'core/a.ts',
    "import { readFileSync } from 'node:fs';\nexport const a = readFileSync;\n",
  ],
  ['core-imports-nothing', 'core/a.ts', "import { b } from '../flows/b.ts';\nexport const a = b;\n"],
  [
    'flows-imports-core-and-pure-libraries',
    'flows/b.ts',
    "import { c } from '../src/c.ts';\nexport const b = c;\n",
  ],
  ['nothing-imports-test', 'src/c.ts', "import { d } from '../test/d.ts';\nexport const c = d;\n"],
];

test.each(BREACHES)('the rule %s catches a breach in %s', async (name, path, text) => {
  const house = mkdtempSync(join(tmpdir(), 'house-'));
  try {
    for (const [at, export_] of [
      ['core/a.ts', 'a'],
      ['flows/b.ts', 'b'],
      ['src/c.ts', 'c'],
      ['test/d.ts', 'd'],
    ] as const) {
      mkdirSync(join(house, at, '..'), { recursive: true });
      writeFileSync(join(house, at), at === path ? text : `export const ${export_} = 1;\n`);
    }
    const { broken } = await readImports(['core', 'flows', 'src', 'test'], house);
    expect(
      broken.some((line) => line.startsWith(`${name}: ${path}`)),
      broken.join('\n'),
    ).toBe(true);
  } finally {
    rmSync(house, { recursive: true });
  }
});
