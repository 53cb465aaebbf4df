import type { Entry } from '../../flows/entry.ts';
import type { CrewDefaults } from '../../flows/step-shape.ts';
import { migrate } from './migrations.ts';
import type { Store } from './store.ts';

/** One message in and what came of it. `message` and `reply` are null once their author is erased. */
type Turn = {
  conversation: string;
  n: number;
  id: string;
  /** The author's id: ids stay when a person is erased. */
  author: string;
  message: string;
  entries: readonly Entry[];
  /** The response as sent, byte for byte. */
  reply: string;
  awaiting: string | null;
  /** The id of the plan that stands after this turn. */
  plan: string | null;
  at: string;
};

export type LoggedPlan = { id: string; verdict: string; body: string };

/** What a message id got before; both null once its author is erased. */
export type Answered = { message: string | null; reply: string | null };

/** What is left of a conversation when its cache is gone. */
type Past = { n: number; entries: Entry[]; plan: string | null };

export type Ledger = {
  answered: (conversation: string, id: string) => Answered | null;
  past: (conversation: string) => Past;
  append: (turn: Turn, plan: LoggedPlan | null, defaults: CrewDefaults | null) => void;
  plan: (id: string) => string | null;
  defaults: () => CrewDefaults;
};

const ANSWERED = 'SELECT message, reply FROM turn WHERE conversation = ? AND id = ?';
const PAST = 'SELECT n, entries, plan FROM turn WHERE conversation = ? ORDER BY n';
const TURN = `INSERT INTO turn (conversation, n, id, author, message, entries, reply, awaiting, plan, at)
  VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`;
const PLAN = 'INSERT INTO plan (id, conversation, n, verdict, body, at) VALUES (?, ?, ?, ?, ?, ?)';
const PLAN_BODY = 'SELECT body FROM plan WHERE id = ?';
const DEFAULTS = "SELECT value FROM remembered WHERE what = 'defaults'";
const REMEMBER = `INSERT INTO remembered (what, value) VALUES ('defaults', ?)
  ON CONFLICT (what) DO UPDATE SET value = excluded.value`;

type PastRow = { n: number; entries: string; plan: string | null };

/** The statements of a crew's ledger, written once for both platforms. Opening it brings its schema up to date. */
export const openLedger = (store: Store): Ledger => {
  migrate(store);
  return {
    answered: (conversation, id) => store.all<Answered>(ANSWERED, conversation, id)[0] ?? null,
    past: (conversation) => {
      const past: Past = { n: 0, entries: [], plan: null };
      for (const row of store.all<PastRow>(PAST, conversation)) {
        past.n = row.n;
        past.plan = row.plan;
        if (row.entries !== '[]') past.entries.push(...(JSON.parse(row.entries) as Entry[]));
      }
      return past;
    },
    append: (turn, plan, defaults) =>
      store.transaction(() => {
        const { conversation, n, at } = turn;
        const entries = turn.entries.length === 0 ? '[]' : JSON.stringify(turn.entries);
        store.run(
          TURN,
          ...[conversation, n, turn.id, turn.author, turn.message, entries, turn.reply],
          ...[turn.awaiting, turn.plan, at],
        );
        if (plan) store.run(PLAN, plan.id, conversation, n, plan.verdict, plan.body, at);
        if (defaults) store.run(REMEMBER, JSON.stringify(defaults));
      }),
    plan: (id) => store.all<{ body: string }>(PLAN_BODY, id)[0]?.body ?? null,
    defaults: () => {
      const [row] = store.all<{ value: string }>(DEFAULTS);
      return row ? (JSON.parse(row.value) as CrewDefaults) : {};
    },
  };
};
