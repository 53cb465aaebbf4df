/**
 * The few names of the Workers runtime this program uses. The full typings declare their own globals, which
 * clash with Node's in one program; these are checked against the runtime by the workerd tests.
 */
declare module 'cloudflare:workers' {
  export type DurableObjectState = {
    readonly storage: {
      readonly sql: { exec: (sql: string, ...params: unknown[]) => { toArray: () => unknown[] } };
      transactionSync: <T>(fn: () => T) => T;
    };
  };

  /** A class that extends this answers its public methods over RPC. */
  export class DurableObject<Env> {
    constructor(state: DurableObjectState, env: Env);
    protected readonly ctx: DurableObjectState;
    protected readonly env: Env;
  }
}
