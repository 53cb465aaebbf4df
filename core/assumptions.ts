import type { Job } from './job.ts';
import type { Assumption } from './plan-shape.ts';

/** A field that was not given, what is taken for it, and why that is the careful side. */
type Default = { field: string; value: unknown; because: string; absent: (job: Job) => boolean };

const mayBeGlazed = (kind: Job['piece']['kind']): boolean => kind === 'mirror' || kind === 'picture';

const isUnknown = (value: unknown): boolean => value === undefined || value === 'unknown';

/** What the contract says absent means (section 4), in the order a reviewer would ask. */
const DEFAULTS: readonly Default[] = [
  {
    field: 'building.country',
    value: 'unknown',
    because: 'no country was given, so the wider margins are used',
    absent: (job) => isUnknown(job.building?.country),
  },
  {
    field: 'building.yearBuilt',
    value: 'unknown',
    because: 'no year was given, so the paint and the wiring count as old',
    absent: (job) => isUnknown(job.building?.yearBuilt),
  },
  {
    field: 'building.kind',
    value: 'house',
    because: 'a flat or a public place was not mentioned, and either changes what may be drilled',
    absent: (job) => isUnknown(job.building?.kind),
  },
  {
    field: 'building.tenure',
    value: 'owner',
    because: 'renting was not mentioned; a tenant needs a yes in writing first',
    absent: (job) => isUnknown(job.building?.tenure),
  },
  {
    field: 'building.heritage',
    value: false,
    because: 'protection was not mentioned; a listed building needs consent',
    absent: (job) => isUnknown(job.building?.heritage),
  },
  {
    field: 'wall.coating',
    value: 'none',
    because: 'a textured coating was not mentioned; an old one would stop the job',
    absent: (job) => isUnknown(job.wall.coating),
  },
  {
    field: 'wall.condition',
    value: 'sound',
    because: 'cracks, damp or crumbling plaster were not mentioned; any would stop the job',
    absent: (job) => isUnknown(job.wall.condition),
  },
  {
    field: 'wall.wet',
    value: 'no',
    because: 'a bathroom or shower was not mentioned; a waterproofed wall would stop the job',
    absent: (job) => isUnknown(job.wall.wet),
  },
  {
    field: 'wall.separating',
    value: false,
    because: 'a wall to a neighbour, corridor or garage was not mentioned',
    absent: (job) => isUnknown(job.wall.separating),
  },
  {
    field: 'wall.tensioned',
    value: 'no',
    because: 'tensioned steel was not mentioned; in a flat that alone would stop the job',
    absent: (job) => job.wall.baseMaterial === 'concrete' && isUnknown(job.wall.tensioned),
  },
  {
    field: 'piece.glass',
    value: 'plain',
    because: 'what is in front was not said, so it is handled as ordinary glass',
    absent: ({ piece }) => isUnknown(piece.glass) && !piece.build?.glazing && mayBeGlazed(piece.kind),
  },
  {
    field: 'wall.thicknessMm',
    value: 100,
    because: 'thickness was not given, so what is on the far side counts too',
    absent: (job) => isUnknown(job.wall.thicknessMm),
  },
  {
    field: 'wall.datum.kind',
    value: 'floor',
    because: 'heights are taken from the floor unless another datum is named',
    absent: (job) => isUnknown(job.wall.datum?.kind),
  },
  {
    field: 'piece.hanging.seatToScrewMm',
    value: 0,
    because: 'the hanger is taken to sit on the screw itself',
    absent: (job) => isUnknown(job.piece.hanging.seatToScrewMm),
  },
  {
    field: 'crew.people',
    value: 1,
    because: 'nobody said how many lift, so the lift is judged for one',
    absent: (job) => isUnknown(job.crew?.people),
  },
  {
    field: 'crew.dustExtraction',
    value: false,
    because: 'no extraction was mentioned',
    absent: (job) => isUnknown(job.crew?.dustExtraction),
  },
  {
    field: 'place.below',
    value: 'nothing',
    because: 'nothing was said to be under it',
    absent: (job) => isUnknown(job.place.below),
  },
];

/** Every assumption of a plan, each field once; what a part of the computation assumed comes first. */
export function assumptionsOf(job: Job, made: readonly Assumption[]): Assumption[] {
  const all = [
    ...made,
    ...DEFAULTS.filter((each) => each.absent(job)).map(({ field, value, because }) => ({
      field,
      value,
      because,
    })),
  ];
  return all.filter((each, at) => all.findIndex((other) => other.field === each.field) === at);
}
