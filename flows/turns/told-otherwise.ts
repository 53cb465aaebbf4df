import type { Speaker } from '../accept.ts';
import { fold } from '../fold.ts';
import { isWorkedOut, listeningTo } from '../listening.ts';
import { awaitingIn, type Open } from '../open.ts';
import type { Parts } from '../parts.ts';
import type { Reading } from '../reading.ts';
import { reckonedMass } from '../wording/reckoned-mass.ts';
import { buildSaid } from './build-said.ts';
import { factsSaid } from './facts.ts';
import { inHandIn } from './in-hand.ts';
import type { Turn } from './turn.ts';

/** Two parts of a fixing told, once there are marks, are what the person has in the hand; so are three at any time. */
export function saysWhatIsInHand(open: Open, said: string): boolean {
  if (/\b(?:what|which|why|how|where)\b|\d\s*kg\b/i.test(said)) return false;
  const { bit, plug, screw } = inHandIn(said) ?? {};
  const parts = [bit, plug, screw].filter((part) => part !== undefined).length;
  const hasMarks = isWorkedOut(open) && (open.standing?.plan.marks.length ?? 0) > 0;
  return parts > 2 || (parts > 1 && hasMarks);
}

/** "12 mil", said to the cores, is how thick the plaster is: bricks have no thickness anyone is asked for. */
export function lateFinish(open: Open, said: string, parts: Parts): Reading | null {
  if (
    awaitingIn(open) !== 'wall.cores' ||
    !/^\W*\d+(?:\.\d+)?\s*(?:mm|mil+s?|millimet(?:er|re)s?)?\W*(?:thick|plaster|render)?\W*$/i.test(said)
  )
    return null;
  const kind = open.folded.said.wall?.finish?.kind;
  const isCoat = kind === 'plaster' || kind === 'render' || kind === 'tile';
  const whole = isCoat && !said.toLowerCase().includes(kind) ? `${said} ${kind}` : said;
  const reading = parts.understand(whole, { ...listeningTo(open), awaiting: 'wall.finish' });
  return reading.facts.length > 0 ? { ...reading, correction: true } : null;
}

/** Told what it is made of instead of what it weighs, the mass is reckoned. */
export function madeOf(open: Open, said: string, reading: Reading, by: Speaker, parts: Parts): Turn | null {
  const { piece } = open.folded.said;
  const isWeighed = [piece, ...reading.facts.map(({ value }) => value.piece)].some(
    (each) => each?.massKg !== undefined,
  );
  const told = isWeighed ? null : buildSaid(said);
  if (told === null) return null;
  const also = /[a-z]{3}|\d/.test(told.rest)
    ? parts.understand(told.rest, { ...listeningTo(open), awaiting: null }).facts
    : [];
  const facts = [told.fact, ...also];
  const turn = factsSaid(open, { ...reading, intent: 'answer', facts, asks: [], refused: [] }, by);
  const line = reckonedMass(fold(turn.added, open.folded).job, open.folded.unit);
  return line === '' ? turn : { ...turn, say: [...turn.say, line] };
}
