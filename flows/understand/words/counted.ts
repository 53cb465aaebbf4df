import { isNumber, type Token } from './token.ts';

/** Things that are counted, so that the figure before them is no measurement. */
const COUNTED = new Set(
  `ring rings strap straps hook hooks hanger hangers keyhole keyholes slot slots screw screws stud studs socket sockets
  switch switches point points people person men man guys lads lad us light lights nail nails piece pieces picture
  pictures mirror mirrors painting paintings eye eyes clip clips plate plates hole holes cord cords wire wires loop loops string strings mark
  marks bracket brackets pin pins layer layers sheet sheets coat coats times time brick bricks storey storeys story floors
  years year yrs gauge bed beds bedroom bedrooms outlet outlets dring drings fixings anchors plugs windows doors percent
  degrees degree deg kids walls bag bags sack sacks box boxes crate crates`.split(/\s+/),
);

/** Words that tell which way a figure is measured, or what it measures. */
export const DIRECTIONS = new Set(
  `in down up from off above below below wide high tall deep long across apart thick each both inside inward inwards left
  right by x to or and at centre center width height length w h d l mm`.split(/\s+/),
);

/** "P1", "A1", "ring1"; not "w900", "h1200", "L4.1", "m24". */
const LABEL = /^(?:[abcefgijknopqrstuvyz]|pt|ring|hook|point|no|mark)$/;

/** Sawn sizes and plug sizes: "2x4 studs", "8x50 plugs". */
const SIZED = new Set(
  'stud studs timber timbers wood wooden lumber framing s plug plugs screw screws bit'.split(' '),
);

/** What is so many millimetres of a thing. */
const COAT =
  /^(?:plaster|render|tile|tiles|skim|board|plasterboard|drywall|hard|wet|lime|sand|cement|gypsum)$/;

/** The largest figure that may count things with a word between ("two big rings"); our choice. */
const MOST_COUNTED = 12;

/** True when the number at `at` counts things, names a gauge or a part ("P1"), or is a share ("50 %"). */
export function isCount(all: readonly Token[], at: number): boolean {
  const [number, next, then] = [all[at], all[at + 1], all[at + 2]];
  if (!isNumber(number)) return false;
  const before = all[at - 1];
  if (before?.text === '#' || next?.text === '%' || next?.text === '°') return true;
  if (number.glued && before?.kind === 'word' && LABEL.test(before.text)) return true;
  if (next?.kind === 'unit') return false;
  if (number.words && number.value.equals(1)) return true;
  // "the top two 200 in": figures in words right before figures count.
  if (number.words && next?.kind === 'number' && !next.words && number.value.lte(MOST_COUNTED)) return true;
  if (isSawn(all, at)) return true;
  if (next?.kind !== 'word') return false;
  if (next.text === 'd' && /^rings?$/.test(then?.text ?? '')) return true;
  // "900 by 1200 mirror", "a 24 x 36 picture": the second side, not so many mirrors.
  if (before?.text === 'x' && isNumber(all[at - 2])) return false;
  // "15 of plaster" is a coat, "two of us" and "one of those" are counted.
  if (next.text === 'of') return !COAT.test(then?.text ?? '');
  if (COUNTED.has(next.text)) return true;
  const few = number.value.d === 1n && number.value.lte(MOST_COUNTED);
  return few && !DIRECTIONS.has(next.text) && then?.kind === 'word' && COUNTED.has(then.text);
}

function isSawn(all: readonly Token[], at: number): boolean {
  const from = all[at - 1]?.text === 'x' ? at - 2 : at;
  const [first, x, second, noun] = all.slice(Math.max(0, from), from + 4);
  return (
    isNumber(first) && x?.text === 'x' && isNumber(second) && noun?.kind === 'word' && SIZED.has(noun.text)
  );
}
