import { assign, setup } from 'xstate';
import { guards } from './guards.ts';
import type { Situation } from './situation.ts';

/** What the person said has been recorded, or a conversation is taken up again: either way, look afresh. */
type Heard = { type: 'HEARD' | 'RESUME'; situation: Situation };
type Paused = { type: 'PAUSE' };

const asGiven = ({ input }: { input: Situation }): Situation => input;

/**
 * The conversation. A state is what we are waiting for, named for its question; `deciding` is the order in which
 * they are asked: first what stops the job wherever the piece goes, then what has to be measured, then what was
 * put off, then what decides between two plans.
 */
export const conversation = setup({
  types: { context: {} as Situation, events: {} as Heard | Paused, input: {} as Situation },
  guards,
  actions: {
    lookAfresh: assign(({ context, event }) => (event.type === 'PAUSE' ? context : event.situation)),
  },
}).createMachine({
  id: 'conversation',
  context: asGiven,
  initial: 'deciding',
  on: {
    HEARD: { target: '.deciding', actions: 'lookAfresh' },
    RESUME: { target: '.deciding', actions: 'lookAfresh' },
    PAUSE: { target: '.paused' },
  },
  states: {
    deciding: {
      always: [
        { guard: 'somethingIsAskedBack', target: 'askedBack' },
        { guard: 'somethingStopsTheJob', target: 'stopped' },

        { guard: 'kindIsWanted', target: 'piece.kind' },
        { guard: 'materialIsWanted', target: 'wall.baseMaterial' },
        { guard: 'countryIsWanted', target: 'building.country' },
        { guard: 'yearIsWanted', target: 'building.yearBuilt' },
        { guard: 'tenureIsWanted', target: 'building.tenure' },
        { guard: 'consentIsWanted', target: 'building.consent' },
        { guard: 'buildingKindIsWanted', target: 'building.kind' },
        { guard: 'tensionedSteelIsWanted', target: 'wall.tensioned' },
        { guard: 'hazardsAreWanted', target: 'hazards' },
        { guard: 'massIsWanted', target: 'piece.massKg' },
        { guard: 'belowIsWanted', target: 'place.below' },
        { guard: 'accessoriesAreWanted', target: 'wall.accessories' },
        { guard: 'thicknessIsWanted', target: 'wall.thicknessMm' },

        { guard: 'sizeIsWanted', target: 'piece.size' },
        { guard: 'hangingIsWanted', target: 'piece.hanging' },
        { guard: 'finishIsWanted', target: 'wall.finish' },
        { guard: 'studsAreWanted', target: 'wall.studs' },
        { guard: 'wallWidthIsWanted', target: 'wall.widthMm' },
        { guard: 'acrossIsWanted', target: 'place.across' },
        { guard: 'upIsWanted', target: 'place.up' },
        { guard: 'datumIsWanted', target: 'wall.datum' },
        { guard: 'wallHeightIsWanted', target: 'wall.heightMm' },

        { guard: 'kindWasPutOff', target: 'piece.kind' },
        { guard: 'massWasPutOff', target: 'piece.massKg' },
        { guard: 'sizeWasPutOff', target: 'piece.size' },
        { guard: 'hangingWasPutOff', target: 'piece.hanging' },
        { guard: 'wallWidthWasPutOff', target: 'wall.widthMm' },
        { guard: 'acrossWasPutOff', target: 'place.across' },
        { guard: 'upWasPutOff', target: 'place.up' },

        { guard: 'coresDecide', target: 'wall.cores' },
        { guard: 'glassDecides', target: 'piece.glass' },
        { guard: 'peopleDecide', target: 'crew.people' },

        { guard: 'confirmationIsDue', target: 'confirm' },
        { guard: 'acknowledgementIsDue', target: 'acknowledge' },
        { target: 'planned' },
      ],
    },
    piece: { initial: 'kind', states: { kind: {}, massKg: {}, size: {}, hanging: {}, glass: {} } },
    wall: {
      initial: 'baseMaterial',
      states: {
        baseMaterial: {},
        cores: {},
        finish: {},
        studs: {},
        widthMm: {},
        heightMm: {},
        datum: {},
        accessories: {},
        thicknessMm: {},
        tensioned: {},
      },
    },
    place: { initial: 'across', states: { across: {}, up: {}, below: {} } },
    building: {
      initial: 'country',
      states: { country: {}, yearBuilt: {}, tenure: {}, consent: {}, kind: {} },
    },
    crew: { initial: 'people', states: { people: {} } },
    hazards: {},
    confirm: {},
    acknowledge: {},
    /** Something said can be read two ways, or does not agree with what was said before. */
    askedBack: {},
    /** No mark and no drilling step until what stops it is cleared. */
    stopped: {},
    planned: {},
    paused: {},
  },
});
