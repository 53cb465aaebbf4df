import type { JobSoFar } from '../../../core/job.ts';
import type { QuestionName } from '../../question.ts';
import { QUESTIONS } from '../../questions/all.ts';
import type { Fact } from '../../reading.ts';
import { GATES } from '../building/hazard-gates.ts';
import { merged, NO_HAZARDS } from '../building/hazards.ts';
import { fact } from '../words/found.ts';
import { yesNoValue } from './yes-no-question.ts';

/** Where the value of a button goes, for the questions whose choices are the words of the contract. */
const FIELDS: Partial<Record<QuestionName, (value: string) => JobSoFar>> = {
  'piece.kind': (value) => part('piece', { kind: value }),
  'piece.glass': (value) => part('piece', { glass: value }),
  'wall.baseMaterial': (value) => part('wall', { baseMaterial: value }),
  'wall.cores': (value) => part('wall', { cores: value }),
  'wall.finish': (value) => part('wall', { finish: { kind: value } }),
  'wall.wet': (value) => part('wall', { wet: value }),
  'wall.coating': (value) => part('wall', { coating: value }),
  'wall.asbestos': (value) => part('wall', { asbestos: value }),
  'wall.tensioned': (value) => part('wall', { tensioned: value }),
  'wall.condition': (value) => part('wall', { condition: value }),
  'wall.farSide': (value) => part('wall', { farSide: value }),
  'place.below': (value) => part('place', { below: value }),
  'place.across': (value) => part('place', { across: { by: value } }),
  'building.country': (value) => part('building', { country: value }),
  'building.tenure': (value) => part('building', { tenure: value }),
  'building.kind': (value) => part('building', { kind: value }),
  'crew.people': (value) => part('crew', { people: Number(value) }),
};

/** The value is one of the question's own choices, which the contract names: the shape is right by that. */
function part(of: keyof JobSoFar, value: object): JobSoFar {
  return { [of]: value } as JobSoFar;
}

const NONE = new Set(['none', 'no', 'none-of-these']);

/** The fact that a button's value records for its question; null for a value that is none of the question's. */
export function factForChoice(question: QuestionName, choice: string): Fact | null {
  const value = chosenValue(question, choice);
  return value === null ? null : fact(question, value, choice);
}

function chosenValue(question: QuestionName, choice: string): JobSoFar | null {
  if (question === 'hazards') return hazardsOf(choice);
  if (choice === 'unknown') return null;
  if (question === 'wall.accessories' && NONE.has(choice))
    return { wall: { accessories: [], farSide: 'seen' } };
  const listed = QUESTIONS[question].choices.some((each) => each.value === choice);
  const field = FIELDS[question];
  if (listed && field !== undefined) return field(choice);
  if (choice === 'none') return yesNoValue(question, 'no');
  return choice === 'yes' || choice === 'no' ? yesNoValue(question, choice) : null;
}

/** "bathroom,lit": what was picked holds, the rest of the list does not. */
function hazardsOf(choice: string): JobSoFar | null {
  const picks = choice.split(',').map((each) => each.trim());
  if (picks.every((each) => NONE.has(each))) return NO_HAZARDS;
  const gates = picks.map((each) => GATES.find((gate) => gate.name === each));
  if (gates.some((gate) => gate === undefined)) return null;
  return merged([NO_HAZARDS, ...gates.flatMap((gate) => (gate ? [gate.holds] : []))]);
}
