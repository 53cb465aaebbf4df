import type { GroupJob } from '../../group-job.ts';
import type { Frame } from '../../plan-shape.ts';
import { mm } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import type { Why } from '../../why.ts';
import { lengthText } from '../length-text.ts';
import { tenths } from '../mark-why.ts';
import { GEOMETRY } from '../tolerance.ts';
import type { Around } from './around-openings.ts';

const basis = [basisOf(GEOMETRY)];
type Told = { formula: string; inputs: Record<string, number> };

const why = (of: string, { formula, inputs }: Told, result: number): Why => ({
  of,
  formula,
  inputs: tenths(inputs),
  result: lengthText(mm(result)),
  basis,
});

/** Why each frame of a group is where it is: the gap, the edge all is measured from, and each edge from that one. */
export function groupWhys(job: GroupJob, { placed, parts }: Around): Why[] {
  const { across, up, frames } = placed;
  const ofGroup = (formula: string): string => formula.replaceAll('piece height', 'group height');
  const inputs = Object.fromEntries(
    Object.entries(up.group.inputs).map(([name, value]) => [ofGroup(name), value]),
  );
  return [
    ...(parts.length === 0 && across.gap ? [why('gap', across.gap, across.gapMm)] : []),
    ...(up.gap ? [why('gap', up.gap, up.gapMm)] : []),
    ...(parts.length === 0 ? [why('group left edge', across.start, across.leftsMm[0] ?? 0)] : []),
    why('group bottom edge', { formula: ofGroup(up.group.formula), inputs }, up.group.bottomMm),
    ...frames.map((frame, at) => leftWhy(job, placed, parts, frame, at)),
    ...frames.map((frame, at) => bottomWhy(placed, frame, at)),
  ];
}

const sum = (lengths: readonly number[]): number => lengths.reduce((all, each) => all + each, 0);

function leftWhy(
  { pieces }: GroupJob,
  placed: Around['placed'],
  parts: Around['parts'],
  frame: Frame,
  at: number,
): Why {
  let before = 0;
  for (const [nth, part] of parts.entries()) {
    const own = at - before;
    if (own < part.leftsMm.length) {
      const widths = pieces.slice(before, at).map((piece) => piece.widthMm);
      const told = {
        formula: 'start of part + widths before + gaps before x gap of part',
        inputs: {
          part: nth + 1,
          'start of part': part.leftsMm[0] ?? 0,
          'widths before': sum(widths),
          'gaps before': own,
          'gap of part': part.gapMm,
        },
      };
      return why(`frame ${at + 1} left edge`, told, frame.leftMm);
    }
    before += part.leftsMm.length;
  }
  const column = at % placed.cells.columns;
  const left = placed.across.leftsMm[column] ?? 0;
  const told = {
    formula: 'group left edge + widths before + gaps before x gap + to the middle of its column',
    inputs: {
      'group left edge': placed.across.leftsMm[0] ?? 0,
      'widths before': sum(placed.widthsMm.slice(0, column)),
      'gaps before': column,
      gap: placed.across.gapMm,
      'to the middle of its column': frame.leftMm - left,
    },
  };
  return why(`frame ${at + 1} left edge`, told, frame.leftMm);
}

function bottomWhy({ cells, heightsMm, up }: Around['placed'], frame: Frame, at: number): Why {
  const row = Math.floor(at / cells.columns);
  const told = {
    formula: 'group bottom edge + rows below + gaps below x gap + up in its row',
    inputs: {
      'group bottom edge': up.group.bottomMm,
      'rows below': sum(heightsMm.slice(row + 1)),
      'gaps below': heightsMm.length - 1 - row,
      gap: up.gapMm,
      'up in its row': frame.bottomMm - (up.bottomsMm[row] ?? 0),
    },
  };
  return why(`frame ${at + 1} bottom edge`, told, frame.bottomMm);
}
