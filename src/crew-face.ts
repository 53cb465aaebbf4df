import type { Role } from '../flows/step-shape.ts';

/** A message as a crew sees it, whichever door it came through. */
export type CrewMessage = {
  /** The door's name space: no client can step into another door's conversation. */
  door: 'neutral' | 'slack' | 'discord';
  conversation: string;
  /** Idempotent within the conversation. */
  id: string;
  text?: string;
  choice?: string;
  question?: string;
  author: { id: string; name?: string; role: Role };
};

/** `body` is the exact response, the same bytes for the same message for ever. */
export type Handled =
  | { ok: true; body: string; replayed: boolean }
  | { ok: false; why: 'other-payload' | 'erased'; detail: string };

/** What the routes need of a crew. Every promise resolves only when what it tells is on disk. */
export type CrewFace = {
  handle: (message: CrewMessage) => Promise<Handled>;
  /** The logged plan as JSON with its id, job, conversation and at; null when there is none. */
  plan: (id: string) => Promise<string | null>;
};

/** Finds a crew by name: in this process on Node, by Durable Object name on Workers. */
export type CrewOf = (crew: string) => CrewFace;
