import { expect } from 'vitest';
import { erase } from '../../../src/ledger/erase.ts';
import type { Claim } from '../ledger/store-contract.ts';
import { body, crewOver, why } from './crew-under-test.ts';
import { message } from './message.ts';

/** What a crew keeps, over any storage: conversations, plans, what was said for the next time; and what it gives up. */
export const keepingContract: Claim[] = [
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
