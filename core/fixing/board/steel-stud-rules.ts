import { kg, type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { Wall } from '../../wall/wall.ts';
import { practice } from '../proof/caps.ts';

const AT = 'plasterboard on steel studs';

/** Line 2: a strap toggle through board and flange. */
export const FLANGE_TOGGLE = { usualKg: 10, cap: practice(15, `${AT}, line 2: strap toggle in the flange`) };

/** Line 3: a board or batten across studs, two toggles or four screws at each. */
export const ACROSS_STEEL = sourced(
  { usualKg: 30, wholeKg: 40, toggles: 2, screws: 4, endMm: 50, most: 3 },
  'common-practice',
  `${AT}, line 3: board or batten across two or more studs`,
  'common-practice',
);

/** Line 4: a thin-steel screw in the flange, by the thickness of the steel. */
export const THIN_STEEL_SCREW = sourced(
  {
    usualKg: 4,
    thinMm: 0.5,
    thinKg: kg(6),
    thickMm: 0.75,
    thickKg: kg(10),
    leastMm: 30,
    mostMm: 40,
    pilotMm: 2.5,
  },
  'common-practice',
  `${AT}, line 4: steel 0.5, and 0.75 to 1.0`,
  'common-practice',
);

/** What the flange itself adds to a hole through the board. */
export const FLANGE_MM = sourced(
  mm(1),
  'common-practice',
  `${AT}: flanges 0.5 to 1.0 thick`,
  'common-practice',
);

/** The steel of the studs: as said, else the thinnest that is built with, mm. */
export function steelOf({ steelMm }: Wall): { steelMm: Millimetres; said: boolean } {
  return steelMm !== undefined && steelMm > 0
    ? { steelMm, said: true }
    : { steelMm: mm(THIN_STEEL_SCREW.value.thinMm), said: false };
}
