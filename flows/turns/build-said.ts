import type { Build } from '../../core/piece/piece.ts';
import { mm } from '../../core/quantity.ts';
import type { Fact } from '../reading.ts';

const N = String.raw`(\d+(?:\.\d+)?)`;
const MM = String.raw`\s*(?:mm|mil|mill)?\s*`;
const GLAZING = new RegExp(
  `${N}${MM}(?:thick |mirror |safety |float |plate |plain |clear )*(glass|mirror|acrylic|polycarbonate)\\b`,
);
const FRAME = new RegExp(
  `${N}${MM}(?:x|by|×)${MM}${N}${MM}(?:solid )?(softwood|pine|hardwood|oak|mdf|alumini?um|steel|timber|wood(?:en)?)?\\s*(?:frame|moulding)\\b`,
);
const BACKING = new RegExp(
  `${N}${MM}(?:thick )?(mdf|hardboard|ply(?:wood)?|foam ?-?board)?\\s*(?:back(?:ing)?(?: board)?)\\b`,
);

const FRAMELESS = /\bframeless\b|\bno frame\b|\bwithout a frame\b/;

type Of<T> = T extends { material: infer M } ? M : never;

/** A wood nobody names is taken for hardwood and a back for MDF: the heavier of the usual ones. */
const FRAMES: Readonly<Record<string, Of<NonNullable<Build['frame']>>>> = {
  softwood: 'softwood',
  pine: 'softwood',
  hardwood: 'hardwood',
  oak: 'oak',
  mdf: 'mdf',
  aluminium: 'aluminium',
  aluminum: 'aluminium',
  steel: 'steel',
};
const BACKS: Readonly<Record<string, Of<NonNullable<Build['backing']>>>> = {
  hardboard: 'hardboard',
  ply: 'plywood',
  plywood: 'plywood',
  foamboard: 'foam-board',
};

/** What a piece is made of, from which its mass is reckoned; null when a layer that weighs was not told. */
export function buildSaid(said: string): { fact: Fact; rest: string } | null {
  const text = said.toLowerCase();
  const [, glassMm, glass] = GLAZING.exec(text) ?? [];
  const [, faceMm, thickMm, wood] = FRAME.exec(text) ?? [];
  const [, backMm, back] = BACKING.exec(text) ?? [];
  // Glass alone says nothing of the frame, which may weigh as much.
  if (faceMm === undefined && !(glassMm !== undefined && FRAMELESS.test(text))) return null;
  if (glassMm === undefined && backMm === undefined) return null;
  const build: Build = {
    ...(glassMm !== undefined && {
      glazing: {
        material: glass === 'acrylic' || glass === 'polycarbonate' ? glass : 'glass',
        thicknessMm: mm(Number(glassMm)),
      },
    }),
    ...(faceMm !== undefined && {
      frame: {
        material: FRAMES[wood ?? ''] ?? 'hardwood',
        widthMm: mm(Number(faceMm)),
        thicknessMm: mm(Number(thickMm)),
      },
    }),
    ...(backMm !== undefined && {
      backing: {
        material: BACKS[(back ?? '').replace(/[ -]/g, '')] ?? 'mdf',
        thicknessMm: mm(Number(backMm)),
      },
    }),
  };
  const rest = text.replace(GLAZING, ' ').replace(FRAME, ' ').replace(BACKING, ' ');
  return { fact: { question: 'piece.massKg', value: { piece: { build } }, said, inferred: true }, rest };
}
