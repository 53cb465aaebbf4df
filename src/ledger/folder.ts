import { existsSync, mkdirSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { whyNoFolder } from './why-not-opened.ts';

/** People's names and addresses are in it: nobody but its owner reads it. */
const OWNER_ONLY = 0o700;

/**
 * Makes the folder of the ledgers, with those above it. Step by step, since `recursive` never comes back
 * where a parent is there and takes no folder (seen on Linux, under /proc).
 */
export function makeFolder(folder: string): void {
  try {
    const missing: string[] = [];
    for (let at = resolve(folder); !existsSync(at) && at !== dirname(at); at = dirname(at)) missing.push(at);
    for (const each of missing.toReversed()) mkdirSync(each, { mode: OWNER_ONLY });
    if (!statSync(folder).isDirectory()) throw new TypeError('a file of this name is in its place');
  } catch (error) {
    throw whyNoFolder(folder, error);
  }
}
