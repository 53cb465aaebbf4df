/** The few names of the workerd test runner that the tests use. */
declare module 'cloudflare:test' {
  import type { DurableObjectState } from 'cloudflare:workers';

  type Stub = { fetch: (request: Request) => Promise<Response> };
  type Namespace = { getByName: (name: string) => Stub };

  export const env: { LEDGER: Namespace; CREW: Namespace };
  export const SELF: { fetch: (url: string, init?: RequestInit) => Promise<Response> };
  export function runInDurableObject<R>(
    stub: Stub,
    callback: (instance: unknown, state: DurableObjectState) => R,
  ): Promise<Awaited<R>>;
  /** Takes the object out of memory and leaves its storage. */
  export function evictDurableObject(stub: Stub): Promise<void>;
}
