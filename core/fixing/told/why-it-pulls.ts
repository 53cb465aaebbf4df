import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import type { Actions } from '../../plan-shape.ts';
import type { Millimetres } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import type { Why } from '../../why.ts';
import { aboveBottom } from '../acting/actions.ts';

const STATICS = {
  source: 'statics',
  at: 'lever rule; moments about the bottom edge',
  standing: 'derived',
} as const;
const BASIS = [basisOf(STATICS)];
const tenth = (value: number): number => Math.round(value * 10) / 10;

/** Why each mark carries what it does: the share of the weight, the pull outward, and a cord's tension. */
export function actionWhys(
  job: Job,
  setOut: SetOut,
  { weightN, perMark, cordN, inwardN }: Actions,
  comFromWallMm: Millimetres,
  comFromLeftEndMm: Millimetres,
): Why[] {
  const { piece } = job;
  const cord = setOut.cord;
  const whys: Why[] = [
    {
      of: 'load on each mark',
      formula: cord
        ? 'one hook all; of two or more the outer two half each, with the cord’s pull inward T (1 - cos th)'
        : piece.hanging.by === 'batten'
          ? 'of a stiff row W / n + W e x / sum(x^2), x from its middle; across studs the outer two by the lever rule'
          : 'outer two by the lever rule: W (x2 - xc) / (x2 - x1); inner ones none',
      inputs: { weightN: tenth(weightN), massFromLeftEndMm: tenth(comFromLeftEndMm), by: piece.hanging.by },
      result: perMark.map(({ id, shearN }) => `${id} ${tenth(shearN)} N`).join(', '),
      basis: BASIS,
    },
    {
      of: 'outward pull',
      formula:
        piece.hanging.by === 'batten'
          ? 'share of the weight x centre of mass from the wall / height above the bottom edge, and W a / z of the batten that stands off the wall'
          : 'share of the weight x centre of mass from the wall / height of the mark above the bottom edge',
      inputs: { weightN: tenth(weightN), comFromWallMm: tenth(comFromWallMm), ...pulledFrom(job, setOut) },
      result: perMark.map(({ id, tensionN }) => `${id} ${tenth(tensionN)} N`).join(', '),
      basis: BASIS,
    },
  ];
  if (cord && cordN !== undefined && inwardN !== undefined) {
    whys.push({
      of: 'cord tension',
      formula: 'W / (2 sin th), th from level; each ring is pulled inward by W / (2 tan th)',
      inputs: { weightN: tenth(weightN), legAngleDeg: Math.round(cord.legAngle * 1e6) / 1e6 },
      result: `${tenth(cordN)} N, ${tenth(inwardN)} N inward`,
      basis: BASIS,
    });
  }
  return whys;
}

/** Where a hanger bears no higher than the bottom edge, the height its pull is reckoned with instead. */
function pulledFrom(job: Job, setOut: SetOut): Record<string, number> {
  const told: Record<string, number> = {};
  for (const mark of setOut.marks) {
    const up = mark.upMm ?? 0 - (mark.downMm ?? Number.POSITIVE_INFINITY);
    if (!(up > setOut.frame.bottomMm))
      told[`aboveBottom${mark.id}Mm`] = tenth(aboveBottom(job, setOut, mark));
  }
  return told;
}
