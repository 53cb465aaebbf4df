import {
  type Kilograms,
  type KilogramsPerCubicMetre,
  kg,
  type Millimetres,
  mm,
  sum,
  times,
  toTenth,
} from '../quantity.ts';
import { type Basis, basisOf, type Sourced, sourced } from '../sources.ts';
import type { Why } from '../why.ts';
import { BACKING_DENSITY, FRAME_DENSITY, GLAZING_DENSITY } from './densities.ts';
import { metalFrameMass } from './metal-frame.ts';
import type { Build, Piece } from './piece.ts';

/** A cubic metre in cubic millimetres, exact. */
const MM3_PER_M3 = 1e9;

const ESTIMATE_MARGIN = sourced(0.1, 'our-choice', 'trade 4.1: plus 10 % when estimated', 'our-choice');

/** The mass a plan reckons with, in kilograms, and where it comes from. */
export type Mass = { massKg: Kilograms; estimated: boolean; why: Why; basis: readonly Basis[] };

/** Mass of a sheet: m = rho w h t. Millimetres and kg/m3 in, kilograms out. */
export function sheetMass(
  widthMm: Millimetres,
  heightMm: Millimetres,
  thicknessMm: Millimetres,
  density: KilogramsPerCubicMetre,
): Kilograms {
  return kg((density * Math.max(widthMm, 0) * Math.max(heightMm, 0) * Math.max(thicknessMm, 0)) / MM3_PER_M3);
}

/** Length of a frame along its centre line: 2 (w + h) - 4 b, outside size and face width in millimetres. */
export function centreLine(widthMm: Millimetres, heightMm: Millimetres, faceMm: Millimetres): Millimetres {
  return mm(2 * (widthMm + heightMm) - 2 * 2 * faceMm);
}

type Part = { name: string; massKg: Kilograms; basis: Basis };

const partOf = (
  name: string,
  size: readonly [Millimetres, Millimetres, Millimetres],
  density: Sourced<KilogramsPerCubicMetre>,
): Part => ({ name, massKg: sheetMass(...size, density.value), basis: basisOf(density) });

/** Layers of a piece: glass and back inside the frame's face, frame along its centre line with no moulding taken off. */
export function partsOf(build: Build, widthMm: Millimetres, heightMm: Millimetres): Part[] {
  const { glazing, frame, backing } = build;
  const face = frame?.widthMm ?? mm(0);
  const inside = [mm(widthMm - 2 * face), mm(heightMm - 2 * face)] as const;
  const parts: Part[] = [];
  if (glazing) {
    parts.push(partOf('glazing', [...inside, glazing.thicknessMm], GLAZING_DENSITY[glazing.material]));
  }
  if (frame) {
    const length = centreLine(widthMm, heightMm, face);
    if (frame.material === 'aluminium' || frame.material === 'steel') {
      parts.push(metalFrameMass(frame.material, length, face, frame.thicknessMm));
    } else {
      parts.push(partOf('frame', [length, face, frame.thicknessMm], FRAME_DENSITY[frame.material]));
    }
  }
  if (backing) {
    parts.push(partOf('backing', [...inside, backing.thicknessMm], BACKING_DENSITY[backing.material]));
  }
  return parts;
}

/**
 * Mass of a piece in kilograms: as weighed, or the sum of its layers and a tenth more (trade 4.1 and 4.2).
 * With neither it is infinite, so that nothing is ever said to hold it.
 */
export function massOf(piece: Pick<Piece, 'massKg' | 'build' | 'widthMm' | 'heightMm'>): Mass {
  if (piece.massKg !== undefined) return said(piece.massKg);
  const parts = partsOf(piece.build ?? {}, piece.widthMm, piece.heightMm);
  const bare = parts.length > 0 ? sum(kg(0), ...parts.map((part) => part.massKg)) : kg(Infinity);
  const massKg = times(bare, 1 + ESTIMATE_MARGIN.value);
  const basis = [...parts.map((part) => part.basis), basisOf(ESTIMATE_MARGIN)];
  const inputs: Record<string, number> = {};
  for (const part of parts) inputs[`${part.name} kg`] = toTenth(part.massKg);
  inputs.margin = ESTIMATE_MARGIN.value;
  const formula = 'density x width x height x thickness of each layer, added up, x (1 + margin)';
  return {
    massKg,
    estimated: true,
    why: { of: 'mass', formula, inputs, result: `${toTenth(massKg)} kg`, basis },
    basis,
  };
}

function said(massKg: Kilograms): Mass {
  const basis = [
    basisOf(sourced(0, 'common-practice', 'as weighed or read from the label', 'common-practice')),
  ];
  const why: Why = {
    of: 'mass',
    formula: 'as given',
    inputs: { massKg },
    result: `${toTenth(massKg)} kg`,
    basis,
  };
  return { massKg, estimated: false, why, basis };
}
