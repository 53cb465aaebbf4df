import type { Accessory, Country, Wall } from '../job.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { type Basis, basisOf, sourced } from '../sources.ts';
import { serviceOf, sizeOf, spokenKind } from './accessory.ts';

const BAND = sourced(mm(150), 'BS7671:2018', '522.6.202(i)', 'read-secondary');
const CORNER_AU = sourced(mm(150), 'ASNZS3000:2018', '3.9.4.3', 'from-memory');
/** A wall this thin hides the far side's cables too. */
export const THIN_WALL = sourced(mm(100), 'BS7671:2018', '522.6.202(i), last sentence', 'read-secondary');
const BESIDE_PLUMBING = sourced(mm(75), 'our-choice', 'safety 1.2: beside a plumbing point', 'our-choice');
const MARGIN = sourced(mm(50), 'our-choice', 'safety 1.2: margin', 'our-choice');
const MARGIN_NO_RULE = sourced(
  mm(75),
  'our-choice',
  'safety 1.2: margin, US or unknown country',
  'our-choice',
);

/**
 * A part of the wall where a service may run: an interval across (from the wall's left end) or up (from
 * the finished floor), or the band under the ceiling, which is measured down from the ceiling.
 */
export type Zone = {
  readonly id: string;
  readonly runs: 'across' | 'up' | 'under-ceiling';
  readonly fromMm: Millimetres;
  readonly toMm: Millimetres;
  /** How near is tight. Nothing for plumbing: its strip is already the fixture and 75 mm each side. */
  readonly marginMm: Millimetres;
  readonly service: 'electric' | 'plumbing';
  /** False where no rule counts the far face, though a cavity joins both: at most a warning. */
  readonly firm: boolean;
  /** Completes "that hole is ...". */
  readonly where: string;
  readonly basis: Basis;
};

export type ZoneWall = Pick<Wall, 'widthMm'> &
  Partial<Pick<Wall, 'heightMm' | 'thicknessMm' | 'ends' | 'accessories' | 'baseMaterial'>>;

/** The margin that counts as tight, in millimetres: 50, or 75 where no published rule says where cables run. */
export function marginOf(country: Country | 'unknown' | undefined): Millimetres {
  return hasNoRule(country) || country === undefined || country === 'unknown'
    ? MARGIN_NO_RULE.value
    : MARGIN.value;
}

/**
 * Every keep-clear zone of a wall, both faces, in the order in which a tie is named: top, corners, accessories.
 * Zones of BS 7671 522.6.202 serve wherever a country has no better rule; the US and Canada have no band.
 */
export function zonesOf(wall: ZoneWall, country: Country | 'unknown' | undefined): Zone[] {
  return [...bandsOf(wall, country), ...accessoryZones(wall, country)];
}

const hasNoRule = (country: Country | 'unknown' | undefined): boolean => country === 'US' || country === 'CA';

function bandsOf(wall: ZoneWall, country: Country | 'unknown' | undefined): Zone[] {
  if (hasNoRule(country)) return [];
  const band = country === 'AU' || country === 'NZ' ? CORNER_AU : BAND;
  const shared = {
    service: 'electric',
    firm: true,
    marginMm: marginOf(country),
    basis: basisOf(band),
  } as const;
  const from = mm(wall.widthMm - band.value);
  const beside = `within ${band.value} mm of the`;
  const zones: Zone[] = [
    {
      ...shared,
      id: 'top',
      runs: 'under-ceiling',
      fromMm: mm(-Infinity),
      toMm: band.value,
      where: `in the top ${band.value} mm of the wall`,
    },
  ];
  if (wall.ends?.left !== 'open') {
    zones.push({
      ...shared,
      id: 'corner-left',
      runs: 'across',
      fromMm: mm(-Infinity),
      toMm: band.value,
      where: `${beside} left-hand corner`,
    });
  }
  if (wall.ends?.right !== 'open') {
    zones.push({
      ...shared,
      id: 'corner-right',
      runs: 'across',
      fromMm: from,
      toMm: mm(Infinity),
      where: `${beside} right-hand corner`,
    });
  }
  return zones;
}

function accessoryZones(wall: ZoneWall, country: Country | 'unknown' | undefined): Zone[] {
  if (!Array.isArray(wall.accessories)) return [];
  return wall.accessories.flatMap((accessory: Accessory, at: number) => {
    const service = serviceOf(accessory.kind);
    const counts = faceCounts(accessory, service, wall);
    if (service === 'opening' || counts === 'no') return [];
    return stripsOf(accessory, at, service, counts === 'firmly', wall, country);
  });
}

/** The far face counts in a thin wall; its pipes count in any stud wall, and its cables are at most a warning there. */
function faceCounts(accessory: Accessory, service: string, wall: ZoneWall): 'firmly' | 'softly' | 'no' {
  if (accessory.face === 'this' || isThin(wall.thicknessMm)) return 'firmly';
  if (!isHollow(wall)) return 'no';
  return service === 'plumbing' ? 'firmly' : 'softly';
}

/** True at 100 mm or less, and where nobody measured. */
export function isThin(thicknessMm: Millimetres | undefined): boolean {
  return thicknessMm === undefined || thicknessMm <= THIN_WALL.value;
}

const isHollow = (wall: ZoneWall): boolean =>
  wall.baseMaterial?.endsWith('-studs') === true || wall.baseMaterial === 'lath-and-plaster';

function stripsOf(
  accessory: Accessory,
  at: number,
  service: 'electric' | 'plumbing',
  firm: boolean,
  wall: ZoneWall,
  country: Country | 'unknown' | undefined,
): Zone[] {
  const far = accessory.face === 'far';
  const { widthMm, heightMm } = sizeOf(accessory);
  const plumbing = service === 'plumbing';
  const x = far ? wall.widthMm - accessory.xMm : accessory.xMm;
  const halfWide = widthMm / 2 + (plumbing ? BESIDE_PLUMBING.value : 0);
  const name = `the ${spokenKind(accessory.kind)}${far ? ' on the other side' : ''}`;
  const id = `${far ? 'far' : 'acc'}${at}`;
  const shared = {
    service,
    firm,
    marginMm: plumbing ? mm(0) : marginOf(country),
    basis: basisOf(plumbing ? BESIDE_PLUMBING : far ? THIN_WALL : BAND),
  };
  return [
    {
      ...shared,
      id: `${id}-vertical`,
      runs: 'across',
      fromMm: mm(x - halfWide),
      toMm: mm(x + halfWide),
      where: `straight above or below ${name}`,
    },
    {
      ...shared,
      id: `${id}-horizontal`,
      runs: 'up',
      fromMm: mm(accessory.yMm - heightMm / 2),
      toMm: mm(accessory.yMm + heightMm / 2),
      where: `level with ${name}`,
    },
  ];
}
