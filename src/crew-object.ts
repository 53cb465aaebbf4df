import { DurableObject, type DurableObjectState } from 'cloudflare:workers';
import { begin, resume, step } from '../flows/step.ts';
import { type Crew, openCrew } from './crew.ts';
import type { CrewMessage, CrewOf, Handled } from './crew-face.ts';
import { objectStore } from './ledger/object-store.ts';

/**
 * One crew as a Durable Object: its ledger is the object's own SQLite, and the object's output gate holds
 * every answer until it is kept. A commit that fails takes the object with it, and so its caches.
 */
export class CrewObject extends DurableObject<unknown> {
  private readonly crew: Crew;

  constructor(state: DurableObjectState, env: unknown) {
    super(state, env);
    this.crew = openCrew({ store: objectStore(state.storage), flow: { begin, resume, step } });
  }

  handle(message: CrewMessage): Handled {
    return this.crew.handle(message);
  }

  plan(id: string): string | null {
    return this.crew.plan(id);
  }
}

/** The binding of `wrangler.toml`. */
export type CrewNamespace = {
  getByName: (crew: string) => {
    handle: (message: CrewMessage) => Promise<Handled>;
    plan: (id: string) => Promise<string | null>;
  };
};

/** The crews of a Worker: an object each, wherever it runs. */
export const crewsIn =
  (namespace: CrewNamespace): CrewOf =>
  (name) => {
    const crew = namespace.getByName(name);
    return { handle: (message) => crew.handle(message), plan: (id) => crew.plan(id) };
  };
