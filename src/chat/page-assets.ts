import { readFileSync } from 'node:fs';
import { ASSET_TYPES } from './asset-files.ts';

/** The chat page's files, read once at the start. On Workers the platform keeps them. */
export function pageAssets(): (file: string) => Promise<string> {
  const bodies = new Map(
    Object.keys(ASSET_TYPES).map((file) => [
      file,
      readFileSync(new URL(`./browser/${file}`, import.meta.url), 'utf8'),
    ]),
  );
  return async (file) => bodies.get(file) ?? '';
}
