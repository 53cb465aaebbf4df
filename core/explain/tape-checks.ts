import { GEOMETRY, TAPE_READING } from '../layout/tolerance.ts';
import type { CrossCheck, Mark, Plan } from '../plan-shape.ts';
import { basisOf } from '../sources.ts';
import { type Asked, computed, type Input, type Told } from './explained.ts';
import { inputsOf } from './origins.ts';

const basis = [basisOf(GEOMETRY)];

/** A check with the tape, from the marks and the frame it is made of; and how near it has to come. */
export function tapeTold({ plan, steps }: Asked): Told | null {
  const [part, at, what] = steps;
  const check = part === 'crossChecks' ? plan.crossChecks[Number(at)] : undefined;
  if (!check) return null;
  if (what === 'toleranceMm') {
    return { formula: 'as near as a tape is read', inputs: [], basis: [basisOf(TAPE_READING)] };
  }
  return expected(plan, check);
}

function expected(plan: Plan, { text, expectMm }: CrossCheck): Told | null {
  const [, id, other] = /^(\w+) to (\w+)$/.exec(text) ?? [];
  if (id !== undefined && other !== undefined) return markToMark(plan, id, other);
  if (text === 'hanger to hanger on the piece') return onThePiece(plan, expectMm);
  const [, named = ''] = /^(\w+) /.exec(text) ?? [];
  const mark = plan.marks.find((each) => each.id === named);
  if (!mark || plan.frame === null) return null;
  const [height] = heightOf(mark);
  if (text.includes('from the right')) {
    const right = computed(`mark ${named} from the right`, mark.fromRightMm, `marks.${named}.fromRightMm`);
    return told(`mark ${named} across + mark ${named} from the right`, acrossOf(mark), right);
  }
  if (text.includes('top of the frame')) {
    const top = computed('top of the frame', plan.frame.topMm, 'frame.topMm');
    return told(`size(top of the frame - ${height?.name})`, top, ...heightOf(mark));
  }
  if (text.includes('bottom of the frame')) {
    const bottom = computed('frame bottom edge', plan.frame.bottomMm, 'frame.bottomMm');
    return told(`${height?.name} - frame bottom edge`, ...heightOf(mark), bottom);
  }
  const here = computed(`mark ${named} up here`, mark.upHereMm ?? expectMm, `marks.${named}.upHereMm`);
  return text.includes('straight below') ? told(here.name, here) : null;
}

function markToMark({ marks }: Plan, id: string, other: string): Told | null {
  const [one, two] = [id, other].map((each) => marks.find((mark) => mark.id === each));
  if (!one || !two) return null;
  const [y1, y2] = [heightOf(one)[0], heightOf(two)[0]];
  const rise = y1 && y2 ? `(${y2.name} - ${y1.name})` : '0';
  return told(
    `root((mark ${other} across - mark ${id} across)^2 + ${rise}^2)`,
    ...[acrossOf(one), acrossOf(two), ...heightOf(one), ...heightOf(two)],
  );
}

/** From the hangers' own places on the piece; a cord's from its rings. */
function onThePiece(plan: Plan, expectMm: number): Told {
  const cord = plan.why.find(({ of }) => of === 'cord angle');
  const spread = cord && inputsOf(plan, cord).find(({ name }) => name === 'ring to ring');
  if (spread) {
    const square = expectMm ** 2 - Number(spread.value) ** 2;
    const uneven = computed('ring lower than ring', Math.sqrt(Math.max(0, square)), 'piece.hanging.points');
    return told('root(ring to ring^2 + ring lower than ring^2)', spread, uneven);
  }
  const places = plan.marks.flatMap(({ id }): Input[] =>
    plan.why
      .filter(({ of }) => of === `mark ${id} across` || of === `mark ${id} up`)
      .flatMap((why) => inputsOf(plan, why))
      .filter(({ name }) => name === 'drop' || name.startsWith('hanger from'))
      .map((each) => ({ ...each, name: `${id} ${each.name}` })),
  );
  const [first, last] = [plan.marks[0]?.id ?? '', plan.marks.at(-1)?.id ?? ''];
  const formula = `root((${last} hanger from the piece’s left edge - ${first} hanger from the piece’s left edge)^2 + (${last} drop - ${first} drop)^2)`;
  return told(formula, ...places);
}

const acrossOf = ({ id, fromLeftMm }: Mark): Input =>
  computed(`mark ${id} across`, fromLeftMm, `marks.${id}.fromLeftMm`);

/** A mark's height in the frame's own: up, or below the ceiling as less than nothing. */
function heightOf({ id, upMm, downMm }: Mark): Input[] {
  if (upMm !== undefined) return [computed(`mark ${id} up`, upMm, `marks.${id}.upMm`)];
  return downMm === undefined ? [] : [computed(`mark ${id} height`, 0 - downMm, `marks.${id}.downMm`)];
}

const told = (formula: string, ...inputs: Input[]): Told => ({ formula, inputs, basis });
