import type { Country } from '../job.ts';
import { mm } from '../quantity.ts';
import { basisOf, sourced } from '../sources.ts';
import { hasNoRule, marginOf, type Zone, type ZoneWall } from './zone.ts';

export const BAND = sourced(mm(150), 'BS7671:2018', '522.6.202(i)', 'read-secondary');
const CORNER_AU = sourced(mm(150), 'ASNZS3000:2018', '3.9.4.3', 'from-memory');

/** The band under the ceiling and at each corner with another wall; none where no rule has them. */
export function bandsOf(wall: ZoneWall, country: Country | 'unknown' | undefined): Zone[] {
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
