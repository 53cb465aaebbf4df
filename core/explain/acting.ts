import { BATTEN } from '../fixing/stand-off.ts';
import type { Mark, Plan } from '../plan-shape.ts';
import { STANDARD_GRAVITY } from '../quantity.ts';
import { basisOf } from '../sources.ts';
import type { Why } from '../why.ts';
import { type Asked, computed, type Input, type Told } from './explained.ts';
import { givenOrTaken } from './origins.ts';
import { sharesOfRow } from './row-shares.ts';

/** What acts: the weight, a cord's tension and pull inward, and each mark's share and pull outward. */
export function actingTold(asked: Asked): Told | null {
  const { plan, steps } = asked;
  const [part, what, id, which] = steps;
  if (part !== 'actions' || plan.actions === null) return null;
  if (what === 'weightN') return weightTold(plan);
  if (what === 'cordN' || what === 'inwardN') return cordTold(plan, what);
  const at = plan.marks.findIndex((mark) => mark.id === id);
  if (what !== 'perMark' || at < 0) return null;
  return which === 'shearN' ? sharesOfRow(plan, at) : pullTold(plan, at);
}

const named = (plan: Plan, of: string): Why | undefined => plan.why.find((why) => why.of === of);
const figure = (why: Why | undefined, name: string): number => Number(why?.inputs[name]);

function weightTold(plan: Plan): Told | null {
  const why = named(plan, 'mass');
  if (!why || plan.actions === null) return null;
  const massKg = Math.round((plan.actions.weightN / STANDARD_GRAVITY) * 100) / 100;
  const isGiven = why.inputs.massKg !== undefined;
  const mass: Input = {
    ...{ name: 'massKg', value: massKg, unit: 'kg' },
    ...(isGiven
      ? givenOrTaken(plan, 'piece.massKg')
      : { from: 'computed', of: `piece.build: ${why.formula}` }),
  };
  const gravity: Input = {
    name: 'gravity',
    value: STANDARD_GRAVITY,
    unit: 'm/s2',
    from: 'table',
    of: '3rd CGPM, 1901',
  };
  return { formula: 'massKg x gravity', inputs: [mass, gravity], basis: why.basis };
}

function cordTold(plan: Plan, what: 'cordN' | 'inwardN'): Told | null {
  const why = named(plan, 'cord tension');
  if (!why || plan.actions === null) return null;
  const inputs = [
    computed('weightN', plan.actions.weightN, 'actions.weightN'),
    computed('legAngleDeg', figure(why, 'legAngleDeg'), 'cord angle'),
  ];
  return {
    formula: `weightN / (2 x ${what === 'cordN' ? 'sin' : 'tan'}(legAngleDeg))`,
    inputs,
    basis: why.basis,
  };
}

/** Outward: share x centre of mass from the wall / height above the bottom edge, and what prises a batten off. */
function pullTold(plan: Plan, at: number): Told | null {
  const { actions, marks, frame, fixing } = plan;
  const [why, share, mark] = [named(plan, 'outward pull'), actions?.perMark[at], marks[at]];
  if (!why || !share || !mark || !actions || !frame) return null;
  const comFromWallMm = figure(why, 'comFromWallMm');
  const com: Input = {
    ...{ name: 'comFromWallMm', value: comFromWallMm, unit: 'mm' },
    ...givenOrTaken(plan, 'piece.depthMm'),
  };
  const isBatten = named(plan, 'load on each mark')?.inputs.by === 'batten';
  const above = aboveBottom(plan, isBatten ? marks[0] : mark);
  const weight = computed('weightN', actions.weightN, 'actions.weightN');
  const shear = computed('shearN', share.shearN, `actions.perMark.${share.id}.shearN`);
  const basis = isBatten ? [...why.basis, basisOf(BATTEN)] : why.basis;
  if (!isBatten) {
    const carries = actions.cordN === undefined ? [shear] : [weight, carriersOf(plan, share.shearN)];
    const formula = `${carries.map(({ name }) => name).join(' x ')} x comFromWallMm / aboveBottomMm`;
    return { formula, inputs: [...carries, com, above], basis };
  }
  const { thicknessMm, screwToLowerEdgeMm } = BATTEN.value;
  const { id: source } = basisOf(BATTEN);
  const prises: Input[] = [
    { name: 'offWallMm', value: thicknessMm, unit: 'mm', from: 'table', of: source },
    { name: 'screwToLowerEdgeMm', value: screwToLowerEdgeMm, unit: 'mm', from: 'table', of: source },
  ];
  const each = fixing?.fastener === 'batten-screws' ? 'shearN' : 'weightN / screws';
  const formula = `${each} x comFromWallMm / aboveBottomMm + ${each} x offWallMm / screwToLowerEdgeMm`;
  const carried = each === 'shearN' ? [shear] : [weight, computed('screws', marks.length, 'marks')];
  return { formula, inputs: [...carried, com, above, ...prises], basis };
}

/** Under a cord one hook carries all, of two or more the outer two half each, the inner ones nothing. */
const carriersOf = ({ marks }: Plan, shearN: number): Input =>
  computed('shareOfWeight', shearN > 0 ? 1 / Math.min(marks.length, 2) : 0, 'marks');

function aboveBottom({ frame, why }: Plan, mark: Mark | undefined): Input {
  const bottom = frame?.bottomMm ?? 0;
  const up = mark?.upMm ?? (mark?.downMm === undefined ? bottom : 0 - mark.downMm);
  if (up - bottom > 0) return computed('aboveBottomMm', Math.round((up - bottom) * 10) / 10, 'marks, frame');
  const pull = why.find(({ of }) => of === 'outward pull');
  return computed(
    'aboveBottomMm',
    figure(pull, `aboveBottom${mark?.id ?? ''}Mm`),
    'piece.heightMm, piece.hanging',
  );
}
