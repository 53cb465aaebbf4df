import type { Country } from '../job.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { basisOf, sourced } from '../sources.ts';
import { serviceOf, sizeOf, spokenKind } from './accessory.ts';
import { BAND, bandsOf } from './bands.ts';
import type { Accessory } from './wall.ts';
import { marginOf, type Zone, type ZoneWall } from './zone.ts';

/** A wall this thin hides the far side's cables too. */
export const THIN_WALL = sourced(mm(100), 'BS7671:2018', '522.6.202(i), last sentence', 'read-secondary');
const BESIDE_PLUMBING = sourced(mm(75), 'our-choice', 'safety 1.2: beside a plumbing point', 'our-choice');

/**
 * Every keep-clear zone of a wall, both faces, in the order in which a tie is named: top, corners, accessories.
 * Zones of BS 7671 522.6.202 serve wherever a country has no better rule; the US and Canada have no band.
 */
export function zonesOf(wall: ZoneWall, country: Country | 'unknown' | undefined): Zone[] {
  return [...bandsOf(wall, country), ...accessoryZones(wall, country)];
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
    marginMm: marginOf(country),
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
