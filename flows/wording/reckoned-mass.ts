import type { JobSoFar } from '../../core/job.ts';
import { massOf } from '../../core/piece/mass.ts';
import { kg } from '../../core/quantity.ts';
import type { DisplayUnit } from '../reading.ts';
import { mass } from './length.ts';

/** What a piece comes to by what it is made of, once its size is known; nothing when it was weighed. */
export function reckonedMass({ piece }: JobSoFar, unit: DisplayUnit): string {
  const { build, massKg, widthMm, heightMm } = piece ?? {};
  if (build === undefined || massKg !== undefined || widthMm === undefined || heightMm === undefined)
    return '';
  const tenths = Math.ceil(massOf({ build, widthMm, heightMm }).massKg * 10) / 10;
  return `Reckoned from what it is made of, with a tenth added: ${mass(kg(tenths), unit)}. A scale beats it.`;
}
