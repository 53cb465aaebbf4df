import { cautionsOf } from '../../../core/caution/rules.ts';
import type { Chosen } from '../../../core/fixing/choice.ts';
import type { Fixing } from '../../../core/fixing/fixing-shape.ts';
import type { Job } from '../../../core/job.ts';
import type { SetOut } from '../../../core/layout/set-out.ts';
import type { Caution } from '../../../core/plan-shape.ts';
import { kg, type Millimetres, mm, newtons } from '../../../core/quantity.ts';

type Part<K extends keyof Job> = Partial<NonNullable<Job[K]>>;
export type Changes = {
  building?: Part<'building'>;
  piece?: Partial<Job['piece']>;
  wall?: Partial<Job['wall']>;
  place?: Partial<Job['place']>;
  crew?: Part<'crew'>;
};

/** An ordinary job that nothing stops: an owner's newer brick house, a mirror for two, both faces looked at. */
export function jobWith(changes: Changes = {}): Job {
  return {
    building: {
      country: 'AU',
      yearBuilt: 2010,
      kind: 'house',
      tenure: 'owner',
      heritage: false,
      ...changes.building,
    },
    piece: {
      kind: 'mirror',
      widthMm: mm(840),
      heightMm: mm(1120),
      depthMm: mm(30),
      massKg: kg(24),
      glass: 'safety',
      hanging: {
        by: 'rings',
        points: [
          { fromLeftMm: mm(95), fromTopMm: mm(240) },
          { fromRightMm: mm(95), fromTopMm: mm(240) },
        ],
      },
      ...changes.piece,
    },
    wall: {
      baseMaterial: 'clay-brick',
      cores: 'solid',
      finish: { kind: 'plaster', thicknessMm: mm(12) },
      thicknessMm: mm(230),
      widthMm: mm(2700),
      heightMm: mm(2400),
      datum: { kind: 'floor', aboveFloorMm: mm(0), fallMm: mm(0) },
      accessories: [],
      coating: 'none',
      wet: 'no',
      ...changes.wall,
    },
    place: {
      across: { by: 'centre' },
      up: { by: 'bottom-above', mm: mm(800) },
      below: 'nothing',
      ...changes.place,
    },
    crew: { people: 2, dustExtraction: true, ...changes.crew },
  };
}

/** A set-out with marks at these places from the left and above the floor. */
export function setOutAt(
  points: readonly (readonly [number, number])[],
  changes: Partial<SetOut> = {},
): SetOut {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    ok: true,
    frame: {
      leftMm: mm(Math.min(...xs) - 95),
      rightMm: mm(Math.max(...xs) + 95),
      bottomMm: mm(Math.min(...ys) - 880),
      topMm: mm(Math.max(...ys) + 240),
    },
    marks: points.map(([x, y], at) => ({
      id: String.fromCharCode('A'.charCodeAt(0) + at),
      fromLeftMm: mm(x),
      fromRightMm: mm(2700 - x),
      upMm: mm(y),
    })),
    crossChecks: [],
    datumAboveFloorMm: mm(0),
    advice: [],
    assumptions: [],
    why: [],
    basis: [],
    ...changes,
  };
}

/** A fastener that holds, with a hole this deep. */
export function heldAt(
  depthMm: number,
  changes: Partial<Fixing> = {},
  findings: Chosen['findings'] = [],
): Chosen {
  return {
    ok: true,
    actions: { weightN: newtons(235.4), perMark: [] },
    chain: [],
    fixing: {
      fastener: 'plug-and-screw',
      count: 2,
      bit: { kind: 'masonry', action: 'rotary', diameterMm: mm(8), depthMm: mm(depthMm) },
      plug: { diameterMm: mm(8), lengthMm: mm(25) },
      governing: { mode: 'plug-cap', resistanceN: newtons(200), basis: ['common-practice'] },
      utilisation: 0.9,
      ...changes,
    },
    alternatives: [],
    rejected: [],
    findings,
    advice: [],
    assumptions: [],
    why: [],
    basis: [],
  };
}

/** What is said of a job whose two marks are where the ordinary job's are, with a hole 40 mm deep. */
export function saidOf(
  job: Job,
  points: readonly (readonly [number, number])[] = [
    [1025, 1680],
    [1675, 1680],
  ],
  fixing: Chosen = heldAt(40),
): Caution[] {
  return cautionsOf({ job, setOut: setOutAt(points), fixing });
}

/** The severity an id is said with, or undefined. */
export function severityOf(cautions: readonly Caution[], id: string): string | undefined {
  return cautions.find((each) => each.id === id)?.severity;
}

/** A length in inches, for documents that use them. */
export const inches = (value: number): Millimetres => mm(value * 25.4);
