import type { Job, JobSoFar } from '../../core/job.ts';
import type { Caution, Plan } from '../../core/plan-shape.ts';
import { kg, mm, newtons } from '../../core/quantity.ts';
import type { Parts } from '../../flows/parts.ts';
import type { QuestionName } from '../../flows/question.ts';
import type { Fact, Intent, Reading } from '../../flows/reading.ts';

/** A plain stand-in for understanding, plans and cautions, so that the conversation can be tested by itself. */

const said = (question: QuestionName, value: JobSoFar): Fact => ({ question, value, said: question });

/** Each question's plain answer, and what it means. */
export const ANSWERS: readonly (readonly [string, Fact])[] = [
  ['a mirror', said('piece.kind', { piece: { kind: 'mirror' } })],
  ['brick', said('wall.baseMaterial', { wall: { baseMaterial: 'clay-brick' } })],
  ['Australia', said('building.country', { building: { country: 'AU' } })],
  ['2010', said('building.yearBuilt', { building: { yearBuilt: 2010 } })],
  ['mine', said('building.tenure', { building: { tenure: 'owner' } })],
  ['none of these', said('hazards', { wall: { wet: 'no', coating: 'none' }, building: { heritage: false } })],
  ['24 kg', said('piece.massKg', { piece: { massKg: kg(24) } })],
  ['nothing below', said('place.below', { place: { below: 'nothing' } })],
  ['no sockets', said('wall.accessories', { wall: { accessories: [] } })],
  ['840 x 1120', said('piece.size', { piece: { widthMm: mm(840), heightMm: mm(1120) } })],
  [
    'rings 95 in 240 down',
    said('piece.hanging', {
      piece: {
        hanging: {
          by: 'rings',
          points: [
            { fromLeftMm: mm(95), fromTopMm: mm(240) },
            { fromRightMm: mm(95), fromTopMm: mm(240) },
          ],
        },
      },
    }),
  ],
  ['12 plaster', said('wall.finish', { wall: { finish: { kind: 'plaster', thicknessMm: mm(12) } } })],
  ['2700', said('wall.widthMm', { wall: { widthMm: mm(2700) } })],
  ['centre', said('place.across', { place: { across: { by: 'centre' } } })],
  [
    'centre at 1500',
    {
      ...said('place.up', {
        place: { up: { by: 'centre-at', mm: mm(1500) } },
        wall: { datum: { kind: 'floor' } },
      }),
      inferred: true,
    },
  ],
  ['solid', said('wall.cores', { wall: { cores: 'solid' } })],
  ['safety', said('piece.glass', { piece: { glass: 'safety' } })],
  ['two of us', said('crew.people', { crew: { people: 2 } })],
];

export const MORE_ANSWERS: readonly (readonly [string, Fact])[] = [
  ['28 kg', said('piece.massKg', { piece: { massKg: kg(28) } })],
  ['58 kg', said('piece.massKg', { piece: { massKg: kg(58) } })],
  ['2900', said('wall.widthMm', { wall: { widthMm: mm(2900) } })],
  ['860 wide', said('piece.size', { piece: { widthMm: mm(860) } })],
  ['a picture', said('piece.kind', { piece: { kind: 'picture' } })],
  ['over a cot', said('place.below', { place: { below: 'cot' } })],
  ['1100', said('wall.datum', { wall: { datum: { kind: 'mantel', aboveFloorMm: mm(1100) } } })],
  ['concrete', said('wall.baseMaterial', { wall: { baseMaterial: 'concrete' } })],
  ['i rent', said('building.tenure', { building: { tenure: 'tenant' } })],
  ['plasterboard', said('wall.baseMaterial', { wall: { baseMaterial: 'plasterboard-on-timber-studs' } })],
  ['none on this side', said('wall.accessories', { wall: { accessories: [], farSide: 'unknown' } })],
  ['a flat', said('building.kind', { building: { kind: 'flat' } })],
  [
    '100 above the mantel',
    said('place.up', {
      place: { up: { by: 'bottom-above', mm: mm(100) } },
      wall: { datum: { kind: 'mantel' } },
    }),
  ],
  ['300 below the ceiling', said('place.up', { place: { up: { by: 'below-ceiling', mm: mm(300) } } })],
];

const INTENTS: Readonly<Record<string, Intent>> = {
  yes: 'yes',
  no: 'no',
  back: 'back',
  'start over': 'start-over',
  why: 'why',
  help: 'help',
  stop: 'stop',
  hello: 'greet',
  'dont know': 'dont-know',
  'where were we': 'where-were-we',
  'what bit for that': 'trade-question',
};

const FACTS = new Map([...ANSWERS, ...MORE_ANSWERS]);
const CORRECTION = 'make that ';
const ANOTHER = 'next: ';

export const plainParts: Parts = {
  understand: (text, listening) => {
    const reading: Reading = {
      intent: 'answer',
      facts: [],
      refused: [],
      asks: [],
      correction: text.startsWith(CORRECTION),
    };
    const intent = INTENTS[text];
    if (intent) return { ...reading, intent };
    if (text.startsWith('why ')) return { ...reading, intent: 'why', about: text.slice(4) };
    const isAnother = text.startsWith(ANOTHER) && listening.hasPlan;
    const plain = text.replace(CORRECTION, '').replace(ANOTHER, '');
    const facts = plain.split(', ').flatMap((each) => FACTS.get(each) ?? []);
    if (plain === 'plaster wall') {
      const ask = {
        question: 'wall.baseMaterial' as const,
        text: 'Plaster over what?',
        readings: [
          { label: 'Over brick', fact: said('wall.baseMaterial', { wall: { baseMaterial: 'clay-brick' } }) },
          {
            label: 'Board',
            fact: said('wall.baseMaterial', { wall: { baseMaterial: 'plasterboard-on-timber-studs' } }),
          },
        ],
      };
      return { ...reading, asks: [ask] };
    }
    if (facts.length === 0) return { ...reading, intent: 'not-understood' };
    return { ...reading, facts, intent: isAnother ? 'new-piece' : 'answer' };
  },
  factForChoice: (question, value) =>
    [...FACTS.values()].find(
      (fact) => fact.question === question && JSON.stringify(fact.value).includes(`"${value}"`),
    ) ?? null,
  planOf: plainPlan,
  checkOf: () => ({ verdict: 'go', marks: [], tiltDeg: null, fixing: null, cautions: [], text: 'Checked.' }),
  stopsSoFar: (job) => [
    ...(job.place?.below === 'cot' ? [stop('C-FL-2', 'Nothing over a cot.', 'Another place.')] : []),
    ...((job.piece?.massKg ?? 0) > 50 ? [stop('C-GT-9', 'Over 50 kg.', 'Someone who signs for it.')] : []),
    ...(job.wall?.baseMaterial === 'unknown'
      ? [stop('C-WL-1', 'Find out what the wall is.', 'Its material.')]
      : []),
    ...(job.wall?.accessories === 'unknown' ? [stop('C-SV-4', 'Look at both faces.', 'A look.')] : []),
  ],
  standingLine: 'Scan and isolate, eyes, dust, lifting; local codes decide.',
};

const stop = (id: string, text: string, clears: string): Caution => ({
  id,
  severity: 'stop',
  text,
  clears,
  basis: [],
});

function plainPlan(job: Job): Plan {
  const left = mm((job.wall.widthMm - job.piece.widthMm) / 2);
  return {
    verdict: 'care',
    frame: null,
    marks: [
      { id: 'A', fromLeftMm: left, fromRightMm: mm(job.wall.widthMm - left), upMm: mm(job.place.up.mm) },
    ],
    crossChecks: [],
    actions: null,
    fixing: {
      fastener: 'plug-and-screw',
      count: 2,
      bit: { kind: 'masonry', action: 'rotary', diameterMm: mm(8), depthMm: mm(72) },
      plug: { diameterMm: mm(8), lengthMm: mm(job.wall.cores === 'solid' ? 50 : 60) },
      governing: { mode: 'screw-bending', resistanceN: newtons(127), basis: [] },
      utilisation: (job.piece.massKg ?? 0) / 100,
    },
    alternatives: [],
    rejected: [],
    cautions: [
      { id: 'C-SV-3', severity: 'warn', text: 'Deep hole: scan and switch off.', basis: [] },
      ...(job.crew?.people === 1
        ? [{ id: 'C-MH-1', severity: 'warn' as const, text: 'Two to lift.', basis: [] }]
        : []),
      ...(job.piece.glass === 'plain'
        ? [{ id: 'C-GL-1', severity: 'warn' as const, text: 'Low glass.', basis: [] }]
        : []),
    ],
    clear: [],
    assumptions: [{ field: 'piece.depthMm', value: 30, because: 'not given' }],
    advice: [],
    steps: ['Mark A.', 'Drill.'],
    tools: ['tape'],
    shopping: [{ item: 'plug 8 x 50', count: 2 }],
    why: [
      {
        of: 'hole depth',
        formula: 'finish + plug + 10',
        inputs: { finish: 12, plug: 50 },
        result: '72 mm',
        basis: [],
      },
    ],
    basis: [],
  };
}
