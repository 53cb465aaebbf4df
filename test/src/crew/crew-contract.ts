import { expect } from 'vitest';
import { openCrew } from '../../../src/crew.ts';
import type { CrewMessage, Handled } from '../../../src/crew-face.ts';
import { erase } from '../../../src/ledger/erase.ts';
import type { Store } from '../../../src/ledger/store.ts';
import type { Claim } from '../ledger/store-contract.ts';
import { type Body, message } from './message.ts';
import { tinyFlow } from './tiny-flow.ts';

const crewOver = (store: Store, keep?: number) =>
  openCrew({ store, flow: tinyFlow, now: () => '2026-03-01T09:00:00Z', ...(keep ? { keep } : {}) });

const bytes = (handled: Handled): string => {
  if (!handled.ok) throw new Error(handled.detail);
  return handled.body;
};
const body = (handled: Handled): Body => JSON.parse(bytes(handled)) as Body;
const why = (handled: Handled) => (handled.ok ? 'answered' : handled.why);
const turns = (store: Store, conversation = 'neutral:hall'): number[] =>
  store
    .all<{ n: number }>('SELECT n FROM turn WHERE conversation = ? ORDER BY n', conversation)
    .map((row) => row.n);

/** What a crew promises over any storage. */
export const crewContract: Claim[] = [
  {
    claim:
      'answers with the conversation, the turn, the replies, what is awaited, what is known and the plan',
    holds: (store) => {
      expect(body(crewOver(store).handle(message('hall', 'm1', '24 kg')))).toEqual({
        ...{ conversation: 'hall', turn: 1, replies: [{ kind: 'text', text: 'Noted: 24 kg.' }] },
        ...{ awaiting: 'confirm', known: { piece: { massKg: 24 } }, plan: null },
      });
    },
  },
  {
    claim: 'answers the same message with the same bytes for ever, and changes nothing',
    holds: (store) => {
      const crew = crewOver(store);
      const first = bytes(crew.handle(message('hall', 'm1', '24 kg')));
      crew.handle(message('hall', 'm2', '28 kg'));
      expect(crew.handle(message('hall', 'm1', '24 kg'))).toEqual({ ok: true, body: first, replayed: true });
      expect(crewOver(store).handle(message('hall', 'm1', '24 kg'))).toMatchObject({ body: first });
      expect(turns(store)).toEqual([1, 2]);
    },
  },
  ...(
    [
      ['other words', { text: '25 kg' }],
      ['a button', { choice: '24 kg', question: 'piece.massKg' }],
      ['another author', { author: { id: 'u8', role: 'apprentice' } }],
      ['another role', { author: { id: 'u7', role: 'boss' } }],
    ] as [string, Partial<CrewMessage>][]
  ).map(([what, more]) => ({
    claim: `refuses an id used again with ${what}, and changes nothing`,
    holds: (store: Store) => {
      const crew = crewOver(store);
      crew.handle(message('hall', 'm1', '24 kg'));
      const { text, ...rest } = message('hall', 'm1', '24 kg', more);
      expect(why(crew.handle(more.choice ? rest : { ...rest, ...(text ? { text } : {}) }))).toBe(
        'other-payload',
      );
      expect(turns(store)).toEqual([1]);
    },
  })),
  {
    claim: 'takes a renamed author for the same author',
    holds: (store) => {
      const crew = crewOver(store);
      crew.handle(message('hall', 'm1', '24 kg'));
      const renamed = message('hall', 'm1', '24 kg', {
        author: { id: 'u7', name: 'Bobbie', role: 'apprentice' },
      });
      expect(crew.handle(renamed)).toMatchObject({ ok: true, replayed: true });
    },
  },
  {
    claim: 'logs a message that is not understood as a turn with no answers',
    holds: (store) => {
      const crew = crewOver(store);
      expect(body(crew.handle(message('hall', 'm1', 'the wall is nice')))).toMatchObject({
        turn: 1,
        known: {},
      });
      expect(store.all('SELECT n, entries FROM turn')).toEqual([{ n: 1, entries: '[]' }]);
    },
  },
  {
    claim: 'keeps the same id apart in two conversations and at two doors',
    holds: (store) => {
      const crew = crewOver(store);
      expect(body(crew.handle(message('hall', 'm1', '24 kg'))).known.piece?.massKg).toBe(24);
      expect(body(crew.handle(message('stairs', 'm1', '9 kg'))).known.piece?.massKg).toBe(9);
      expect(body(crew.handle(message('hall', 'm1', '5 kg', { door: 'slack' }))).known.piece?.massKg).toBe(5);
      expect(body(crew.handle(message('hall', 'm2', 'hm'))).known.piece?.massKg).toBe(24);
    },
  },
  {
    claim: 'goes on where a conversation was left when memory is gone',
    holds: (store) => {
      const once = crewOver(store);
      once.handle(message('hall', 'm1', '24 kg'));
      once.handle(message('hall', 'm2', 'plan'));
      once.handle(message('hall', 'm3', 'hm'));
      const before = body(once.handle(message('hall', 'm4', 'UK')));
      const after = body(crewOver(store).handle(message('hall', 'm5', 'hm')));
      expect(after).toMatchObject({ turn: 5, known: before.known, plan: before.plan });
    },
  },
  {
    claim: 'holds more conversations than it keeps in memory',
    holds: (store) => {
      const crew = crewOver(store, 3);
      for (let round = 1; round <= 3; round++)
        for (let at = 0; at < 10; at++)
          expect(body(crew.handle(message(`c${at}`, `m${round}`, `${round}${at} kg`)))).toMatchObject({
            turn: round,
            known: { piece: { massKg: round * 10 + at } },
          });
    },
  },
  {
    claim: 'logs a plan with its id, job, conversation and time, under an id that cannot be guessed',
    holds: (store) => {
      const crew = crewOver(store);
      crew.handle(message('hall', 'm1', '24 kg'));
      const ids = ['m2', 'm3'].map((id) => body(crew.handle(message('hall', id, 'plan'))).plan ?? '');
      expect(ids[0]).toMatch(/^[\w-]{24}$/);
      expect(new Set(ids).size).toBe(2);
      expect(JSON.parse(crew.plan(ids[0] ?? '') ?? '')).toMatchObject({
        ...{ id: ids[0], conversation: 'hall', at: '2026-03-01T09:00:00Z', verdict: 'stop' },
        job: { piece: { massKg: 24 } },
      });
      expect(body(crew.handle(message('hall', 'm4', 'hm'))).plan).toBe(ids[1]);
      expect(crew.plan('nothing')).toBeNull();
    },
  },
  {
    claim: 'logs nothing of a message the flow breaks on, and goes on with the next',
    holds: (store) => {
      const crew = crewOver(store);
      crew.handle(message('hall', 'm1', '24 kg'));
      expect(() => crew.handle(message('hall', 'm2', 'boom'))).toThrow('a bug in the flow');
      expect(body(crew.handle(message('hall', 'm3', '28 kg'))).turn).toBe(2);
    },
  },
  {
    claim: 'begins the next conversation with what the people of the crew said, also after a restart',
    holds: (store) => {
      const crew = crewOver(store);
      expect(body(crew.handle(message('hall', 'm1', '24 kg'))).known.building).toBeUndefined();
      crew.handle(message('hall', 'm2', 'AU'));
      expect(body(crew.handle(message('stairs', 'm1', 'hm'))).known.building?.country).toBe('AU');
      expect(body(crewOver(store).handle(message('landing', 'm1', 'hm'))).known.building?.country).toBe('AU');
      crew.handle(message('hall', 'm3', 'undo'));
      expect(body(crew.handle(message('porch', 'm1', 'hm'))).known.building).toBeUndefined();
    },
  },
  {
    claim: 'blanks the words of an erased person, keeps the figures, and answers their ids with the reason',
    holds: (store) => {
      const crew = crewOver(store);
      crew.handle(message('hall', 'm1', '24 kg'));
      const other = message('hall', 'm2', 'UK', { author: { id: 'u8', name: 'Sam', role: 'boss' } });
      crew.handle(other);
      expect(erase(store, 'u7')).toBe(1);
      crew.forget();
      expect(why(crew.handle(message('hall', 'm1', '24 kg')))).toBe('erased');
      expect(crew.handle(other)).toMatchObject({ ok: true, replayed: true });
      expect(body(crew.handle(message('hall', 'm3', 'hm'))).known).toEqual({
        ...{ piece: { massKg: 24 }, building: { country: 'UK' } },
      });
      const kept = store.all<{ message: string; entries: string }>("SELECT * FROM turn WHERE id = 'm1'");
      expect(JSON.stringify(kept)).not.toMatch(/Robin|24 kg/);
    },
  },
];
