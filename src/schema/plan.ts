import { z } from 'zod';
import { chainLink, weakest } from './chain.ts';
import { assumption, basis, why } from './explained.ts';

/** The shapes that leave: plain numbers, in the unit of the field's name. */
const n = z.number();
const words = z.array(z.string());

export const verdictSchema = z.enum(['go', 'care', 'stop']);

export const cautionSchema = z
  .strictObject({
    id: z.string(),
    severity: z.enum(['stop', 'warn', 'note']),
    text: z.string(),
    clears: z.string().optional().describe('On a stop: what would clear it.'),
    basis: words,
  })
  .meta({ id: 'Caution' });

export const markSchema = z
  .strictObject({
    id: z.string(),
    fromLeftMm: n,
    fromRightMm: n,
    upMm: n.optional(),
    upHereMm: n.optional(),
    downMm: n.optional(),
    on: z.string().optional(),
  })
  .meta({ id: 'Mark' });

export const crossCheckSchema = z
  .strictObject({ text: z.string(), expectMm: n, toleranceMm: n })
  .meta({ id: 'CrossCheck' });

const bitSchema = z.strictObject({
  kind: z.enum(['masonry', 'wood', 'metal', 'tile', 'none']),
  action: z.enum(['rotary', 'hammer-after-finish', 'rotary-until-known', 'none']),
  diameterMm: n,
  depthMm: n,
});

export const FASTENERS = [
  'plug-and-screw',
  'hollow-unit-plug',
  'aerated-plug',
  'frame-plug',
  'concrete-screw',
  'resin-stud',
  'stud-screw',
  'steel-stud-screw',
  'timber-screw',
  'lath-screw',
  'batten-screws',
  'board-across-studs',
  'screw-in-anchor',
  'expanding-sleeve-anchor',
  'spring-toggle',
  'bar-toggle',
  'strap-toggle',
  'winged-plug',
  'pin-hook',
  'picture-rail-hook',
] as const;

export const HEADS = ['pan', 'round', 'countersunk', 'hex', 'washer'] as const;

const governing = z
  .strictObject({ mode: z.string(), resistanceN: n, basis: words, noSource: z.boolean().optional() })
  .meta({ id: 'Governing' });

export const fixingSchema = z
  .strictObject({
    fastener: z.enum(FASTENERS),
    count: n,
    bit: bitSchema,
    pilot: z.strictObject({ diameterMm: n, depthMm: n }).optional(),
    plug: z.strictObject({ diameterMm: n, lengthMm: n }).optional(),
    screw: z
      .strictObject({ gauge: n.optional(), diameterMm: n, lengthMm: n, head: z.enum(HEADS) })
      .optional(),
    heldBy: z.enum(FASTENERS).optional().describe('What holds a board or batten to steel studs.'),
    hangerScrews: n.optional().describe('With an added board: the screws that hold the hangers to it.'),
    note: z.string().optional(),
    governing,
    utilisation: n,
  })
  .meta({ id: 'Fixing' });

const actions = z.strictObject({
  weightN: n,
  perMark: z.array(z.strictObject({ id: z.string(), shearN: n, tensionN: n })),
  cordN: n.optional(),
  inwardN: n.optional(),
});

const frame = z.strictObject({ leftMm: n, rightMm: n, bottomMm: n, topMm: n });
const batten = z.strictObject({ fromLeftMm: n, toLeftMm: n, upMm: n });
const alternative = z
  .strictObject({
    fastener: z.enum(FASTENERS),
    utilisation: n,
    text: z.string(),
    governing: governing.optional(),
  })
  .meta({ id: 'Alternative' });

/** A plan (contract, section 5). On `stop` there are no marks and no fixing. */
export const planSchema = z
  .strictObject({
    verdict: verdictSchema,
    frame: frame.nullable().describe('Null with several pieces, whose frames are in `frames`.'),
    frames: z.array(frame).optional().describe('With several pieces: one for each, in order.'),
    marks: z.array(markSchema),
    batten: batten.optional(),
    battens: z.array(batten.nullable()).optional().describe('With several pieces: one for each, in order.'),
    crossChecks: z.array(crossCheckSchema),
    actions: actions.nullable(),
    fixing: fixingSchema.nullable().describe('With several pieces the strongest needed.'),
    fixings: z.array(fixingSchema).optional().describe('With several pieces: one for each, in order.'),
    chain: z
      .array(chainLink)
      .optional()
      .describe('From the piece to the wall; the fixing’s own utilisation is the wall fixing’s.'),
    weakest: weakest.optional().describe('The link of known strength nearest its limit.'),
    alternatives: z.array(alternative),
    rejected: z.array(z.strictObject({ fastener: z.string(), because: z.string() })),
    cautions: z.array(cautionSchema),
    clear: words,
    assumptions: z.array(assumption),
    advice: words,
    steps: words,
    tools: words,
    shopping: z.array(z.strictObject({ item: z.string(), count: n })),
    why: z.array(why),
    basis: z.array(basis),
  })
  .meta({ id: 'Plan' });
