import { questionReply } from './ask.ts';
import { questionThatClears } from './clearing.ts';
import { entriesFor } from './crew-defaults.ts';
import type { Entry } from './entry.ts';
import { awaitingIn, heard, type Open, openFrom, paused, situationIn, stateOf } from './open.ts';
import { outcomeOf } from './outcome.ts';
import type { Parts } from './parts.ts';
import { withTodaysNames } from './renamed.ts';
import type { Reply } from './reply.ts';
import { jobToLog } from './situation.ts';
import type { Conversation, CrewDefaults, Flow, Incoming, Step } from './step-shape.ts';
import { choiceHeard } from './turns/choice.ts';
import { offeredIn, offeredStill } from './turns/offered-again.ts';
import { textHeard } from './turns/text.ts';
import type { Turn } from './turns/turn.ts';
import { FLOW_VERSION } from './version.ts';
import { assumedBriefly } from './wording/assumption.ts';
import { replyInUnit } from './wording/reply-in-unit.ts';
import { summaryOf } from './wording/summary.ts';
import { keptForTheCrew, whereItStands } from './wording/talk.ts';

/** The conversation put together from its parts. Pure: clock and ids come in with each message. */
export function flowOf(parts: Parts, version = FLOW_VERSION): Flow {
  const resume = (entries: readonly Entry[], planId: string | null, defaults: CrewDefaults): Conversation => {
    const named = withTodaysNames(entries);
    const open = openFrom(named, planId, defaults, parts);
    return { flow: version, entries, cache: { ...open, offered: offeredIn(named, open, parts) } };
  };

  const opened = (conversation: Conversation): Open => {
    if (conversation.flow === version) return conversation.cache as Open;
    const old = conversation.cache as Partial<Open> | null;
    return resume(conversation.entries, old?.standing?.id ?? null, old?.defaults ?? {}).cache as Open;
  };

  return {
    begin: (defaults) => resume([], null, defaults),
    resume,
    step: (conversation, message) => stepOn(conversation, opened(conversation), message, parts, version),
  };
}

function stepOn(
  conversation: Conversation,
  before: Open,
  message: Incoming,
  parts: Parts,
  version: string,
): Step {
  const remembered = conversation.entries.length === 0 ? entriesFor(before.defaults, message.at) : [];
  const ready = heard(before, remembered, parts);
  const heardTurn = turnOf(ready, message, parts);
  const entriesWith = ({ added }: Turn): readonly Entry[] => [
    ...conversation.entries,
    ...remembered,
    ...added,
  ];
  const tried = moveOn(ready, heardTurn, entriesWith(heardTurn), parts);
  const isMoot = askedInVain(heardTurn, tried);
  const turn = isMoot ? lessAsking(heardTurn) : heardTurn;
  const moved = isMoot ? moveOn(ready, turn, entriesWith(turn), parts) : tried;
  const { open, logged, replies } = outcomeOf(ready, moved, message.planId, parts.standingLine);
  const added = [...remembered, ...turn.added];
  const entries = added.length === 0 ? conversation.entries : [...conversation.entries, ...added];
  return {
    added,
    replies: inTheirUnit(
      [
        ...spoken(turn, open, remembered.length > 0),
        ...replies,
        ...questionReply(open, turn.asks ?? summedUpAlready(ready, open, turn)),
      ],
      open,
    ),
    awaiting: awaitingIn(open),
    known: open.folded.job,
    plan: logged === null ? null : { id: message.planId, job: jobToLog(situationIn(open)), plan: logged },
    planId: open.standing?.id ?? null,
    next: { flow: version, entries, cache: open },
  };
}

function turnOf(open: Open, { text, choice, question, author, at }: Incoming, parts: Parts): Turn {
  const speaker = { said: text ?? choice ?? '', by: author.id, at };
  const pressed = choice === undefined ? null : choiceHeard(open, choice, question, speaker, parts);
  return pressed ?? textHeard(open, speaker.said, speaker, parts);
}

function moveOn(open: Open, turn: Turn, said: readonly Entry[], parts: Parts): Open {
  const moved = heard(open, turn.added, parts);
  const next: Open = { ...moved, offered: offeredStill(turn, open, moved, said, parts) };
  return turn.pauses ? paused(next) : next;
}

/** Which of two readings is no matter while the job is stopped by something else: what stops it comes first. */
function askedInVain({ offered }: Turn, open: Open): boolean {
  const { stops, job } = situationIn(open);
  return (
    offered?.kind === 'readings' &&
    stops.length > 0 &&
    questionThatClears(stops, job) !== offered.ask.question
  );
}

function lessAsking({ offered, added, ...turn }: Turn): Turn {
  return { ...turn, added: added.slice(0, -1) };
}

/** A why, a help or a correction at the summary does not read it all out again. */
function summedUpAlready(before: Open, open: Open, turn: Turn): string | undefined {
  const isThere = stateOf(before) === 'confirm' && stateOf(open) === 'confirm';
  if (!isThere) return undefined;
  if (turn.added.length === 0) return 'Is the summary right?';
  return ['The rest is as read out above.', ...newlyAssumed(before, open), 'Is it right now?'].join(' ');
}

function newlyAssumed(before: Open, open: Open): string[] {
  const was = situationIn(before).plan?.assumptions ?? [];
  const now = situationIn(open).plan?.assumptions ?? [];
  const fresh = now.filter(
    ({ field, value }) => !was.some((each) => each.field === field && each.value === value),
  );
  const words = assumedBriefly(fresh, open.folded.unit);
  return words === '' ? [] : [`Assumed now: ${words}.`];
}

/** Nothing new and nothing to ask: say where it stands all the same. */
function inTheirUnit(replies: Reply[], open: Open): Reply[] {
  const said: Reply[] = replies.length > 0 ? replies : [{ kind: 'text', text: whereItStands(open) }];
  return said.map((reply) => replyInUnit(reply, open.folded.unit));
}

function spoken(turn: Turn, open: Open, isFirst: boolean): Reply[] {
  return [
    ...[...turn.say, ...(isFirst ? [keptForTheCrew(open)] : [])]
      .filter((line) => line !== '')
      .map((text): Reply => ({ kind: 'text', text })),
    ...(turn.tellsAll
      ? [{ kind: 'text', text: summaryOf(open) || 'Nothing is known yet.' } satisfies Reply]
      : []),
  ];
}
