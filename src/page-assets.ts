import { readFileSync } from 'node:fs';
import { ASSET_FILES } from './chat/asset-files.ts';
import type { Asset } from './doors.ts';

/** The chat page's files, read once at the start. On Workers they are bundled instead. */
export function pageAssets(): Record<string, Asset> {
  return Object.fromEntries(
    ASSET_FILES.map(({ path, type, file }) => [
      path,
      { type, body: readFileSync(new URL(`./chat/${file}`, import.meta.url), 'utf8') },
    ]),
  );
}
