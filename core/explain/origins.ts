import { BATTEN } from '../fixing/stand-off.ts';
import type { Plan } from '../plan-shape.ts';
import { basisOf } from '../sources.ts';
import type { Why } from '../why.ts';
import { type Input, unitOf } from './explained.ts';
import { ORIGINS, type Origin } from './origin-table.ts';

/** The same name means another field across than up. */
const CENTRE: Readonly<Record<string, Origin>> = {
  'frame left edge': { field: 'place.across.mm' },
  'frame bottom edge': { field: 'place.up.mm' },
};

function originOf(why: Why, name: string): Origin | null {
  if (name === 'centre') return CENTRE[why.of] ?? null;
  const [, id, what] = /^mark (\w+) (across|up)$/.exec(name) ?? [];
  if (id !== undefined) return { path: `marks.${id}.${what === 'up' ? 'upMm' : 'fromLeftMm'}` };
  if (/^aboveBottom\w+Mm$/.test(name)) return 'computed';
  // The layers of a piece whose mass is reckoned: "glazing kg".
  if (why.of === 'mass' && / kg$/.test(name)) return 'computed';
  return Object.hasOwn(ORIGINS, name) ? (ORIGINS[name] ?? null) : null;
}

/** The names of a why's inputs that nothing here says the origin of. */
export function unknownOrigins(why: Why): string[] {
  return Object.keys(why.inputs).filter((name) => originOf(why, name) === null);
}

/** What went into a why, each with where it came from: said by the person, or taken where the plan assumes it. */
export function inputsOf(plan: Plan, why: Why): Input[] {
  return Object.entries(why.inputs).map(([name, value]) => {
    const origin = originOf(why, name) ?? 'computed';
    const unit =
      typeof value === 'number' ? unitOf(name) || (why.paths?.some(isOfTheSetOut) ? 'mm' : '') : '';
    const told = { name, value, unit };
    if (name === 'outsideMm' && isOnBatten(plan)) return { ...told, from: 'table', of: basisOf(BATTEN).id };
    if (origin === 'table') return { ...told, from: 'table', of: why.basis.map(({ id }) => id).join(', ') };
    if (origin === 'computed') return { ...told, from: 'computed', of: why.of };
    if ('path' in origin) return { ...told, from: 'computed', of: origin.path };
    return { ...told, ...givenOrTaken(plan, origin.field) };
  });
}

/** A field the plan assumes was taken; any other was said. */
export function givenOrTaken({ assumptions }: Plan, field: string): Pick<Input, 'from' | 'of'> {
  return { from: assumptions.some((each) => each.field === field) ? 'assumed' : 'said', of: field };
}

/** What stands outside the wall is then the batten or board, and not the hanger. */
const isOnBatten = ({ fixing, why }: Plan): boolean =>
  fixing?.fastener === 'batten-screws' ||
  fixing?.fastener === 'board-across-studs' ||
  why.some(({ of, inputs }) => of === 'load on each mark' && inputs.by === 'batten');

const isOfTheSetOut = (path: string): boolean => /^(?:frame|marks|batten)\b/.test(path);
