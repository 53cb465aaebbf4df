import type { QuestionName } from './question.ts';
import { isPutOff, isWanted, type Situation } from './situation.ts';

type Guard = (args: { context: Situation }) => boolean;

const wanted =
  (name: QuestionName): Guard =>
  ({ context }) =>
    isWanted(name, context);

const putOff =
  (name: QuestionName): Guard =>
  ({ context }) =>
    isPutOff(name, context);

const deciding =
  (name: QuestionName): Guard =>
  ({ context }) =>
    context.deciding === name;

/** Facts about a situation, by name; the machine says what follows from each. */
export const guards = {
  somethingIsAskedBack: ({ context }: { context: Situation }) => context.askedBack !== null,
  somethingStopsTheJob: ({ context }: { context: Situation }) =>
    context.stops.length > 0 || context.plan?.verdict === 'stop',
  kindIsWanted: wanted('piece.kind'),
  materialIsWanted: wanted('wall.baseMaterial'),
  countryIsWanted: wanted('building.country'),
  yearIsWanted: wanted('building.yearBuilt'),
  tenureIsWanted: wanted('building.tenure'),
  consentIsWanted: wanted('building.consent'),
  buildingKindIsWanted: wanted('building.kind'),
  tensionedSteelIsWanted: wanted('wall.tensioned'),
  hazardsAreWanted: wanted('hazards'),
  massIsWanted: wanted('piece.massKg'),
  belowIsWanted: wanted('place.below'),
  accessoriesAreWanted: wanted('wall.accessories'),
  thicknessIsWanted: wanted('wall.thicknessMm'),
  sizeIsWanted: wanted('piece.size'),
  hangingIsWanted: wanted('piece.hanging'),
  finishIsWanted: wanted('wall.finish'),
  studsAreWanted: wanted('wall.studs'),
  wallWidthIsWanted: wanted('wall.widthMm'),
  acrossIsWanted: wanted('place.across'),
  upIsWanted: wanted('place.up'),
  datumIsWanted: wanted('wall.datum'),
  wallHeightIsWanted: wanted('wall.heightMm'),
  kindWasPutOff: putOff('piece.kind'),
  massWasPutOff: putOff('piece.massKg'),
  sizeWasPutOff: putOff('piece.size'),
  hangingWasPutOff: putOff('piece.hanging'),
  wallWidthWasPutOff: putOff('wall.widthMm'),
  acrossWasPutOff: putOff('place.across'),
  upWasPutOff: putOff('place.up'),
  coresDecide: deciding('wall.cores'),
  glassDecides: deciding('piece.glass'),
  peopleDecide: deciding('crew.people'),
  confirmationIsDue: ({ context }: { context: Situation }) => !context.confirmed && context.hasGuesses,
  acknowledgementIsDue: ({ context }: { context: Situation }) => context.unacknowledged.length > 0,
} satisfies Record<string, Guard>;
