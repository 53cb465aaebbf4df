import type { Entry } from '../../flows/entry.ts';
import type { Store } from './store.ts';

const OF_AUTHOR = 'SELECT rowid AS at, entries FROM turn WHERE author = ? AND message IS NOT NULL';
const BLANK = 'UPDATE turn SET message = NULL, reply = NULL, entries = ? WHERE rowid = ?';

/** Blanks a person's words and name; ids and figures stay, so the job still folds. Gives the number of turns blanked. */
export const erase = (store: Store, author: string): number =>
  store.transaction(() => {
    const turns = store.all<{ at: number; entries: string }>(OF_AUTHOR, author);
    for (const turn of turns) {
      const entries = (JSON.parse(turn.entries) as Entry[]).map((entry) => ({
        ...entry,
        said: '',
        by: author,
      }));
      store.run(BLANK, JSON.stringify(entries), turn.at);
    }
    return turns.length;
  });
