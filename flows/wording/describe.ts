import type { JobSoFar } from '../../core/job.ts';
import { type Millimetres, mm } from '../../core/quantity.ts';
import type { Accessory } from '../../core/wall/wall.ts';
import type { DisplayUnit } from '../reading.ts';
import { hangingText } from './hanging.ts';
import { figure, length, mass } from './length.ts';
import { phrases } from './phrases.ts';
import { placeInWords } from './place.ts';
import { unplacedText } from './unplaced.ts';
import { ACCESSORY, DATUM, MATERIAL, VALUE } from './words.ts';

/** What a part of a job says, a phrase each, with its unit: "24 kg", "12 mm plaster", "centred". */
export function describe(part: JobSoFar, unit: DisplayUnit): string[] {
  return [
    ...ofPiece(part, unit),
    ...ofWall(part, unit),
    ...placeInWords(part, unit),
    ...ofBuilding(part),
    ...ofCrew(part),
  ];
}

function ofPiece({ piece }: JobSoFar, unit: DisplayUnit): string[] {
  if (!piece) return [];
  return phrases([
    named('piece.kind', piece.kind),
    piece.massKg !== undefined && mass(piece.massKg, unit),
    sizeText(piece.widthMm, piece.heightMm, unit),
    piece.depthMm !== undefined && `${length(piece.depthMm, unit)} deep`,
    named('piece.glass', piece.glass),
    named('piece.lit', piece.lit),
    piece.build !== undefined && piece.massKg === undefined && buildText(piece.build),
    piece.hanging !== undefined && hangingText(piece.hanging, unit),
  ]);
}

/** As said, since what it is made of is sold in millimetres: "4 mm glass, 60 x 20 mm hardwood frame". */
function buildText({
  glazing,
  frame,
  backing,
}: NonNullable<NonNullable<JobSoFar['piece']>['build']>): string {
  return phrases([
    glazing !== undefined && `${glazing.thicknessMm} mm ${glazing.material}`,
    frame !== undefined &&
      `${frame.widthMm} x ${frame.thicknessMm} mm ${frame.material === 'mdf' ? 'MDF' : frame.material} frame`,
    backing !== undefined &&
      `${backing.thicknessMm} mm ${backing.material === 'mdf' ? 'MDF' : backing.material} back`,
  ]).join(', ');
}

function sizeText(width: Millimetres | undefined, height: Millimetres | undefined, unit: DisplayUnit) {
  if (width !== undefined && height !== undefined)
    return `${figure(width, unit)} wide x ${length(height, unit)} high`;
  if (width !== undefined) return `${length(width, unit)} wide`;
  return height !== undefined && `${length(height, unit)} high`;
}

function ofWall({ wall }: JobSoFar, unit: DisplayUnit): string[] {
  if (!wall) return [];
  const { finish, studs, datum } = wall;
  return phrases([
    wall.baseMaterial !== undefined && MATERIAL[wall.baseMaterial],
    named('wall.cores', wall.cores),
    finish !== undefined && finishText(finish, unit),
    wall.boardMm !== undefined && `board ${length(wall.boardMm, unit)}`,
    wall.boardLayers !== undefined && `${wall.boardLayers} layers of board`,
    wall.voidMm !== undefined && `${length(wall.voidMm, unit)} clear behind`,
    wall.thicknessMm !== undefined && `wall ${length(wall.thicknessMm, unit)} thick`,
    wall.widthMm !== undefined && `wall ${length(wall.widthMm, unit)} wide`,
    wall.heightMm !== undefined && `ceiling ${length(wall.heightMm, unit)} up`,
    datum?.aboveFloorMm !== undefined &&
      datum.kind !== 'floor' &&
      `${DATUM[datum.kind ?? 'floor']} ${length(datum.aboveFloorMm, unit)} above the floor`,
    studs !== undefined && studsText(studs, unit),
    wall.accessories !== undefined &&
      !(wall.accessories.length === 0 && (wall.unplaced ?? []).length > 0) &&
      accessoriesText(wall.accessories, wall.farSide, unit),
    (wall.unplaced ?? []).map((each) => unplacedText(each, unit)).join('; '),
    ...(['farSide', 'wet', 'coating', 'asbestos', 'tensioned', 'separating', 'condition'] as const).map(
      (key) => named(`wall.${key}`, wall[key]),
    ),
  ]);
}

function finishText(finish: NonNullable<NonNullable<JobSoFar['wall']>['finish']>, unit: DisplayUnit): string {
  if (finish.kind === 'unknown' && finish.thicknessMm === undefined) return 'finish not known';
  if (finish.kind === 'unknown') return `${length(finish.thicknessMm ?? mm(0), unit)} finish, kind not known`;
  const kind = finish.kind === 'bare' ? 'no finish' : (finish.kind ?? 'finish');
  return finish.thicknessMm === undefined ? kind : `${length(finish.thicknessMm, unit)} ${kind}`;
}

function studsText(studs: NonNullable<NonNullable<JobSoFar['wall']>['studs']>, unit: DisplayUnit): string {
  if (studs === 'unknown') return 'studs not found';
  const said = phrases([
    studs.firstMm !== undefined && `first at ${length(studs.firstMm, unit)}`,
    studs.spacingMm !== undefined && `every ${length(studs.spacingMm, unit)}`,
    studs.widthMm !== undefined && `${length(studs.widthMm, unit)} wide`,
  ]);
  return said.length === 0 ? '' : `studs ${said.join(', ')}`;
}

function accessoriesText(
  accessories: Accessory[] | 'unknown',
  farSide: 'seen' | 'unknown' | undefined,
  unit: DisplayUnit,
): string {
  if (accessories === 'unknown') return 'what is on the wall: not looked at';
  if (accessories.length === 0)
    return farSide === 'unknown' ? 'nothing on this face of the wall' : 'nothing on either face of the wall';
  const said = accessories
    .map((each) => {
      const far = each.face === 'far' ? ' on the far face' : '';
      return `${ACCESSORY[each.kind]}${far} ${length(each.xMm, unit)} from the left${far === '' ? '' : ' as you face it there'}, ${length(each.yMm, unit)} up`;
    })
    .join('; ');
  return farSide === undefined && accessories.every(({ face }) => face === 'this') ? said + FAR_TAKEN : said;
}

/** A list counts for both faces (contract 4); whoever looked at one only has to hear that. */
const FAR_TAKEN = ' (nothing told of the other side: I take it as looked at, with nothing there)';

function ofBuilding({ building }: JobSoFar): string[] {
  if (!building) return [];
  const { yearBuilt, rewiredYear } = building;
  return phrases([
    named('building.country', building.country),
    yearBuilt !== undefined && (yearBuilt === 'unknown' ? 'year not known' : `built ${yearBuilt}`),
    rewiredYear !== undefined &&
      (rewiredYear === 'unknown' ? 'rewiring not known' : `rewired ${rewiredYear}`),
    ...(['kind', 'tenure', 'consent', 'heritage', 'seismic'] as const).map((key) =>
      named(`building.${key}`, building[key]),
    ),
  ]);
}

function ofCrew({ crew, proof }: JobSoFar): string[] {
  const people = crew?.people;
  return phrases([
    people !== undefined &&
      (people === 'unknown'
        ? 'how many lift not known'
        : people === 1
          ? 'one lifts'
          : `${COUNT[people] ?? people} lift`),
    named('crew.dustExtraction', crew?.dustExtraction),
    named('crew.lifter', crew?.lifter),
    proof?.packetRatingN !== undefined && `packet says ${Math.round(proof.packetRatingN)} N each`,
    proof?.pullTestN !== undefined && `${proof.pullTestN.length} pull tests`,
  ]);
}

/** Small counts are said as words. */
const COUNT: Readonly<Record<number, string>> = { 2: 'two', 3: 'three', 4: 'four', 5: 'five', 6: 'six' };

function named(path: string, value: string | boolean | undefined): string | false {
  return value !== undefined && (VALUE[path]?.[String(value)] ?? false);
}
