import type { JobSoFar } from '../../../core/job.ts';
import type { BaseMaterial } from '../../../core/wall/wall.ts';
import type { AskBack } from '../../reading.ts';
import { fact } from '../words/found.ts';

/** Words that mean different walls in different places (trade.md 10, "always asked back"). */
export type Doubt =
  | {
      doubt:
        | 'plaster'
        | 'house'
        | 'veneer'
        | 'board'
        | 'board-over'
        | 'battens'
        | 'studs'
        | 'cement'
        | 'block'
        | 'masonry'
        | 'sheet';
    }
  | { doubt: 'several'; of: readonly BaseMaterial[] };

const MATERIAL_LABELS: Record<Exclude<BaseMaterial, 'unknown'>, string> = {
  'clay-brick': 'brick',
  'concrete-block': 'concrete block',
  concrete: 'concrete',
  'aerated-concrete': 'aerated concrete',
  'natural-stone': 'stone',
  'plasterboard-on-timber-studs': 'plasterboard on timber studs',
  'plasterboard-on-steel-studs': 'plasterboard on steel studs',
  'plasterboard-on-dabs': 'plasterboard stuck to masonry (dot and dab)',
  'lath-and-plaster': 'lath and plaster',
  'fibre-cement-on-studs': 'fibre cement sheet',
  timber: 'timber',
};

type Option = { label: string; wall: NonNullable<JobSoFar['wall']> };

const is = (
  baseMaterial: Exclude<BaseMaterial, 'unknown'>,
  label = MATERIAL_LABELS[baseMaterial],
): Option => ({
  label,
  wall: { baseMaterial },
});
const plastered = (baseMaterial: 'clay-brick' | 'concrete-block', label: string): Option => ({
  label,
  wall: { baseMaterial, finish: { kind: 'plaster' } },
});

const PT = is('plasterboard-on-timber-studs');
const PS = is('plasterboard-on-steel-studs');
const PD = is('plasterboard-on-dabs');
const BRICK = is('clay-brick');
const BLOCK = is('concrete-block');

const OPTIONS: Record<Exclude<Doubt['doubt'], 'several'>, { text: string; options: Option[] }> = {
  plaster: {
    text: 'Plaster means different walls in different places. Which is it: wet plaster on brick, wet plaster on block, plasterboard on studs, or lath and plaster?',
    options: [
      plastered('clay-brick', 'wet plaster on brick'),
      plastered('concrete-block', 'wet plaster on block'),
      PT,
      PS,
      is('lath-and-plaster'),
    ],
  },
  house: {
    text: 'A brick house need not have a brick wall inside. Knock on this wall: is the inside face brick, or plasterboard?',
    options: [is('clay-brick', 'brick inside too'), PT, PD],
  },
  veneer: {
    text: 'That is the outside skin. What is the face you would drill?',
    options: [PT, PS, is('clay-brick', 'the brick itself')],
  },
  board: {
    text: 'What is the plasterboard on: timber studs, steel studs, or stuck to masonry with dabs?',
    options: [PT, PS, PD],
  },
  'board-over': {
    text: 'Plasterboard over masonry: stuck on with dabs, or on battens or studs with a gap?',
    options: [PD, { ...PT, label: 'plasterboard on battens or timber studs, with a gap' }, PS],
  },
  battens: {
    text: 'Plasterboard on battens: battens on masonry, or a timber stud wall?',
    options: [
      { ...PD, label: 'battens on masonry, with a gap' },
      { ...PT, label: 'timber studs' },
    ],
  },
  studs: {
    text: 'Timber studs or steel studs?',
    options: [
      { ...PT, label: 'timber studs' },
      { ...PS, label: 'steel studs' },
    ],
  },
  cement: {
    text: 'Cement on the face is often a render. What is behind it: brick, block, or solid concrete?',
    options: [
      { label: 'render on brick', wall: { baseMaterial: 'clay-brick', finish: { kind: 'render' } } },
      { label: 'render on block', wall: { baseMaterial: 'concrete-block', finish: { kind: 'render' } } },
      is('concrete', 'solid concrete'),
      is('fibre-cement-on-studs'),
    ],
  },
  block: {
    text: 'Which block: concrete block (grey, heavy), or aerated block (pale, light, a nail scratches it)?',
    options: [BLOCK, is('aerated-concrete', 'aerated block')],
  },
  masonry: {
    text: 'Which masonry is it: brick, block, concrete or stone?',
    options: [BRICK, BLOCK, is('concrete'), is('natural-stone')],
  },
  sheet: {
    text: 'Which sheet is it: plasterboard on timber studs, on steel studs, stuck to masonry, fibre cement, or lath and plaster?',
    options: [PT, PS, PD, is('fibre-cement-on-studs'), is('lath-and-plaster')],
  },
};

/** The question back, each reading with the fact it would be. */
export function askWhichMaterial(doubt: Doubt, said: string): AskBack {
  const options = doubt.doubt === 'several' ? severalOf(doubt.of) : OPTIONS[doubt.doubt].options;
  const text =
    doubt.doubt === 'several'
      ? `You named more than one: ${options.map((option) => option.label).join(', ')}. Which one is behind the piece, where the holes go?`
      : OPTIONS[doubt.doubt].text;
  return {
    question: 'wall.baseMaterial',
    text,
    readings: options.map(({ label, wall }) => ({ label, fact: fact('wall.baseMaterial', { wall }, said) })),
  };
}

function severalOf(of: readonly BaseMaterial[]): Option[] {
  return of.flatMap((each) => (each === 'unknown' ? [] : [is(each)]));
}
