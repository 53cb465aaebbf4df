import { type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';

/** UK: zone 1 up to 2.25 m or the highest outlet, zone 2 0.6 m beyond. */
export const UK_ZONES = sourced(
  { up: mm(2250), beyond: mm(600) },
  'BS7671:2018',
  'section 701',
  'read-secondary',
);
/** AU: zone 1 up to 2.5 m, zone 2 0.6 m beyond to 2.25 m, zone 3 2.4 m beyond that to 2.5 m. */
export const AU_ZONES = sourced(
  { up: mm(2500), beyond: mm(600), beyondUp: mm(2250), further: mm(2400) },
  'ASNZS3000:2018',
  'section 6.2',
  'read-secondary',
);
/** The least an electric fitting must keep out of a UK zone. */
const UK_SEAL = sourced('IPX4', 'BS7671:2018', 'section 701', 'read-secondary');

export type WetZone = 'zone1' | 'zone2' | 'zone3' | 'outside';

/** Where a point stands in a UK bathroom; `beyondMm` sideways from the edge of bath or shower, negative inside. */
export function ukWetZone(beyondMm: Millimetres, upMm: Millimetres, outletMm: Millimetres): WetZone {
  const { up, beyond } = UK_ZONES.value;
  if (upMm > Math.max(up, outletMm) || beyondMm > beyond) return 'outside';
  return beyondMm <= 0 ? 'zone1' : 'zone2';
}

/** Where a point stands in an Australian bathroom; `beyondMm` sideways from zone 1. Edges belong to the inner zone. */
export function auWetZone(beyondMm: Millimetres, upMm: Millimetres): WetZone {
  const { up, beyond, beyondUp, further } = AU_ZONES.value;
  if (upMm > up || beyondMm > beyond + further) return 'outside';
  if (beyondMm <= 0) return 'zone1';
  return beyondMm <= beyond && upMm <= beyondUp ? 'zone2' : 'zone3';
}

/** What a fitting in a UK zone must be sealed to; nothing outside. */
export function sealNeeded(zone: WetZone): string | null {
  return zone === 'outside' ? null : UK_SEAL.value;
}

/** Whether a mains-lit mirror in this zone stops until an electrician has chosen and connected it. */
export function litStops(zone: WetZone): boolean {
  return zone === 'zone1' || zone === 'zone2';
}
