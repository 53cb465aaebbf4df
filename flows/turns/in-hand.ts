import type { Measured } from '../../core/check.ts';
import { type Millimetres, MM_PER_INCH, mm } from '../../core/quantity.ts';
import { figureOf } from './tape-figure.ts';

type InHand = NonNullable<Measured['fixing']>;

const N = String.raw`(\d+[ -]\d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?)`;
const MM = String.raw`\s*(?:mm|mil|mill|in|inch|")?`;
const BIT = new RegExp(`${N}${MM}\\s*(?:masonry|wood|metal|tile|sds|drill)?\\s*bit\\b`);
const DEEP = new RegExp(`${N}${MM}\\s*(?:deep|depth)\\b|\\b(?:deep|depth|hole)\\s*(?:of|is|:)?\\s*${N}`);
const PLUG_SIZE = new RegExp(
  `${N}${MM}\\s*(?:x|by|×)\\s*${N}${MM}\\s*(?:long\\s*)?(?:plastic\\s*|nylon\\s*)?(?:wall\\s*)?plugs?\\b`,
);
const PLUG = new RegExp(`${N}${MM}\\s*(?:long\\s*)?(?:plastic\\s*|nylon\\s*)?(?:wall\\s*)?plugs?\\b`);
const GAUGE = new RegExp(
  `${N}\\s*(?:gauge|guage|gage|ga|g)\\b(?:${MM}\\s*(?:x|by|×|,|and)?\\s*${N})?|(?:gauge|#)\\s*${N}(?:\\s*(?:x|by|×)\\s*${N})?`,
);
const SCREW = new RegExp(`${N}${MM}\\s*(?:long\\s*)?screws?\\b`);

/** Plugs are six to ten thick and at least this long: a lone figure above it is a length. How they are sold. */
const THICKEST_PLUG_MM = 14;

/** The bit, plug and screw a person says they hold: "8 mm bit, 50 plug, 14 gauge 75". Null when none was named. */
export function inHandIn(said: string): InHand | null {
  const text = said.toLowerCase();
  const [, bit] = BIT.exec(text) ?? [];
  const deep = first(DEEP.exec(text));
  const plug = plugIn(text);
  const [, gauge, long, gauge2, long2] = GAUGE.exec(text) ?? [];
  const [, screw] = SCREW.exec(text.replace(GAUGE, ' ')) ?? [];
  const length = long ?? long2 ?? screw;
  const thick = gauge ?? gauge2;
  if (bit === undefined && plug === null && thick === undefined) return null;
  return {
    ...((bit ?? deep) !== undefined && {
      bit: {
        ...(bit !== undefined && { diameterMm: size(bit) }),
        ...(deep !== undefined && { depthMm: size(deep) }),
      },
    }),
    ...(plug && { plug }),
    ...((thick ?? length) !== undefined && {
      screw: {
        ...(thick !== undefined && { gauge: Number(thick) }),
        ...(length !== undefined && { lengthMm: size(length) }),
      },
    }),
  };
}

function plugIn(text: string): InHand['plug'] | null {
  const [, thick, long] = PLUG_SIZE.exec(text) ?? [];
  if (thick !== undefined && long !== undefined) return { diameterMm: size(thick), lengthMm: size(long) };
  const [, one] = PLUG.exec(text) ?? [];
  if (one === undefined) return null;
  return Number(one) > THICKEST_PLUG_MM ? { lengthMm: size(one) } : { diameterMm: size(one) };
}

/** A fraction is one of an inch: 5/16, 1-1/2. */
const size = (figure: string): Millimetres =>
  mm(figure.includes('/') ? figureOf(figure) * MM_PER_INCH : Number(figure));
const first = (match: RegExpExecArray | null): string | undefined =>
  match?.slice(1).find((each) => each !== undefined);
