import { type ActorScope, createEmptyActor, type EventFrom, type SnapshotFrom } from 'xstate';
import { conversation } from './machine.ts';
import type { Situation } from './situation.ts';

type Snapshot = SnapshotFrom<typeof conversation>;

const nobody = createEmptyActor();
const nothing = (): void => undefined;

/**
 * What a transition wants to know of the actor that makes it: there is none. The library's own `transition()`
 * makes an actor, and with it a whole first snapshot, at each call: half of what a transition cost (measured).
 * One does for all, since this machine starts no actor and sends nothing.
 */
const SCOPE: ActorScope<Snapshot, EventFrom<typeof conversation>> = {
  self: nobody as never,
  system: nobody.system,
  id: '',
  sessionId: '',
  logger: nothing,
  defer: nothing,
  emit: nothing,
  stopChild: nothing,
  actionExecutor: nothing,
};

/** Where a conversation begins, as a situation has it. Pure. */
export const beginning = (situation: Situation): Snapshot =>
  conversation.getInitialSnapshot(SCOPE, situation);

/** The machine's next snapshot. Pure. */
export const moved = (snapshot: Snapshot, event: EventFrom<typeof conversation>): Snapshot =>
  conversation.transition(snapshot, event, SCOPE);
