import type { JobSoFar } from '../../core/job.ts';
import type { QuestionName } from '../question.ts';
import type { Fact, Listening } from '../reading.ts';
import { type Found, fact, nothing } from './found.ts';
import type { Outline } from './outline.ts';

/** Each gate of the one question for all of them: what it sets when it holds, when it does not, when not known. */
export type Gate = {
  name: string;
  question: QuestionName;
  holds: JobSoFar;
  not: JobSoFar;
  unknown: JobSoFar;
  words: RegExp;
};

export const GATES: readonly Gate[] = [
  {
    name: 'shower',
    question: 'wall.wet',
    holds: { wall: { wet: 'shower' } },
    not: { wall: { wet: 'no' } },
    unknown: { wall: { wet: 'unknown' } },
    words:
      /\b(?:shower(?: wall| room| enclosure| recess)?|wet ?room|over (?:the )?bath|bath (?:wall|surround)|bathtub|wet wall|splash zone|waterproofed)\b/,
  },
  {
    name: 'bathroom',
    question: 'wall.wet',
    holds: { wall: { wet: 'bathroom' } },
    not: { wall: { wet: 'no' } },
    unknown: { wall: { wet: 'unknown' } },
    words:
      /\b(?:bath ?room|ensuite|en suite|laundry|toilet|powder room|washroom|wet area|wc|cloakroom|restroom|loo)\b/,
  },
  {
    name: 'heritage',
    question: 'building.heritage',
    holds: { building: { heritage: true } },
    not: { building: { heritage: false } },
    unknown: { building: { heritage: 'unknown' } },
    words:
      /\b(?:heritage|listed|grade (?:1|2|i|ii|ii\*|two|one)|protected building|conservation area|historic|national register|landmark(?:ed)?|protected)\b/,
  },
  {
    name: 'tensioned',
    question: 'wall.tensioned',
    holds: { wall: { tensioned: 'possible' } },
    not: { wall: { tensioned: 'no' } },
    unknown: { wall: { tensioned: 'unknown' } },
    words:
      /\b(?:post|pre)? ?-? ?(?:tensioned|tensioning|stressed)\b|\btension(?:ed)? (?:cables?|concrete|steel|slab)\b/,
  },
  {
    name: 'separating',
    question: 'wall.separating',
    holds: { wall: { separating: true } },
    not: { wall: { separating: false } },
    unknown: { wall: { separating: 'unknown' } },
    words:
      /\b(?:party wall|separating(?: wall)?|shared wall|fire ?wall|fire (?:rated|separating)(?: wall)?|neighbours?|neighbors?|next door|between (?:the )?(?:flats|units|apartments|houses)|common wall|wall to (?:the )?neighbour|shared)\b/,
  },
  {
    name: 'poor',
    question: 'wall.condition',
    holds: { wall: { condition: 'poor' } },
    not: { wall: { condition: 'sound' } },
    unknown: { wall: { condition: 'unknown' } },
    words:
      /\b(?:crumbl(?:es|ing|y)|crumbles|crack(?:s|ed|ing)?|damp|bulg(?:es|ing|ed)|loose plaster|blown(?: plaster)?|powder(?:y|ing)?|falling (?:off|apart)|flaking|rotten|soft plaster|poor condition|dodgy|moves? (?:under|when)|drummy|unsound|mouldy|wet plaster patch|rising damp|spalling|plaster (?:is |has |s )?(?:loose|soft|gone|moving|coming off))\b/,
  },
  {
    name: 'textured',
    question: 'wall.coating',
    holds: { wall: { coating: 'textured' } },
    not: { wall: { coating: 'none' } },
    unknown: { wall: { coating: 'unknown' } },
    words:
      /\b(?:textured?(?: (?:coating|paint|plaster|wall|finish|walls))?|stipple[d]?|popcorn|knock ?down|swirl(?:s|ed)?(?: pattern)?|patterned (?:coating|plaster)|spray(?:ed)? (?:on )?(?:coating|texture)|stippling)\b/,
  },
  {
    name: 'lit',
    question: 'piece.lit',
    holds: { piece: { lit: true } },
    not: { piece: { lit: false } },
    unknown: { piece: { lit: 'unknown' } },
    words:
      /\b(?:lit|lights? up|light ?-? ?up|illuminated|back ?lit|led(?:s)?(?: (?:mirror|lights?|strip))?|needs? (?:power|mains|electricity|wiring)|has (?:a )?light(?:s)?(?: in it)?|heated (?:mirror|pad)|demister|mains|plugs in|wired in|electric mirror)\b/,
  },
];

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
export function named(gate: Gate, words: string): 'holds' | 'not' | null {
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
export function picked(words: string): { value: JobSoFar; only: boolean } | null {
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
  return { value, only: /\b(?:only|just|nothing else|thats all)\b/.test(words) || restUnknown };
}

/** Hazards said in passing, or in answer to the question for one of them. */
export function readHazards(outline: Outline, listening: Listening): Found {
  const { words, said } = outline;
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
    return /\btextured? (?:coating|wall|walls|plaster|paint|finish)\b|\bpopcorn\b|\bstippled?\b/.test(words);
  return /\b(?:lights? up|light ?-? ?up|illuminated|back ?lit|led mirror|lit mirror|demister)\b/.test(words);
}
