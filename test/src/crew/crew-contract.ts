import { expect } from 'vitest';
import type { CrewMessage } from '../../../src/crew-face.ts';
import type { Store } from '../../../src/ledger/store.ts';
import type { Claim } from '../ledger/store-contract.ts';
import { body, bytes, crewOver, turns, why } from './crew-under-test.ts';
import { message } from './message.ts';

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
];
