import { DurableObject } from 'cloudflare:workers';

export { CrewObject, default } from '../../src/worker.ts';

/** A Durable Object with nothing in it, whose storage the tests borrow. */
export class LedgerObject extends DurableObject<unknown> {}
