import { BATTEN } from '../fixing/stand-off.ts';
import type { Plan, Why } from '../plan-shape.ts';
import { basisOf } from '../sources.ts';
import { type Input, unitOf } from './explained.ts';

/** Where an input of a why comes from: a field of the job, a number of the plan, or the documents of that why. */
type Origin = { field: string } | { path: string } | 'table' | 'computed';

const ORIGINS: Readonly<Record<string, Origin>> = {
  'wall width': { field: 'wall.widthMm' },
  'wall height': { field: 'wall.heightMm' },
  'piece width': { field: 'piece.widthMm' },
  'piece height': { field: 'piece.heightMm' },
  bottom: { field: 'place.up.mm' },
  top: { field: 'place.up.mm' },
  'below the ceiling': { field: 'place.up.mm' },
  'left edge': { field: 'place.across.mm' },
  'right edge from the right end': { field: 'place.across.mm' },
  from: { field: 'place.across.fromMm' },
  to: { field: 'place.across.toMm' },
  'datum above the floor': { field: 'wall.datum.aboveFloorMm' },
  fall: { field: 'wall.datum.fallMm' },
  'hanger from the piece’s left edge': { field: 'piece.hanging.points' },
  drop: { field: 'piece.hanging.points' },
  'ring drop': { field: 'piece.hanging.points' },
  'middle of the rings': { field: 'piece.hanging.points' },
  'ring to ring': { field: 'piece.hanging.points' },
  'hooks apart': { field: 'piece.hanging.hooksApartMm' },
  'cord length': { field: 'piece.hanging.lengthMm' },
  'batten seat below the top': { field: 'piece.hanging.fromTopMm' },
  'batten length': { field: 'piece.hanging.lengthMm' },
  'seat to screw': { field: 'piece.hanging.seatToScrewMm' },
  'frame left edge': { path: 'frame.leftMm' },
  'frame right edge': { path: 'frame.rightMm' },
  'frame bottom edge': { path: 'frame.bottomMm' },
  'top of the frame': { path: 'frame.topMm' },
  rise: 'computed',
  'mark to mark': 'computed',
  'hanger read to': 'table',
  'half a pencil line': 'table',
  'bit wanders': 'table',
  'error as a rule': 'computed',
  'error at worst': 'computed',
  'stand-off': { field: 'piece.hanging.standOffMm' },
  bumper: { field: 'piece.bumperMm' },
  'hanger above the bottom edge': 'computed',
  'stud from the piece’s left edge': { field: 'wall.studs' },
  'batten’s end from the piece’s left edge': 'computed',
  'end to first screw': 'table',
  spaces: 'computed',
  space: 'computed',
  massKg: { field: 'piece.massKg' },
  margin: 'table',
  weightN: { path: 'actions.weightN' },
  by: { field: 'piece.hanging.by' },
  massFromLeftEndMm: 'computed',
  comFromWallMm: { field: 'piece.depthMm' },
  legAngleDeg: 'computed',
  finishMm: { field: 'wall.finish.thicknessMm' },
  boardAndGapMm: 'computed',
  beyondMm: 'computed',
  coatMm: 'computed',
  openedMm: 'computed',
  lathMm: 'table',
  flangeMm: 'table',
  wantedInWoodMm: 'table',
  plugMm: { path: 'fixing.plug.lengthMm' },
  inBaseMm: 'table',
  inWoodMm: 'computed',
  behindSleeveMm: 'table',
  screwMm: { path: 'fixing.screw.lengthMm' },
  outsideMm: { field: 'piece.hanging.standOffMm' },
  outsidePartMm: 'computed',
  beyondPlugMm: 'table',
  beyondScrewMm: 'table',
  diameterMm: 'table',
  lengthMm: 'table',
  country: { field: 'building.country' },
  shelf: { field: 'building.country' },
  holeMm: 'table',
  marks: 'computed',
  wall: { field: 'wall.baseMaterial' },
  anchor: 'table',
  shank: 'table',
  studs: 'computed',
  'screws in each': 'table',
  gauge: 'table',
  shearN: 'computed',
  actionN: 'computed',
  mayBearN: 'table',
  tensionN: 'computed',
  mayBearShearN: 'computed',
  mayBearTensionN: 'computed',
  resistanceN: { path: 'fixing.governing.resistanceN' },
  mode: 'computed',
  kind: 'computed',
  coreMm: 'table',
  rootMm: 'table',
  shareOfRoot: 'table',
  shareOfWeight: 'computed',
  momentNmm: 'computed',
  leverArmMm: 'computed',
  tensileMpa: 'table',
  steelTensionN: 'computed',
  steelFactor: 'table',
  permanentFactor: 'table',
  characteristicN: 'computed',
  capKg: 'table',
  gravity: 'table',
  ratedN: { field: 'proof' },
  offWallMm: 'computed',
  screwToLowerEdgeMm: 'table',
  screws: { path: 'fixing.count' },
  aboveBottomMm: 'computed',
};

/** The same name means another field across than up. */
const CENTRE: Readonly<Record<string, Origin>> = {
  'frame left edge': { field: 'place.across.mm' },
  'frame bottom edge': { field: 'place.up.mm' },
};

function originOf(why: Why, name: string): Origin | null {
  if (name === 'centre') return CENTRE[why.of] ?? null;
  const [, id, what] = /^mark (\w+) (across|up)$/.exec(name) ?? [];
  if (id !== undefined) return { path: `marks.${id}.${what === 'up' ? 'upMm' : 'fromLeftMm'}` };
  if (/^aboveBottom\w+Mm$/.test(name)) return 'computed';
  // The layers of a piece whose mass is reckoned: "glazing kg".
  if (why.of === 'mass' && / kg$/.test(name)) return 'computed';
  return Object.hasOwn(ORIGINS, name) ? (ORIGINS[name] ?? null) : null;
}

/** The names of a why's inputs that nothing here says the origin of. */
export function unknownOrigins(why: Why): string[] {
  return Object.keys(why.inputs).filter((name) => originOf(why, name) === null);
}

/** What went into a why, each with where it came from: said by the person, or taken where the plan assumes it. */
export function inputsOf(plan: Plan, why: Why): Input[] {
  return Object.entries(why.inputs).map(([name, value]) => {
    const origin = originOf(why, name) ?? 'computed';
    const unit =
      typeof value === 'number' ? unitOf(name) || (why.paths?.some(isOfTheSetOut) ? 'mm' : '') : '';
    const told = { name, value, unit };
    if (name === 'outsideMm' && isOnBatten(plan)) return { ...told, from: 'table', of: basisOf(BATTEN).id };
    if (origin === 'table') return { ...told, from: 'table', of: why.basis.map(({ id }) => id).join(', ') };
    if (origin === 'computed') return { ...told, from: 'computed', of: why.of };
    if ('path' in origin) return { ...told, from: 'computed', of: origin.path };
    return { ...told, ...givenOrTaken(plan, origin.field) };
  });
}

/** A field the plan assumes was taken; any other was said. */
export function givenOrTaken({ assumptions }: Plan, field: string): Pick<Input, 'from' | 'of'> {
  return { from: assumptions.some((each) => each.field === field) ? 'assumed' : 'said', of: field };
}

/** What stands outside the wall is then the batten or board, and not the hanger. */
const isOnBatten = ({ fixing, why }: Plan): boolean =>
  fixing?.fastener === 'batten-screws' ||
  fixing?.fastener === 'board-across-studs' ||
  why.some(({ of, inputs }) => of === 'load on each mark' && inputs.by === 'batten');

const isOfTheSetOut = (path: string): boolean => /^(?:frame|marks|batten)\b/.test(path);
