import { openCrew } from '../../../src/crew.ts';
import type { Handled } from '../../../src/crew-face.ts';
import type { Store } from '../../../src/ledger/store.ts';
import type { Body } from './message.ts';
import { tinyFlow } from './tiny-flow.ts';

/** A crew with the tiny flow and a clock that stands still. */
export const crewOver = (store: Store, keep?: number) =>
  openCrew({ store, flow: tinyFlow, now: () => '2026-03-01T09:00:00Z', ...(keep ? { keep } : {}) });

export const bytes = (handled: Handled): string => {
  if (!handled.ok) throw new Error(handled.detail);
  return handled.body;
};
export const body = (handled: Handled): Body => JSON.parse(bytes(handled)) as Body;
export const why = (handled: Handled) => (handled.ok ? 'answered' : handled.why);
export const turns = (store: Store, conversation = 'neutral:hall'): number[] =>
  store
    .all<{ n: number }>('SELECT n FROM turn WHERE conversation = ? ORDER BY n', conversation)
    .map((row) => row.n);
