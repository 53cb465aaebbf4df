import { type Kilograms, type Millimetres, mm } from '../../quantity.ts';
import type { Sourced } from '../../sources.ts';
import type { Fastener } from '../fastener.ts';
import type { Bit } from '../fixing-shape.ts';
import {
  type CoreDiameter,
  type Gauge,
  nominalOf,
  TAPPING_SCREW_CORE,
  THICK_CORES,
} from '../steel/screw-sizes.ts';

/** What goes into the hole: a screw by gauge, or something thicker. */
export type Shank = Gauge | 'coach-8' | 'stud-M8' | 'stud-M10' | 'concrete-screw-6' | 'bolt-M5';

/** One line of a preference walk for a base material: the first whose utilisation is at most 1 is taken. */
export type WalkRow = {
  readonly fastener: Fastener;
  readonly shank: Shank;
  readonly holeMm: number;
  /** In the base material: the plug's length, or how deep a stud or screw goes. */
  readonly embedMm: number;
  readonly plugMm?: number;
  readonly action: Bit['action'];
  readonly cap: Sourced<Kilograms>;
  /** What a careful person uses without a second look, kg. */
  readonly usualKg: number;
  /** Rows that put the hangers on a batten of four or more of these; the whole piece's cap, kg. */
  readonly onBattenWholeKg?: number;
  readonly only?: 'keyholes';
  /** Clear depth a toggle needs behind the face shell, mm. */
  readonly voidMm?: number;
  /** One long plug through what carries nothing into the base material, with its own screw. */
  readonly spans?: true;
  /** A stud in a mesh sleeve. */
  readonly sleeve?: true;
  readonly note?: string;
};

const SHANK_MM = { 'coach-8': 8, 'stud-M8': 8, 'stud-M10': 10, 'concrete-screw-6': 6, 'bolt-M5': 5 } as const;

/** Nominal diameter of a shank, mm. */
export function shankMm(shank: Shank): Millimetres {
  return typeof shank === 'number' ? nominalOf(shank).nominalMm : mm(SHANK_MM[shank]);
}

/** Whether it ends in a hexagon or a nut, which goes into no keyhole. */
export function isHexHeaded(shank: Shank): boolean {
  return shank === 'coach-8' || shank === 'stud-M8' || shank === 'stud-M10';
}

/** Core of a shank: tapping-screw thread by gauge, or the declared core of the thicker ones. */
export function coreOf(shank: Shank): CoreDiameter {
  return typeof shank === 'number' ? TAPPING_SCREW_CORE.value[shank] : THICK_CORES.value[shank];
}

const SHANK_NAMES = {
  'coach-8': '8 mm coach screw and washer',
  'stud-M8': 'M8 stud',
  'stud-M10': 'M10 stud',
  'concrete-screw-6': '6 mm screw',
  'bolt-M5': 'M5 bolt',
} as const;

/** What a row is called in a sentence: "8 x 50 plug with a 14 gauge screw". */
export function nameOf(row: WalkRow): string {
  const shank = typeof row.shank === 'number' ? `${row.shank} gauge screw` : SHANK_NAMES[row.shank];
  const onBatten = row.onBattenWholeKg === undefined ? '' : 'batten on four or more: ';
  switch (row.fastener) {
    case 'resin-stud':
      return `${onBatten}resin and ${shank}, ${row.embedMm} deep`;
    case 'concrete-screw':
      return `${onBatten}concrete screw, ${row.embedMm} in the concrete`;
    case 'spring-toggle':
      return `spring toggle, ${shank}`;
    case 'aerated-plug':
      return `${onBatten}${row.holeMm} x ${row.plugMm} plug made for aerated block with ${article(row.shank)} ${shank}`;
    case 'frame-plug':
      return `${onBatten}long ${row.holeMm} mm frame plug through board and gap with ${article(row.shank)} ${shank}`;
    case 'hollow-unit-plug':
      return `${onBatten}${row.holeMm} x ${row.plugMm} hollow-unit plug with ${article(row.shank)} ${shank}`;
    default:
      return `${onBatten}${row.holeMm} x ${row.plugMm} plug with ${article(row.shank)} ${shank}`;
  }
}

const article = (shank: Shank): string => (shank === 8 || shank === 'coach-8' ? 'an' : 'a');
