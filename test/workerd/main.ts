import { DurableObject } from 'cloudflare:workers';

/** A Durable Object with nothing in it, whose storage the tests borrow. */
export class LedgerObject extends DurableObject<unknown> {}

export default { fetch: () => new Response(null, { status: 404 }) };
