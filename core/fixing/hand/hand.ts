import type { Fastener } from '../fastener.ts';
import type { Fixing } from '../fixing-shape.ts';

type Partly<T> = { [K in keyof T]?: T[K] | undefined };

/** What the person has in the hand: any part of a fixing. */
export type InHand = {
  fastener?: Fastener | undefined;
  bit?: Partly<Fixing['bit']> | undefined;
  plug?: Partly<NonNullable<Fixing['plug']>> | undefined;
  screw?: Partly<NonNullable<Fixing['screw']>> | undefined;
};
