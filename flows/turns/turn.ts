import type { Entry } from '../entry.ts';
import type { Offered } from '../open.ts';

/** What one message comes to, before the machine moves: entries to record, lines to say. */
export type Turn = {
  added: Entry[];
  say: string[];
  /** Asked back now; its entry is the last of `added`. */
  offered?: Offered;
  /** Puts the open question in other words this once. */
  asks?: string;
  pauses?: true;
  /** Tells the job so far, whole, before the open question. */
  tellsAll?: true;
};

export const says = (...say: string[]): Turn => ({ added: [], say });
