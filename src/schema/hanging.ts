import { z } from 'zod';
import { EXAMPLE_JOB } from './example-job.ts';
import { forceN, lengthMm, yesNoUnknown } from './figures.ts';

/** A hanger may stand a little above the top edge, and the screw a little under where it bears. */
const fromTopMm = lengthMm(-500, 20_000, 240);

const point = z
  .strictObject({
    fromLeftMm: lengthMm(-500, 20_000, 95).exactOptional(),
    fromRightMm: lengthMm(-500, 20_000, 95).exactOptional(),
    fromCentreMm: lengthMm(-10_000, 10_000, -325).exactOptional(),
    fromTopMm,
  })
  .refine(
    (at) => at.fromLeftMm !== undefined || at.fromRightMm !== undefined || at.fromCentreMm !== undefined,
    {
      error: 'one of fromLeftMm, fromRightMm and fromCentreMm',
    },
  )
  .meta({ id: 'HangerPoint', examples: [{ fromLeftMm: 95, fromTopMm: 240 }] });

const points = z.array(point).min(1).max(24);

/** What is on the piece; a bare ring is a ring of unknown kind. */
const hanger = z.enum([
  'ring',
  'd-ring',
  'strap-ring',
  'screw-eye',
  'mirror-plate',
  'keyhole-plate',
  'keyhole-routed',
  'sawtooth',
]);
const cordKind = z.enum(['hard-drawn-steel', 'stainless-wire', 'picture-wire', 'string']);

const seat = {
  seatToScrewMm: lengthMm(-500, 500, 0).exactOptional(),
  standOffMm: lengthMm(0, 500, 6).exactOptional(),
};

const cord = z
  .strictObject({
    by: z.literal('cord'),
    points: z.array(point).length(2),
    lengthMm: lengthMm(1, 20_000, 1000).exactOptional(),
    riseMm: lengthMm(0, 20_000, 90).exactOptional(),
    hooksApartMm: lengthMm(0, 20_000, 0).exactOptional(),
    hanger: hanger.exactOptional(),
    cordRatingN: forceN(700).describe('Breaking strength printed on the line’s packet.').exactOptional(),
    cordKind: cordKind.exactOptional(),
    cordMm: lengthMm(0.1, 20, 0.9).describe('Diameter of one solid wire.').exactOptional(),
    ...seat,
  })
  .refine((by) => by.lengthMm !== undefined || by.riseMm !== undefined, {
    error: 'lengthMm (hanger to hanger along the cord) or riseMm (how far it pulls up)',
  });

/** How the piece hangs (contract, section 4). */
export const hangingSchema = z
  .discriminatedUnion('by', [
    z.strictObject({ by: z.enum(['rings', 'keyholes']), points, hanger: hanger.exactOptional(), ...seat }),
    cord,
    z.strictObject({ by: z.literal('batten'), fromTopMm, lengthMm: lengthMm(1, 20_000, 600), ...seat }),
    z.strictObject({ by: z.literal('clips'), points, lowerRail: yesNoUnknown.exactOptional(), ...seat }),
  ])
  .meta({ id: 'Hanging', examples: [EXAMPLE_JOB.piece.hanging] });

/** Hangers said in part, as a conversation knows them on the way. */
export const hangingSoFarSchema = z
  .strictObject({
    by: z.enum(['rings', 'keyholes', 'cord', 'batten', 'clips']).optional(),
    hanger: hanger.optional(),
    points: z
      .array(
        z.strictObject({
          fromLeftMm: z.number().optional(),
          fromRightMm: z.number().optional(),
          fromCentreMm: z.number().optional(),
          fromTopMm: z.number().optional(),
        }),
      )
      .optional(),
    lengthMm: z.number().optional(),
    riseMm: z.number().optional(),
    hooksApartMm: z.number().optional(),
    cordRatingN: z.number().optional(),
    cordKind: cordKind.optional(),
    cordMm: z.number().optional(),
    lowerRail: yesNoUnknown.optional(),
    fromTopMm: z.number().optional(),
    seatToScrewMm: z.number().optional(),
    standOffMm: z.number().optional(),
  })
  .meta({ id: 'HangingSoFar' });
