import type { JobSoFar } from '../core/job.ts';
import type { Entry } from './entry.ts';
import type { QuestionName } from './question.ts';
import type { CrewDefaults } from './step-shape.ts';

/**
 * What a crew remembers, as entries of a new conversation. They give way to whatever is said. Whose wall it is and
 * how many lift today belong to the job: remembered, they would skip the stops for a tenant and for one on a ladder.
 */
export function entriesFor(defaults: CrewDefaults, at: string): Entry[] {
  const { country, dustExtraction } = defaults;
  const remembered = (question: QuestionName, value: JobSoFar): Entry => ({
    act: 'default',
    question,
    value,
    said: 'remembered for the crew',
    by: 'crew',
    at,
  });
  return [
    ...(country === undefined ? [] : [remembered('building.country', { building: { country } })]),
    ...(dustExtraction === undefined
      ? []
      : [remembered('crew.dustExtraction', { crew: { dustExtraction } })]),
  ];
}
