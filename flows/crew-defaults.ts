import type { JobSoFar } from '../core/job.ts';
import type { Entry } from './entry.ts';
import type { QuestionName } from './question.ts';
import type { CrewDefaults } from './step-shape.ts';

/**
 * What a crew remembers, as entries of a new conversation. They give way to whatever is said. That one wall was
 * rented says nothing of the next.
 */
export function entriesFor(defaults: CrewDefaults, at: string): Entry[] {
  const { country, tenure, people, dustExtraction } = defaults;
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
    ...(tenure === undefined || tenure === 'tenant'
      ? []
      : [remembered('building.tenure', { building: { tenure } })]),
    ...(people === undefined ? [] : [remembered('crew.people', { crew: { people } })]),
    ...(dustExtraction === undefined
      ? []
      : [remembered('crew.dustExtraction', { crew: { dustExtraction } })]),
  ];
}
