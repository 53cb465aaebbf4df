import { type Millimetres, mm } from '../quantity.ts';
import type { DatumKind, Wall } from '../wall/wall.ts';

/** What heights are measured from, what is known of it, and how it runs out. Millimetres. */
export type Datum = {
  kind: DatumKind;
  /** Above the finished floor; null when not known. */
  aboveFloorMm: Millimetres | null;
  /** Over the wall's width, positive when its right end is higher. */
  fallMm: Millimetres;
  /** A flight whose nosing line is known by its rise and going: nothing hangs below that line. */
  stairs: boolean;
};

/** The datum of a wall: the level floor unless another is named. A ceiling lies at the wall's height, a nosing line slopes. */
export function datumOf(wall: Pick<Wall, 'datum' | 'heightMm' | 'ceilingFallMm' | 'widthMm'>): Datum {
  const kind = wall.datum?.kind ?? 'floor';
  const said = wall.datum?.aboveFloorMm;
  const aboveFloorMm =
    kind === 'ceiling' ? (wall.heightMm ?? null) : (said ?? (kind === 'floor' ? mm(0) : null));
  const stairs = nosingFall(wall);
  const fall = wall.datum?.fallMm ?? stairs ?? (kind === 'ceiling' ? wall.ceilingFallMm : undefined);
  return { kind, aboveFloorMm, fallMm: fall ?? mm(0), stairs: stairs !== null };
}

/** How the nosing line runs out over the wall's width: rise / going x width, positive when it climbs to the right; null when not known. */
function nosingFall({ datum, widthMm }: Pick<Wall, 'datum' | 'widthMm'>): Millimetres | null {
  const { kind, riseMm, goingMm, climbs } = datum ?? {};
  if (kind !== 'nosing' || riseMm === undefined || climbs === undefined) return null;
  if (goingMm === undefined || !(goingMm > 0)) return null;
  return mm(((climbs === 'left' ? 0 - riseMm : riseMm) / goingMm) * widthMm);
}

/** How much higher the datum lies at one place than at another: fall x (at - from) / wall width. Millimetres. */
export function datumRise(
  datum: Pick<Datum, 'fallMm'>,
  wallWidthMm: Millimetres,
  fromMm: Millimetres,
  atMm: Millimetres,
): Millimetres {
  return mm((datum.fallMm * (atMm - fromMm)) / wallWidthMm);
}

/** The datum in words: "the floor", "the mantel". */
export function datumName(kind: DatumKind): string {
  if (kind === 'nosing') return 'the nosing line';
  return kind === 'furniture' ? 'the furniture top' : `the ${kind}`;
}
