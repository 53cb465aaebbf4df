import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Entry } from '../../../flows/entry.ts';
import { openCrew } from '../../../src/crew.ts';
import type { Handled } from '../../../src/crew-face.ts';
import { type NodeStore, openNodeStore } from '../../../src/ledger/node-store.ts';
import { tempFolder } from '../ledger/temp-folder.ts';
import { type Body, message } from './message.ts';
import { tinyFlow } from './tiny-flow.ts';

/** What reaches a crew in one pass of the event loop, and whether the disk then refuses the commit. */
type Pass = { arriving: { conversation: string; id: string; text: string }[]; fails: boolean };

const arriving = fc.record({
  conversation: fc.constantFrom('hall', 'stairs', 'porch'),
  id: fc.nat({ max: 12 }).map((n) => `m${n}`),
  text: fc.constantFrom('24 kg', '28 kg', 'AU', 'UK', 'undo', 'plan', 'hm', "'); DROP TABLE turn; --"),
});
const soup = fc.array(
  fc.record<Pass>({
    arriving: fc.array(arriving, { minLength: 1, maxLength: 6 }),
    fails: fc.nat({ max: 5 }).map((n) => n === 0),
  }),
  { minLength: 1, maxLength: 25 },
);

/** A deferred foreign key that points nowhere makes COMMIT itself fail. */
const breakCommit = (store: NodeStore) => store.transaction(() => store.run('INSERT INTO trap VALUES (99)'));

const rowsOf = (store: NodeStore, conversation: string) =>
  store.all<{ n: number; id: string; reply: string; entries: string; plan: string | null }>(
    'SELECT n, id, reply, entries, plan FROM turn WHERE conversation = ? ORDER BY n',
    `neutral:${conversation}`,
  );

test('whatever arrives, twice, at once or out of order, each id has one answer, turns have no gap, and the job is the fold of the answers', async () => {
  const folder = tempFolder();
  let round = 0;
  await fc.assert(
    fc.asyncProperty(soup, async (passes) => {
      const store = openNodeStore(join(folder, `${round++}.sqlite`), () => crew.forget());
      const crew = openCrew({ store, flow: tinyFlow, keep: 2 });
      store.run('CREATE TABLE goal (id INTEGER PRIMARY KEY)');
      store.run('CREATE TABLE trap (id INTEGER REFERENCES goal (id) DEFERRABLE INITIALLY DEFERRED)');
      store.flush();
      const told = new Map<string, string>();

      for (const { arriving, fails } of passes) {
        if (fails) breakCommit(store);
        const answering = arriving.map(async ({ conversation, id, text }): Promise<Handled> => {
          const handled = crew.handle(message(conversation, id, text));
          await store.durable();
          return handled;
        });
        for (const [at, settled] of (await Promise.allSettled(answering)).entries()) {
          expect(settled.status).toBe(fails ? 'rejected' : 'fulfilled');
          if (settled.status === 'rejected' || !settled.value.ok) continue;
          const key = `${arriving[at]?.conversation}/${arriving[at]?.id}`;
          expect(settled.value.body).toBe(told.get(key) ?? settled.value.body);
          told.set(key, settled.value.body);
        }
      }

      let logged = 0;
      for (const conversation of ['hall', 'stairs', 'porch']) {
        const rows = rowsOf(store, conversation);
        logged += rows.length;
        expect(rows.map((row) => row.n)).toEqual(rows.map((_, at) => at + 1));
        for (const row of rows) expect(row.reply).toBe(told.get(`${conversation}/${row.id}`));
        const last = rows.at(-1);
        const entries = rows.flatMap((row) => JSON.parse(row.entries) as Entry[]);
        if (!last || entries.length === 0) continue;
        const folded = tinyFlow.resume(entries, last.plan, {}).cache as { known: Body['known'] };
        expect((JSON.parse(last.reply) as Body).known).toEqual(folded.known);
      }
      expect(logged).toBe(told.size);
      store.close();
    }),
    { numRuns: 60 },
  );
});
