import type { Fixing } from '../fixing/fixing-shape.ts';
import type { Difference } from '../if-wrong.ts';
import type { Assumption, Plan } from '../plan-shape.ts';

const NAMES: Readonly<Record<string, string>> = {
  'wall.finish.thicknessMm': 'the finish',
  'wall.boardMm': 'the board',
  'wall.voidMm': 'the room behind the board',
  'wall.thicknessMm': 'the wall',
  'wall.cores': 'the unit',
  'wall.studs.widthMm': 'the stud',
  'piece.depthMm': 'the depth of the piece',
  'piece.hanging.standOffMm': 'the stand-off of the hanger',
  'piece.hanging.seatToScrewMm': 'the height from seat to screw',
  'piece.hanging.hooksApartMm': 'the distance between hooks',
  'building.country': 'the country',
  'crew.people': 'the number who lift',
};

/** "If the finish is 20 mm, not 13: hole 81 mm deep, not 74; utilisation 0.97, not 0.93." */
export function inALine(
  { field, value: taken }: Assumption,
  value: unknown,
  changes: readonly Difference[],
  would: Plan,
): string {
  const unit = field.endsWith('Mm') ? ' mm' : '';
  const name = NAMES[field.replace(/^pieces\.\d+\./, 'piece.')] ?? field;
  const not = taken === 'unknown' ? '' : `, not ${String(taken)}`;
  return `If ${name} is ${String(value)}${unit}${not}: ${saidOf(changes, would).join('; ')}.`;
}

function saidOf(changes: readonly Difference[], would: Plan): string[] {
  const at = (path: string): Difference | undefined => changes.find((each) => each.path === path);
  const stops = would.cautions.find(({ severity }) => severity === 'stop');
  if (at('verdict')?.to === 'stop') return [`this stops. ${stops?.text ?? ''}`.trim().replace(/\.$/, '')];
  const said: string[] = [];
  const verdict = at('verdict');
  if (verdict) said.push(`the verdict is ${String(verdict.to)}, not ${String(verdict.from)}`);
  const isOther = changes.some(({ path }) => /^fixing\.(?:fastener|count|plug|screw)/.test(path));
  if (isOther && would.fixing) said.push(`it needs ${fixingText(would.fixing)}`);
  const used = at('fixing.utilisation');
  if (used && !isOther) said.push(`utilisation ${String(used.to)}, not ${String(used.from)}`);
  const deep = at('fixing.bit.depthMm');
  if (deep) said.push(`the hole is ${String(deep.to)} mm deep, not ${String(deep.from)}`);
  for (const { path, from, to } of changes) {
    const [, id, way] = /^marks\.(\w+)\.(upMm|fromLeftMm)$/.exec(path) ?? [];
    if (id)
      said.push(
        `mark ${id} is ${String(to)} mm ${way === 'upMm' ? 'up' : 'from the left'}, not ${String(from)}`,
      );
  }
  for (const { path, to } of changes) {
    const [, id] = /^cautions\.(.+)$/.exec(path) ?? [];
    if (id) said.push(to === null ? `${id} falls away` : `${id} is to be heeded too`);
  }
  return said;
}

function fixingText({ fastener, count, plug, screw }: Fixing): string {
  const size = plug ? `, plug ${plug.diameterMm} x ${plug.lengthMm} mm` : '';
  const gauge = screw?.gauge === undefined ? `${screw?.diameterMm} mm` : `${screw.gauge} gauge`;
  return `${count} x ${fastener}${size}${screw ? `, screw ${gauge} x ${screw.lengthMm} mm` : ''}`;
}
