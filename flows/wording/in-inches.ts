import { toSixteenths } from '../../core/layout/inch.ts';
import { KG_PER_POUND, MM_PER_INCH, mm } from '../../core/quantity.ts';
import { tidy } from './length.ts';

const N = String.raw`\d+(?:\.\d+)?`;
/** "18 to 25 mm", "8 x 50 mm", "300, 700 and 1100 mm": the unit stands once, at the end. What is in brackets stays. */
const MILLIMETRES = new RegExp(String.raw`(?<![\d./(-])(${N}(?:(?: x | to |, | and | or )${N})*) mm\b`, 'g');
const KILOGRAMS = new RegExp(String.raw`(?<![\d./(-])(${N}(?:(?: to |, | and | or )${N})*) kg\b(?! \()`, 'g');
/** A screw by its gauge needs no other thickness. */
const GAUGE = new RegExp(String.raw`(\d+ gauge) \(${N} mm\)`, 'g');
/** What is bought in millimetres keeps them, in brackets. */
const BOUGHT_AFTER = /^ (?:masonry |wood |metal |tile )?(?:bit|plug|hole|sleeve|shank)\b/;
const BOUGHT_BEFORE = /\b(?:bit|[Pp]lug|[Pp]ilot|[Ss]leeve|Bit|Screw):? (?:diameter: |is now )?$/;
/** A mesh sleeve is named by its two sizes alone. */
const SLEEVE = new RegExp(String.raw`\b(sleeve ${N} x ${N})(?! mm)\b`, 'g');

/**
 * Words in millimetres and kilograms as they are said to who measures in inches: lengths to the sixteenth, masses
 * with pounds beside them; the size of what is bought in millimetres to the sixty-fourth, the millimetres beside it.
 */
export function inInches(text: string): string {
  return text
    .split(QUOTED)
    .map((part) => (part.startsWith('“') ? part : unquotedInInches(part)))
    .join('');
}

/** What is put in a person's mouth is left as it would be typed. */
const QUOTED = /(“[^”]*”)/;

function unquotedInInches(text: string): string {
  const plain = text.replace(GAUGE, '$1').replace(SLEEVE, '$1 mm');
  return plain
    .replace(MILLIMETRES, (all, figures: string, at: number) =>
      BOUGHT_AFTER.test(plain.slice(at + all.length)) || BOUGHT_BEFORE.test(plain.slice(0, at))
        ? `${each(figures, drillInches)} in (${figures} mm)`
        : `${each(figures, tapeInches)} in`,
    )
    .replace(KILOGRAMS, (_, figures: string) => `${figures} kg (${each(figures, pounds)} lb)`);
}

const each = (figures: string, said: (figure: number) => string): string =>
  figures.replace(new RegExp(N, 'g'), (figure) => said(Number(figure)));

const tapeInches = (lengthMm: number): string => toSixteenths(mm(lengthMm)).text;
const pounds = (massKg: number): string => tidy(massKg / KG_PER_POUND, 1);

/** Bits are sold in sixty-fourths; a length over an inch is read off a tape. */
function drillInches(sizeMm: number): string {
  if (sizeMm > MM_PER_INCH) return tapeInches(sizeMm);
  let [top, bottom] = [Math.round((sizeMm / MM_PER_INCH) * SIXTY_FOURTHS), SIXTY_FOURTHS];
  while (top % 2 === 0 && bottom > 1) [top, bottom] = [top / 2, bottom / 2];
  return bottom === 1 ? String(top) : `${top}/${bottom}`;
}

const SIXTY_FOURTHS = 64;
