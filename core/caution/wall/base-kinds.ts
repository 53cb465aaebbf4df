import type { BaseMaterial } from '../../wall/wall.ts';
import type { Facts } from '../facts.ts';

type Kind = {
  /** Solid stuff right behind the finish. */
  masonry: boolean;
  /** Drilling it makes dust that holds silica. */
  silica: boolean;
  /** Gypsum board with taped and filled joints. */
  plasterboard: boolean;
};

const kind = (masonry: boolean, silica: boolean, plasterboard: boolean): Kind => ({
  masonry,
  silica,
  plasterboard,
});

/** What the cautions need to know of each base material. Fibre cement is half silica flour; dabs stand on block; old plaster is lime and sand. */
const KINDS: Record<BaseMaterial, Kind> = {
  'clay-brick': kind(true, true, false),
  'concrete-block': kind(true, true, false),
  concrete: kind(true, true, false),
  'aerated-concrete': kind(true, true, false),
  'natural-stone': kind(true, true, false),
  'plasterboard-on-timber-studs': kind(false, false, true),
  'plasterboard-on-steel-studs': kind(false, false, true),
  'plasterboard-on-dabs': kind(true, true, true),
  'lath-and-plaster': kind(false, true, false),
  'fibre-cement-on-studs': kind(false, true, false),
  timber: kind(false, false, false),
  unknown: kind(false, false, false),
};

/** What kind of wall this is, or null while nobody has said. */
export function baseKind({ job }: Facts): Kind | null {
  const base = job.wall?.baseMaterial;
  return base === undefined ? null : (KINDS[base] ?? null);
}

/** True when something is drilled: a rail hook or a nail is not. */
export function drills({ fixing }: Facts): boolean {
  return !(fixing?.ok && fixing.fixing.bit.kind === 'none');
}
