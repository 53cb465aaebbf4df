import type { JobSoFar } from '../../../core/job.ts';
import type { QuestionName } from '../../question.ts';
import type { Fact, Listening } from '../../reading.ts';
import { type Found, fact, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { GATES, type Gate } from './hazard-gates.ts';

export function merged(parts: readonly JobSoFar[]): JobSoFar {
  const job: JobSoFar = {};
  for (const part of parts) {
    if (part.building) job.building = { ...job.building, ...part.building };
    if (part.wall) job.wall = { ...job.wall, ...part.wall };
    if (part.piece) job.piece = { ...job.piece, ...part.piece };
  }
  return job;
}

/** Tensioned steel is asked on its own, of concrete only: a "none of these" says nothing of it. */
const LISTED = GATES.filter((gate) => gate.name !== 'tensioned');

/** "None of these": every gate of the list answered no. */
export const NO_HAZARDS: JobSoFar = merged(LISTED.map((gate) => gate.not));

const DENIED =
  /\b(?:no|not|isnt|arent|doesnt|dont|without|never|nor|non|aint|nothing)(?: (?:a|an|the|any|in|in a|been|be|really|think|its|it|is|have|got|of|or))*$/;

/** Said, and not denied just before: "not listed, it's a bathroom". */
function named(gate: Gate, words: string): 'holds' | 'not' | null {
  const match = gate.words.exec(words);
  if (match === null) return null;
  const before =
    words
      .slice(0, match.index)
      .split(/[,.;]| but /)
      .at(-1) ?? '';
  return DENIED.test(before.trim()) ? 'not' : 'holds';
}

/** Several picked out of the list; the rest of the list was read and not picked, so it is taken as no and confirmed. */
export function picked(words: string): { value: JobSoFar; only: boolean; denied: Gate[] } | null {
  const said = GATES.flatMap((gate) => {
    const is = named(gate, words);
    return is === null ? [] : [{ gate, is }];
  });
  const holding = said.filter(({ is }) => is === 'holds');
  if (said.length === 0) return null;
  const restUnknown =
    /\b(?:dont know|not sure|no idea|unsure)\b/.test(words) && /\b(?:rest|others?|else|about)\b/.test(words);
  const rest = holding.length === 0 ? [] : LISTED.map((gate) => (restUnknown ? gate.unknown : gate.not));
  // Shower outranks bathroom, whichever was said first.
  const value = merged([...rest, ...said.map(({ gate, is }) => gate[is]).reverse()]);
  const denied = holding.length > 0 ? [] : said.map(({ gate }) => gate);
  return { value, denied, only: /\b(?:only|just|nothing else|thats all)\b/.test(words) || restUnknown };
}

/** Hazards said in passing, or in answer to the question for one of them. */
export function readHazards(outline: Outline, listening: Listening): Found {
  const { words, said } = outline;
  if (/\b(?:none of (?:the|those) hazards|no hazards|no (?:other )?gates)\b/.test(words)) {
    return { ...nothing(outline), facts: [fact('hazards', NO_HAZARDS, said)] };
  }
  const found: Fact[] = [];
  const seen = new Set<QuestionName>();
  for (const gate of GATES) {
    const is = named(gate, words);
    if (is === null || seen.has(gate.question)) continue;
    const asked = listening.awaiting === gate.question;
    if (!asked && !plainlySaid(gate.name, words)) continue;
    seen.add(gate.question);
    found.push(fact(gate.question, gate[is], said, !asked));
  }
  return { ...nothing(outline), facts: found };
}

/** Outside their own question only words that can mean nothing else. */
function plainlySaid(name: string, words: string): boolean {
  if (name === 'shower')
    return /\bshower (?:wall|room|enclosure|recess)\b|\bwet ?room\b|\bin the shower\b/.test(words);
  if (name === 'bathroom') return /\b(?:bath ?room|ensuite|en suite|laundry|powder room)\b/.test(words);
  if (name === 'heritage')
    return /\b(?:heritage listed|listed building|grade (?:1|2|i|ii|two|one) listed|is listed|its listed|national register|listed (?:house|cottage|place))\b/.test(
      words,
    );
  if (name === 'tensioned') return true;
  if (name === 'separating') return /\b(?:party wall|fire ?wall|separating wall|shared wall)\b/.test(words);
  if (name === 'poor')
    return /\bplaster (?:is |s )?(?:crumbl|loose|blown|falling|coming)|\bcrumbling\b|\brising damp\b|\bdamp wall\b|\bwall is (?:damp|crumbling)\b/.test(
      words,
    );
  if (name === 'textured')
    return /\btextured? (?:\w+ )?(?:coating|wall|walls|plaster|paint|finish)\b|\bpopcorn\b|\bstippled?\b/.test(
      words,
    );
  return /\b(?:lights? up|light ?-? ?up|illuminated|back ?lit|led mirror|lit mirror|demister)\b/.test(words);
}
