import type { Mark, Plan } from '../core/plan-shape.ts';
import { mm } from '../core/quantity.ts';
import type { DisplayUnit } from './reading.ts';
import { FASTENER } from './wording/fastener.ts';
import { screwText } from './wording/fixing.ts';
import { length, tidy } from './wording/length.ts';

/** Under this a mark has not moved: it is how a tape is read. Our choice. */
const MOVED_MM = 0.05;

/** What is different in a plan after a correction, a line each; empty when nothing that matters is. */
export function changesBetween(before: Plan, after: Plan, unit: DisplayUnit): string[] {
  return [
    ...verdictChange(before, after),
    ...markChanges(before.marks, after.marks, unit),
    ...fixingChanges(before, after),
    ...cautionChanges(before, after),
  ];
}

const VERDICT = { go: 'go', care: 'go with care', stop: 'stop' } as const;

function verdictChange(before: Plan, after: Plan): string[] {
  if (before.verdict === after.verdict) return [];
  return [`The verdict is now ${VERDICT[after.verdict]}; it was ${VERDICT[before.verdict]}.`];
}

function markChanges(before: readonly Mark[], after: readonly Mark[], unit: DisplayUnit): string[] {
  const lines = after.flatMap((mark) => {
    const old = before.find((each) => each.id === mark.id);
    if (!old) return [`Mark ${mark.id} is new.`];
    const moves = [
      ...move(mark.fromLeftMm - old.fromLeftMm, 'right', 'left', unit),
      ...move((mark.upMm ?? 0) - (old.upMm ?? 0), 'up', 'down', unit),
    ];
    return moves.length === 0 ? [] : [`Mark ${mark.id} moves ${moves.join(' and ')}.`];
  });
  const gone = before.filter((old) => !after.some((mark) => mark.id === old.id));
  return [...lines, ...(after.length > 0 ? gone.map((mark) => `Mark ${mark.id} falls away.`) : [])];
}

function move(by: number, forward: string, backward: string, unit: DisplayUnit): string[] {
  if (Math.abs(by) < MOVED_MM) return [];
  return [`${length(mm(Math.abs(by)), unit)} ${by > 0 ? forward : backward}`];
}

function fixingChanges({ fixing: was }: Plan, { fixing: now }: Plan): string[] {
  if (!now || !was) return [];
  const lines: string[] = [];
  if (now.fastener !== was.fastener)
    lines.push(`The fixing is now ${FASTENER[now.fastener]}, not ${FASTENER[was.fastener]}.`);
  if (now.count !== was.count) lines.push(`${now.count} of them, not ${was.count}.`);
  if (now.bit.diameterMm !== was.bit.diameterMm)
    lines.push(`The bit is now ${tidy(now.bit.diameterMm, 1)} mm, not ${tidy(was.bit.diameterMm, 1)} mm.`);
  if (now.bit.depthMm !== was.bit.depthMm)
    lines.push(`The hole is now ${tidy(now.bit.depthMm, 1)} mm deep, not ${tidy(was.bit.depthMm, 1)} mm.`);
  if (
    now.plug &&
    was.plug &&
    (now.plug.diameterMm !== was.plug.diameterMm || now.plug.lengthMm !== was.plug.lengthMm)
  ) {
    lines.push(
      `The plug is now ${now.plug.diameterMm} x ${now.plug.lengthMm} mm, not ${was.plug.diameterMm} x ${was.plug.lengthMm}.`,
    );
  }
  const [screw, old] = [now.screw && screwText(now.screw), was.screw && screwText(was.screw)];
  if (screw && screw !== old) lines.push(`The screw is now ${screw}${old ? `, not ${old}` : ''}.`);
  if (lines.length === 0 && now.utilisation !== was.utilisation) {
    lines.push(
      `The same fixing, now used to ${percent(now.utilisation)}; it was ${percent(was.utilisation)}.`,
    );
  }
  return lines;
}

const percent = (utilisation: number): string => `${Math.round(utilisation * 100)} %`;

function cautionChanges(before: Plan, after: Plan): string[] {
  if (after.verdict === 'stop') return [];
  const gone = before.cautions.filter(
    (old) => old.severity !== 'note' && !after.cautions.some((each) => each.id === old.id),
  );
  return gone.map((each) => `No longer so: ${each.text}`);
}
