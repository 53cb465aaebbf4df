import { type Millimetres, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';
import type { BaseMaterial, Wall } from './wall.ts';

/** Studs whose places are known: centre to centre, centre of the first from the wall's left end, and width. */
export type KnownStuds = { spacingMm: Millimetres; firstMm: Millimetres; widthMm: Millimetres };

/** Whether a screw's centre lies where it may in the nearest stud; `offBy` right of its middle positive. */
export type Landing = { on: boolean; offBy: Millimetres; studCentreMm: Millimetres };

/** Base materials that have studs behind the sheet. */
const STUD_WALLS: readonly BaseMaterial[] = [
  'plasterboard-on-timber-studs',
  'plasterboard-on-steel-studs',
  'lath-and-plaster',
  'fibre-cement-on-studs',
];

/** The narrow end of what is built: a stud taken too wide would let a screw split its edge. */
export const NARROW_STUD = sourced(
  mm(35),
  'common-practice',
  'trade 3.5: studs 35 to 50, narrow end',
  'common-practice',
);
/** Edge distance of a screw in predrilled timber loaded along the grain, in diameters. */
export const EDGE_DIAMETERS = sourced(
  3,
  'EN1995-1-1',
  'table 8.2: 3 d from an unloaded edge, predrilled',
  'from-memory',
);
/** 10 gauge, the usual screw into a stud. */
export const TEN_GAUGE = sourced(mm(4.83), 'ASME-B18.6.1', 'No. 10, 0.190 in', 'read');

/** Whether a base material has studs behind its sheet. */
export const hasStuds = (base: BaseMaterial): boolean => STUD_WALLS.includes(base);

/** Studs of a wall, or null where it has none or where spacing or the first one is not known. */
export function knownStuds(wall: Pick<Wall, 'baseMaterial' | 'studs'>): KnownStuds | null {
  const { studs } = wall;
  // Lining boards may stand on studs; a wall of solid timber has none to tell of.
  const mayHave = hasStuds(wall.baseMaterial) || wall.baseMaterial === 'timber';
  if (!mayHave || studs === undefined || studs === 'unknown') return null;
  const { spacingMm, firstMm, widthMm = NARROW_STUD.value } = studs;
  if (spacingMm === undefined || firstMm === undefined) return null;
  const sound = Number.isFinite(firstMm) && widthMm > 0 && spacingMm > widthMm && Number.isFinite(spacingMm);
  return sound ? { spacingMm, firstMm, widthMm } : null;
}

/** Centre of the stud nearest to x; none lies left of the first. Millimetres from the wall's left end. */
export function studAt(xMm: Millimetres, studs: KnownStuds): Millimetres {
  const nth = Math.max(0, Math.round((xMm - studs.firstMm) / studs.spacingMm));
  return mm(studs.firstMm + nth * studs.spacingMm);
}

/** How far from a stud's middle a screw may be: half its width less three diameters; below zero when none may. */
export function landingRoom(studs: KnownStuds, screwDiameterMm: Millimetres): Millimetres {
  return mm(studs.widthMm / 2 - EDGE_DIAMETERS.value * screwDiameterMm);
}

/**
 * Whether a screw at x lands in a stud: its centre within stud / 2 - 3 d of the stud's middle
 * (EN 1995-1-1 table 8.2, with a pilot hole). Millimetres.
 */
export function landing(xMm: Millimetres, studs: KnownStuds, screwDiameterMm: Millimetres): Landing {
  const studCentreMm = studAt(xMm, studs);
  const offBy = mm(xMm - studCentreMm);
  return { on: Math.abs(offBy) <= landingRoom(studs, screwDiameterMm), offBy, studCentreMm };
}

/** Centres of the studs from one place to another, from the left, at most so many. */
export function studsBetween(
  fromMm: Millimetres,
  toMm: Millimetres,
  studs: KnownStuds,
  most: number,
): Millimetres[] {
  const firstNth = Math.max(0, Math.ceil((fromMm - studs.firstMm) / studs.spacingMm));
  const lastNth = Math.floor((toMm - studs.firstMm) / studs.spacingMm);
  const count = Math.min(Math.max(lastNth - firstNth + 1, 0), most);
  return Array.from({ length: count }, (_, at) => mm(studs.firstMm + (firstNth + at) * studs.spacingMm));
}

/** Fewest and most studs that can lie under a frame: floor(b / s) and one more. */
export function studsUnder(
  frameWidthMm: Millimetres,
  spacingMm: Millimetres,
): { least: number; most: number } {
  const least = Math.floor(frameWidthMm / spacingMm);
  return { least, most: least + 1 };
}
