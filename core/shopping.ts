import type { Fastener, Fixing } from './plan-shape.ts';

/** What each fastener is called on a shelf: by kind, diameter and length, never by a maker or a colour. */
const SHELF_NAME: Record<Fastener, string> = {
  'plug-and-screw': 'plastic plug',
  'hollow-unit-plug': 'long plug for hollow and perforated units',
  'aerated-plug': 'plug made for aerated block',
  'frame-plug': 'long frame plug with its own screw',
  'concrete-screw': 'concrete screw',
  'resin-stud': 'threaded stud with injection resin',
  'stud-screw': 'wood screw',
  'steel-stud-screw': 'thin-steel screw',
  'timber-screw': 'wood screw',
  'lath-screw': 'wood screw',
  'batten-screws': 'wood screw, countersunk',
  'board-across-studs': 'board 18 to 25 mm thick, long enough to cross two studs',
  'screw-in-anchor': 'screw-in board anchor',
  'expanding-sleeve-anchor': 'expanding sleeve anchor, grip to suit the board',
  'spring-toggle': 'spring toggle with plate washer',
  'bar-toggle': 'pivoting bar toggle with plate washer',
  'strap-toggle': 'strap toggle',
  'winged-plug': 'winged board plug',
  'pin-hook': 'hardened-pin picture hook',
  'picture-rail-hook': 'picture-rail hook and chain',
};

/** What to buy or take from the van, with how many. Sizes in millimetres and screw gauge. */
export function shoppingOf(fixing: Fixing): { item: string; count: number }[] {
  const list: { item: string; count: number }[] = [];
  const name = SHELF_NAME[fixing.fastener];
  if (fixing.plug) {
    const { diameterMm, lengthMm } = fixing.plug;
    list.push({ item: `${name} ${diameterMm} x ${lengthMm} mm`, count: fixing.count });
  } else if (!fixing.screw || !/screw/.test(name)) {
    list.push({ item: name, count: fixing.fastener === 'board-across-studs' ? 1 : fixing.count });
  }
  if (fixing.screw) list.push({ item: screwName(fixing.screw), count: fixing.count });
  if (fixing.bit.kind !== 'none') {
    list.push({ item: `${fixing.bit.kind} bit ${fixing.bit.diameterMm} mm`, count: 1 });
  }
  if (fixing.pilot) list.push({ item: `wood bit ${fixing.pilot.diameterMm} mm (pilot)`, count: 1 });
  return list.filter((each, at) => list.findIndex((other) => other.item === each.item) === at);
}

/** A screw as asked for at a counter: "14 gauge (6.1 mm) x 75 mm pan head screw". */
export function screwName(screw: NonNullable<Fixing['screw']>): string {
  const thick = screw.gauge ? `${screw.gauge} gauge (${round(screw.diameterMm)} mm)` : `${round(screw.diameterMm)} mm`;
  const head = screw.head === 'washer' ? 'screw with washer' : `${screw.head} head screw`;
  return `${thick} x ${round(screw.lengthMm)} mm ${head}`;
}

const round = (value: number): number => Math.round(value * 10) / 10;
