import type { Fixing } from '../../core/fixing/fixing-shape.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { KG_PER_POUND, STANDARD_GRAVITY } from '../../core/quantity.ts';
import type { DisplayUnit } from '../reading.ts';
import { FASTENER } from './fastener.ts';
import { tidy } from './length.ts';
import { sentence } from './sentence.ts';

/** Sizes of bits, plugs and screws are said as they are sold: in millimetres and by gauge, whatever the tape reads. */
const size = (value: number): string => tidy(value, 1);

const BIT: Readonly<Record<Fixing['bit']['kind'], string>> = {
  masonry: 'masonry bit',
  wood: 'wood bit',
  metal: 'metal bit',
  tile: 'tile bit',
  none: 'no bit',
};
const ACTION: Readonly<Record<Fixing['bit']['action'], string>> = {
  rotary: 'rotary, no hammer',
  'hammer-after-finish': 'rotary through the finish, then hammer',
  'rotary-until-known': 'rotary until you know it is solid',
  none: '',
};

/** Bit, depth, plug and screw in one breath, with what governs and how far it is used. */
export function fixingText(fixing: Fixing, unit: DisplayUnit): string {
  return [
    `${fixing.count} x ${FASTENER[fixing.fastener]}.`,
    bitText(fixing),
    ...(fixing.pilot
      ? [`Pilot: ${size(fixing.pilot.diameterMm)} mm, ${size(fixing.pilot.depthMm)} mm deep.`]
      : []),
    ...(fixing.plug ? [`Plug: ${size(fixing.plug.diameterMm)} x ${size(fixing.plug.lengthMm)} mm.`] : []),
    ...(fixing.screw ? [`Screw: ${screwText(fixing.screw)}.`] : []),
    ...(fixing.note ? [sentence(fixing.note)] : []),
    holdsText(fixing, unit),
  ]
    .filter((line) => line !== '')
    .join('\n');
}

function bitText({ bit }: Fixing): string {
  if (bit.kind === 'none') return '';
  const how = ACTION[bit.action] === '' ? '' : `, ${ACTION[bit.action]}`;
  return `Bit: ${size(bit.diameterMm)} mm ${BIT[bit.kind]}, ${size(bit.depthMm)} mm deep from the face${how}.`;
}

export function screwText(screw: NonNullable<Fixing['screw']>): string {
  const thick =
    screw.gauge === undefined
      ? `${size(screw.diameterMm)} mm`
      : `${screw.gauge} gauge (${size(screw.diameterMm)} mm)`;
  const head = screw.head === 'washer' ? 'with a washer' : `${screw.head} head`;
  return `${thick} x ${size(screw.lengthMm)} mm, ${head}`;
}

/** What gives first, in words that stand after "before". */
const GIVES: Readonly<Record<Fixing['governing']['mode'], string>> = {
  'screw-bending': 'the screw bends',
  'screw-shear': 'the screw shears',
  'screw-tension': 'the screw tears',
  'plug-cap': 'the plug is at its cap',
  'packet-rating': 'the packet’s rating is used up',
  'pull-test': 'what the pull test allows is used up',
  'timber-lateral': 'the screw crushes the timber sideways',
  'timber-withdrawal': 'the screw draws out of the timber',
  'concrete-cone': 'the concrete breaks out',
  masonry: 'the masonry gives',
  'anchor-cap': 'the fixing is at its cap',
};

/** Above these parts of the resistance the margin is said to be thin; our choice. */
const CLOSE = 0.8;
const AT_THE_LIMIT = 0.95;

function nearTheLimit(utilisation: number): string {
  if (utilisation > AT_THE_LIMIT) return ', right at the limit: nothing heavier on it';
  return utilisation > CLOSE ? ', close to the limit' : '';
}

function holdsText({ governing, utilisation }: Fixing, unit: DisplayUnit): string {
  const { mode, resistanceN, noSource } = governing;
  const carried = resistanceN / STANDARD_GRAVITY;
  const each =
    unit === 'in'
      ? `about ${tidy(carried / KG_PER_POUND, 0)} lb (${Math.round(resistanceN)} N)`
      : `${Math.round(resistanceN)} N (about ${tidy(carried, resistanceN < 100 ? 1 : 0)} kg)`;
  const limit = noSource ? ', a cap of common practice, no source' : ` before ${GIVES[mode]}`;
  return `Each may carry ${each} for good${limit}. This job uses ${Math.round(utilisation * 100)} % of that${nearTheLimit(utilisation)}.`;
}

/** What to bring, as a table and as a line. */
export function shoppingTable(plan: Plan): { text: string; columns: string[]; rows: string[][] } {
  const rows = [
    ...plan.shopping.map(({ item, count }) => [item, String(count)]),
    ...plan.tools.map((tool) => [tool, '1']),
  ];
  const text = `Bring: ${rows.map(([item, count]) => (count === '1' ? item : `${count} x ${item}`)).join(', ')}.`;
  return { text, columns: ['Bring', 'How many'], rows };
}
