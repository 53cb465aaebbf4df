import type { JobSoFar } from '../../../core/job.ts';
import type { Accessory, Unplaced } from '../../../core/wall/wall.ts';
import type { AskBack, Fact } from '../../reading.ts';
import { describe } from '../../wording/describe.ts';
import { fact } from '../words/found.ts';
import { nameOf } from './words.ts';

/** What is still to be asked of the fittings that were told of. */
export function toBeFound(unplaced: readonly Unplaced[]): string {
  const names = unplaced.map(
    ({ kind, face }) => `the ${nameOf(kind)}${face === 'far' ? ' on the other side' : ''}`,
  );
  return `where ${names.join(' and ')} ${names.length > 1 ? 'are' : 'is'}: from the left end, and up from the floor`;
}

/** Small bare figures: "30 up, 60 from the left". */
export function inWhichUnit(read: readonly { unit: string; fact: Fact | null }[]): AskBack {
  return {
    question: 'wall.accessories',
    text: 'In which unit are those?',
    readings: read.flatMap(({ unit, fact: each }) =>
      each === null
        ? []
        : [
            {
              label: `${unit === 'in' ? 'inches' : unit} (${describe(each.value, 'mm').join(', ')})`,
              fact: each,
            },
          ],
    ),
  };
}

/** A correction that may be of several. */
export function whichOne(told: Accessory | undefined, { wall }: JobSoFar, said: string): AskBack {
  const list = Array.isArray(wall?.accessories) ? wall.accessories : [];
  const alike = list.filter(({ kind }) => kind === told?.kind);
  const inPlaceOf = (was: Accessory): Accessory[] =>
    list.map((each) => (each === was && told ? { ...each, ...told } : each));
  return {
    question: 'wall.accessories',
    text: `Which ${told === undefined ? 'one' : nameOf(told.kind)} is that?`,
    readings: [
      ...alike.map((was) => ({
        label: `instead of the ${describe({ wall: { accessories: [was] } }, 'mm').join(', ')}`,
        fact: fact('wall.accessories', { wall: { accessories: inPlaceOf(was) } }, said, true),
      })),
      ...(told === undefined
        ? []
        : [
            {
              label: 'one more',
              fact: fact('wall.accessories', { wall: { accessories: [...list, told] } }, said, true),
            },
          ]),
    ],
  };
}

/** "Nothing there" after something was told: a fitting is never dropped on a word. */
export function gone(
  accessories: readonly Accessory[],
  unplaced: readonly Unplaced[],
  said: string,
): AskBack {
  const names = [...accessories, ...unplaced].map(
    ({ kind, face }) => `the ${nameOf(kind)}${face === 'far' ? ' on the other side' : ''}`,
  );
  return {
    question: 'wall.accessories',
    text: `You told me of ${names.join(', ')} before. Is nothing there after all, on either face?`,
    readings: [
      {
        label: 'What I said before stands',
        fact: fact('wall.accessories', { wall: { accessories: [...accessories] } }, said),
      },
      {
        label: 'Nothing on either face',
        fact: fact('wall.accessories', { wall: { accessories: [], unplaced: [], farSide: 'seen' } }, said),
      },
    ],
  };
}

/** The far face was looked at, or not; a yes alone says nothing of what is there. */
export function whatIsThere(said: string): AskBack {
  return {
    question: 'wall.farSide',
    text: 'And on the other side of the wall: what is there, and where? From the left end as you face it there, and up from the floor.',
    readings: [
      { label: 'looked: nothing there', fact: fact('wall.farSide', { wall: { farSide: 'seen' } }, said) },
      { label: 'not looked yet', fact: fact('wall.farSide', { wall: { farSide: 'unknown' } }, said) },
    ],
  };
}
