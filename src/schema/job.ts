import { z } from 'zod';
import type { Job } from '../../core/job.ts';
import { EXAMPLE_JOB } from './example-job.ts';
import { count, forceN, orUnknown, year, yesNoUnknown } from './figures.ts';
import { hangingSoFarSchema } from './hanging.ts';
import { pieceFields, pieceSchema } from './piece.ts';
import { placeSchema } from './place.ts';
import { wallSchema } from './wall.ts';
import { identifier } from './words.ts';

const buildingSchema = z
  .strictObject({
    country: z.enum(['AU', 'NZ', 'UK', 'US', 'IE', 'CA', 'EU', 'other', 'unknown']).exactOptional(),
    yearBuilt: orUnknown(year(1968)).exactOptional(),
    rewiredYear: orUnknown(year(2004)).exactOptional(),
    kind: z.enum(['house', 'flat', 'public', 'unknown']).exactOptional(),
    tenure: z.enum(['owner', 'tenant', 'client', 'unknown']).exactOptional(),
    consent: yesNoUnknown.exactOptional(),
    heritage: yesNoUnknown.exactOptional(),
    seismic: yesNoUnknown.exactOptional(),
  })
  .meta({ id: 'Building' });

const crewSchema = z
  .strictObject({
    people: orUnknown(count(100, 2)).exactOptional(),
    dustExtraction: yesNoUnknown.exactOptional(),
    lifter: yesNoUnknown.exactOptional(),
  })
  .meta({ id: 'Crew' });

const proofSchema = z
  .strictObject({
    packetRatingN: forceN(300).exactOptional(),
    packetUltimateN: forceN(1500)
      .exactOptional()
      .describe('A breaking load, each: divided by packetFactor, or by 5 where the packet gives none.'),
    packetFactor: z.number().min(1).max(20).exactOptional(),
    pullTestN: z.array(forceN(1200)).min(1).max(100).exactOptional(),
    saidBy: identifier(200, 'Robin').exactOptional(),
  })
  .meta({ id: 'Proof' });

/** A whole job (contract, section 4): well formed, which does not mean that it can or may be done. */
export const jobSchema = z
  .strictObject({
    building: buildingSchema.exactOptional(),
    piece: pieceSchema,
    wall: wallSchema,
    place: placeSchema,
    crew: crewSchema.exactOptional(),
    proof: proofSchema.exactOptional(),
  })
  .meta({ id: 'Job', examples: [EXAMPLE_JOB] }) satisfies z.ZodType<Job>;

/** What a conversation knows on the way to a job: the same fields with anything missing. */
export const jobSoFarSchema = z
  .strictObject({
    building: buildingSchema.exactOptional(),
    piece: pieceFields.partial().extend({ hanging: hangingSoFarSchema.optional() }).exactOptional(),
    wall: wallSchema.partial().exactOptional(),
    place: placeSchema.partial().exactOptional(),
    crew: crewSchema.exactOptional(),
    proof: proofSchema.exactOptional(),
  })
  .meta({ id: 'JobSoFar' });
