import { type Millimetres, mm } from '../quantity.ts';
import type { DatumKind, Wall } from '../wall/wall.ts';

/** What heights are measured from, what is known of it, and how it runs out. Millimetres. */
export type Datum = {
  kind: DatumKind;
  /** Above the finished floor; null when not known. */
  aboveFloorMm: Millimetres | null;
  /** Over the wall's width, positive when its right end is higher. */
  fallMm: Millimetres;
  fallKnown: boolean;
};

/** The datum of a wall: the level floor unless another is named. A ceiling lies at the wall's height. */
export function datumOf(wall: Pick<Wall, 'datum' | 'heightMm'>): Datum {
  const kind = wall.datum?.kind ?? 'floor';
  const said = wall.datum?.aboveFloorMm;
  const aboveFloorMm =
    kind === 'ceiling' ? (wall.heightMm ?? null) : (said ?? (kind === 'floor' ? mm(0) : null));
  const fall = wall.datum?.fallMm;
  return { kind, aboveFloorMm, fallMm: fall ?? mm(0), fallKnown: fall !== undefined };
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
  return kind === 'furniture' ? 'the furniture top' : `the ${kind}`;
}
