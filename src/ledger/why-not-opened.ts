import { LedgerError } from './store.ts';

/** Primary result codes of SQLite (sqlite.org/rescode.html); an extended code has its primary in the low byte. */
const BUSY = 5;
const CORRUPT = 11;
const NOT_A_DATABASE = 26;
const PRIMARY_CODE = 0xff;

const FOLDER_WANTED =
  'WALLHAND_DATA must be a folder on a disk with room that this user may write to, such as WALLHAND_DATA=./data.';

/** Why a ledger can't be opened, in a sentence for whoever starts the program: what is wrong, what would do. */
export function whyNotOpened(file: string, error: unknown): unknown {
  const cause = error instanceof LedgerError ? error.cause : error;
  if (!(cause instanceof Error && 'errcode' in cause)) return error;
  return new LedgerError(sentenceFor(file, Number(cause.errcode) & PRIMARY_CODE, cause.message), { cause });
}

/** Why the folder of the ledgers can't be had. */
export function whyNoFolder(folder: string, error: unknown): LedgerError {
  const said = error instanceof Error && 'code' in error ? ` (${error.code})` : '';
  return new LedgerError(`The ledgers can't be kept in ${folder}${said}: ${FOLDER_WANTED}`, { cause: error });
}

function sentenceFor(file: string, code: number, said: string): string {
  if (code === BUSY)
    return `The ledger ${file} is in use by another process, and one ledger has one writer: stop the other one first, or set another folder, such as WALLHAND_DATA=./data-2.`;
  if (code === CORRUPT || code === NOT_A_DATABASE)
    return `The ledger ${file} is damaged or is no ledger (${said}), and was left as it is: put a sound copy in its place, or move it away to begin a new one.`;
  return `The ledger ${file} can't be opened (${said}): ${FOLDER_WANTED}`;
}
