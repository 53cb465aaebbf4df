import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Everything under a folder with what is in it, so that a test can say that nothing was touched. */
export function contents(folder: string): [string, string][] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .sort()
    .filter((name) => statSync(join(folder, name), { throwIfNoEntry: false })?.isFile())
    .map((name) => [
      name,
      createHash('sha256')
        .update(readFileSync(join(folder, name)))
        .digest('hex'),
    ]);
}
