import { HOLE_BEYOND, holeDepth, leastScrew } from '../../core/fixing/masonry/hole.ts';
import { SOLID_BRICK } from '../../core/fixing/masonry/walk-clay-brick.ts';
import { declaredCap } from '../../core/fixing/proof/caps.ts';
import { GAUGES } from '../../core/fixing/steel/screw-sizes.ts';
import { mm } from '../../core/quantity.ts';
import { by, figureBefore, type TradeAnswer } from './trade-answer.ts';

const GAUGE = '(?:gauge|guage|gage|ga|g)\\b';

/** Plug and bit for a gauge: the first line of the walk for solid brick that takes it. */
function bitFor(text: string): string | null {
  const gauge = GAUGES.find((each) => each === figureBefore(text, GAUGE));
  const row = SOLID_BRICK.find(
    (each) => each.shank === gauge && each.plugMm !== undefined && each.only === undefined,
  );
  if (gauge === undefined || row === undefined) return null;
  return `For a ${gauge} gauge in brick: ${row.holeMm} mm masonry bit and a plug ${row.holeMm} x ${row.plugMm} mm. Rotary until you know it is solid, then hammer, never through the plaster. ${by(row.cap)}`;
}

function depth(text: string, plaster: number | undefined): string | null {
  const plug = figureBefore(text, '(?:mm |mil )?(?:long )?plug') ?? afterX(text);
  const finish = figureBefore(text, '(?:mm |mil )?(?:of |thick )?(?:plaster|render|finish|tile)') ?? plaster;
  if (plug === null || finish === undefined) return null;
  const sizes = { finishMm: mm(finish), plugMm: mm(plug), screwMm: mm(0), outsideMm: mm(0) };
  return `${holeDepth(sizes)} mm: finish ${finish} + plug ${plug} + ${HOLE_BEYOND.value.plugMm} for dust; deeper if the screw would bottom. ${by(HOLE_BEYOND)}`;
}

/** The length in "8 x 50 plug". */
function afterX(text: string): number | null {
  const long = /\d\s*(?:x|by)\s*(\d+)/.exec(text)?.[1];
  return long === undefined ? null : Number(long);
}

function screwLength(text: string): string | null {
  const plug = figureBefore(text, '(?:mm |mil )?(?:long )?plug') ?? afterX(text);
  const finish = figureBefore(text, '(?:mm |mil )?(?:of |thick )?(?:plaster|render|finish)');
  if (plug === null || finish === null) return null;
  const inside = leastScrew(mm(0), mm(finish), mm(plug));
  return `The hanger’s thickness + ${finish} finish + ${plug} plug: ${inside} mm inside the wall at the least, one screw diameter more is better, then the next length on the shelf. ${by(HOLE_BEYOND)}`;
}

function capOf(text: string): string | null {
  const plug = ([6, 8, 10] as const).find(
    (each) => each === figureBefore(text, '(?:mm |mil )?(?:plastic |nylon )?plug'),
  );
  if (plug === undefined) return null;
  const cap = declaredCap(plug, 'solid');
  const cored = declaredCap(plug, 'cored');
  return `An ${plug} mm plug: ${cap.value} kg each in solid brick as a cap, ${cored.value} in brick with holes. The packet wins, and through plaster the screw may bend first: give me the job and I reckon it. ${by(cap)}`.replace(
    /^An (6|10)/,
    'A $1',
  );
}

export const BRICK_ANSWERS: readonly TradeAnswer[] = [
  { asks: [/\b(?:how much|hold|carry|take|cap|rated?)\b/, /\bplugs?\b/], answer: capOf },
  {
    asks: [/\b(?:how deep|depth|what depth)\b/],
    answer: (text, job) => depth(text, job.wall?.finish?.thicknessMm),
  },
  { asks: [/\b(?:how long|what length|length)\b/, /\bscrew/], answer: screwLength },
  { asks: [/\b(?:bit|drill|plug)\b/, /\b(?:gauge|guage|gage|ga|g)\b/], answer: bitFor },
  {
    asks: [/\bwhere\b.*\bplug\b|\bplug\b.*\b(?:start|flush)\b/],
    answer: () =>
      'At the brick face, past the finish: plaster carries nothing, so push the plug in until its rim is behind it. (Common practice, no source.)',
  },
];
