import { join } from 'node:path';
import type { Flow } from '../flows/step-shape.ts';
import { type Crew, openCrew } from './crew.ts';
import type { CrewFace, CrewOf } from './crew-face.ts';
import { makeFolder } from './ledger/folder.ts';
import { type NodeStore, openNodeStore } from './ledger/node-store.ts';
import { LedgerError } from './ledger/store.ts';
import { whyNotOpened } from './ledger/why-not-opened.ts';

/** A crew's name is also its file's name, so nothing else may be in it. */
const CREW_NAME = /^[a-z0-9-]{1,40}$/;

/** One process may hold many conversations of many crews. */
const KEPT_IN_MEMORY = 20_000;

type Opened = CrewFace & { close: () => void };

const openLedgerOf = (folder: string, name: string, flow: Flow): { crew: Crew; store: NodeStore } => {
  makeFolder(folder);
  const file = join(folder, `${name}.sqlite`);
  let crew: Crew | null = null;
  const store = openNodeStore(file, () => crew?.forget());
  try {
    crew = openCrew({ store, flow, keep: KEPT_IN_MEMORY });
    // The schema must not hang on whether the first turns' commit succeeds.
    store.flush();
    return { crew, store };
  } catch (error) {
    store.close();
    throw whyNotOpened(file, error);
  }
};

const openOne = (folder: string, name: string, flow: Flow): Opened => {
  if (!CREW_NAME.test(name))
    throw new LedgerError(`A crew's name is 1 to 40 of a-z, 0-9 and -; ${JSON.stringify(name)} is not one.`);
  const { crew, store } = openLedgerOf(folder, name, flow);
  return {
    // A read, too, may have seen what is not on disk yet.
    handle: async (message) => {
      const handled = crew.handle(message);
      await store.durable();
      return handled;
    },
    plan: async (id) => {
      const plan = crew.plan(id);
      await store.durable();
      return plan;
    },
    close: store.close,
  };
};

/** The crews of one process: a file each in `folder`, opened when first named and held until closed. */
export const openCrews = (folder: string, flow: Flow): { crewOf: CrewOf; close: () => void } => {
  const opened = new Map<string, Opened>();
  return {
    crewOf: (name) => {
      let crew = opened.get(name);
      if (!crew) {
        crew = openOne(folder, name, flow);
        opened.set(name, crew);
      }
      return crew;
    },
    close: () => {
      for (const crew of opened.values()) crew.close();
      opened.clear();
    },
  };
};
