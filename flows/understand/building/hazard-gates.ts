import type { JobSoFar } from '../../../core/job.ts';
import type { QuestionName } from '../../question.ts';

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
      /(?<!\b(?:not near|nowhere near|not by|not next to|away from|far from|clear of) (?:the |any |a )?)\b(?:shower(?: wall| room| enclosure| recess)?|wet ?room|over (?:the )?bath|bath (?:wall|surround)|bathtub|wet wall|splash zone|waterproofed)\b/,
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
