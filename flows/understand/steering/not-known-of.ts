import type { JobSoFar } from '../../../core/job.ts';
import type { QuestionName } from '../../question.ts';

type Topic = {
  readonly question: QuestionName;
  readonly words: RegExp;
  readonly isKnown: (job: JobSoFar) => boolean;
};

/** What a "don't know" may name, whichever question is open: "no idea where the studs are". */
const TOPICS: readonly Topic[] = [
  {
    question: 'wall.studs',
    words: /\b(?:studs?|uprights?)\b/,
    isKnown: ({ wall }) => wall?.studs !== undefined,
  },
  {
    question: 'piece.massKg',
    words: /\b(?:how heavy|what it weighs|how much it weighs|its weight|the weight|the mass)\b/,
    isKnown: ({ piece }) => piece?.massKg !== undefined || piece?.build !== undefined,
  },
  {
    question: 'wall.widthMm',
    words: /\b(?:how (?:wide|long) (?:the |this |that )?wall|(?:width|length) of the wall|wall width)\b/,
    isKnown: ({ wall }) => wall?.widthMm !== undefined,
  },
  {
    question: 'building.yearBuilt',
    words: /\b(?:how old|when (?:it|the house|the place|this) (?:was|is|were)|what year|the year|its age)\b/,
    isKnown: ({ building }) => building?.yearBuilt !== undefined,
  },
  {
    question: 'wall.cores',
    words: /\b(?:solid or|hollow or|cored|has (?:holes|cores)|got (?:holes|cores))\b/,
    isKnown: ({ wall }) => wall?.cores !== undefined,
  },
];

/** The one question a "don't know" names, where its answer is not there yet; null when it names none or several. */
export function notKnownOf(text: string, job: JobSoFar): QuestionName | null {
  const low = text.toLowerCase();
  const [named, another] = TOPICS.filter(({ words }) => words.test(low));
  return named !== undefined && another === undefined && !named.isKnown(job) ? named.question : null;
}
