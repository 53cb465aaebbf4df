import type { Chosen, FixingResult, NothingHolds } from '../../../core/fixing/choice.ts';
import { chooseFixing } from '../../../core/fixing/choose.ts';
import type { Job } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';
import type { Hanging } from '../../../core/piece/piece.ts';
import { kg, mm } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';

type Given = {
  kg: number;
  country?: 'AU' | 'UK' | 'US';
  wall?: Partial<Wall>;
  hanging?: Hanging;
  widthMm?: number;
  piece?: Partial<Job['piece']>;
  proof?: Job['proof'];
  below?: Job['place']['below'];
  up?: Job['place']['up'];
};

/** Hangers evenly across the top of a piece. */
export function rings(
  count: number,
  widthMm: number,
  standOffMm?: number,
): Extract<Hanging, { by: 'rings' | 'keyholes' }> {
  const inset = widthMm / 8;
  const apart = count > 1 ? (widthMm - 2 * inset) / (count - 1) : 0;
  return {
    by: 'rings',
    points: Array.from({ length: count }, (_, at) => ({
      fromLeftMm: mm(count > 1 ? inset + at * apart : widthMm / 2),
      fromTopMm: mm(200),
    })),
    ...(standOffMm !== undefined && { standOffMm: mm(standOffMm) }),
  };
}

/** An invented job: an 800 x 1000 piece in the middle of a 3000 wall of solid plastered brick, unless said. */
export function fixingJob(given: Given): Job {
  const widthMm = given.widthMm ?? 800;
  return {
    building: { country: given.country ?? 'AU' },
    piece: {
      kind: 'picture',
      widthMm: mm(widthMm),
      heightMm: mm(1000),
      depthMm: mm(30),
      massKg: kg(given.kg),
      hanging: given.hanging ?? rings(2, widthMm),
      ...given.piece,
    },
    wall: {
      baseMaterial: 'clay-brick',
      cores: 'solid',
      finish: { kind: 'plaster', thicknessMm: mm(12) },
      thicknessMm: mm(230),
      widthMm: mm(3000),
      heightMm: mm(2400),
      accessories: [],
      ...given.wall,
    },
    place: {
      across: { by: 'centre' },
      up: given.up ?? { by: 'centre-at', mm: mm(1500) },
      below: given.below ?? 'nothing',
    },
    ...(given.proof && { proof: given.proof }),
  };
}

/** Set out and chosen for. */
export function chooseFor(given: Given): FixingResult {
  const job = fixingJob(given);
  const layout = setOut(job);
  if (!layout.ok) throw new Error(layout.text);
  return chooseFixing(job, layout);
}

export function held(given: Given): Chosen {
  const result = chooseFor(given);
  if (!result.ok) throw new Error(result.because);
  return result;
}

export function notHeld(given: Given): NothingHolds {
  const result = chooseFor(given);
  if (result.ok) throw new Error(`held by ${result.fixing.fastener}`);
  return result;
}
