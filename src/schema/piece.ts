import { z } from 'zod';
import { EXAMPLE_JOB } from './example-job.ts';
import { lengthMm, massKg, orUnknown, yesNoUnknown } from './figures.ts';
import { hangingSchema } from './hanging.ts';

const build = z
  .strictObject({
    glazing: z
      .strictObject({
        material: z.enum(['glass', 'acrylic', 'polycarbonate']),
        thicknessMm: lengthMm(0.5, 100, 4),
      })
      .exactOptional(),
    frame: z
      .strictObject({
        material: z.enum(['softwood', 'hardwood', 'oak', 'mdf', 'aluminium', 'steel']),
        widthMm: lengthMm(1, 1000, 60),
        thicknessMm: lengthMm(1, 500, 25),
      })
      .exactOptional(),
    backing: z
      .strictObject({
        material: z.enum(['mdf', 'hardboard', 'plywood', 'foam-board']),
        thicknessMm: lengthMm(0.5, 100, 3),
      })
      .exactOptional(),
  })
  .refine((made) => made.glazing ?? made.frame ?? made.backing, {
    error: 'at least one of glazing, frame and backing',
  })
  .meta({ id: 'Build', examples: [{ glazing: { material: 'glass', thicknessMm: 4 } }] });

/** A piece without the rule that its mass must be known or reckonable, so that its fields can be reused. */
export const pieceFields = z.strictObject({
  kind: z.enum(['mirror', 'picture', 'canvas', 'panel']),
  widthMm: lengthMm(1, 20_000, 840),
  heightMm: lengthMm(1, 20_000, 1120),
  depthMm: lengthMm(0, 2000, 30).exactOptional(),
  massKg: massKg(24).exactOptional(),
  build: build.exactOptional(),
  glass: orUnknown(z.enum(['none', 'plain', 'safety', 'acrylic'])).exactOptional(),
  lit: yesNoUnknown.exactOptional().describe('True when it needs mains.'),
  comFromWallMm: lengthMm(0, 2000, 15).exactOptional(),
  comFromLeftMm: lengthMm(0, 20_000, 420).exactOptional(),
  bumperMm: lengthMm(0, 200, 6)
    .exactOptional()
    .describe('Thickness of the bumpers at its lower corners; 0 for none.'),
  hanging: hangingSchema,
});

/** What is hung (contract, section 4). */
export const pieceSchema = pieceFields
  .refine((piece) => piece.massKg !== undefined || piece.build !== undefined, {
    path: ['massKg'],
    error: 'massKg, or build to reckon it from',
  })
  .meta({
    id: 'Piece',
    examples: [EXAMPLE_JOB.piece],
    anyOf: [{ required: ['massKg'] }, { required: ['build'] }],
  });
