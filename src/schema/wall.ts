import { z } from 'zod';
import { EXAMPLE_JOB } from './example-job.ts';
import { count, LONGEST_MM, lengthMm, orUnknown, yesNoUnknown } from './figures.ts';

const accessory = z
  .strictObject({
    kind: z.enum([
      'socket',
      'switch',
      'light',
      'thermostat',
      'heater',
      'consumer-unit',
      'blank-plate',
      'tap',
      'basin',
      'toilet',
      'shower',
      'radiator',
      'boiler',
      'gas',
      'window',
      'door',
      'pipe',
      'cable',
    ]),
    face: z.enum(['this', 'far']),
    xMm: lengthMm(-LONGEST_MM, LONGEST_MM, 600).describe('From the left end of the face it is on.'),
    yMm: lengthMm(0, LONGEST_MM, 300).describe('From the finished floor.'),
    widthMm: lengthMm(1, LONGEST_MM, 146).exactOptional(),
    heightMm: lengthMm(1, LONGEST_MM, 86).exactOptional(),
  })
  .meta({ id: 'Accessory', examples: [{ kind: 'socket', face: 'this', xMm: 600, yMm: 300 }] });

const unplaced = z
  .strictObject({
    kind: accessory.shape.kind,
    face: accessory.shape.face.exactOptional(),
    xMm: accessory.shape.xMm.exactOptional(),
    yMm: accessory.shape.yMm.exactOptional(),
    widthMm: accessory.shape.widthMm,
    heightMm: accessory.shape.heightMm,
    whereabouts: z.literal('unknown').exactOptional(),
  })
  .meta({
    id: 'Unplaced',
    description: 'Told of without all of its place: stops the job until it is known.',
    examples: [{ kind: 'switch', face: 'far' }],
  });

const end = z.enum(['wall', 'open']).exactOptional();

/** The wall it goes on (contract, section 4). */
export const wallSchema = z
  .strictObject({
    baseMaterial: z.enum([
      'clay-brick',
      'concrete-block',
      'concrete',
      'aerated-concrete',
      'natural-stone',
      'plasterboard-on-timber-studs',
      'plasterboard-on-steel-studs',
      'plasterboard-on-dabs',
      'lath-and-plaster',
      'fibre-cement-on-studs',
      'timber',
      'unknown',
    ]),
    cores: z.enum(['solid', 'perforated', 'hollow', 'unknown']).exactOptional(),
    finish: z
      .strictObject({
        kind: z.enum(['bare', 'plaster', 'render', 'tile', 'board', 'unknown']),
        thicknessMm: lengthMm(0, 500, 12).exactOptional(),
      })
      .exactOptional(),
    boardMm: lengthMm(1, 200, 13).exactOptional(),
    boardLayers: count(8, 1).exactOptional(),
    voidMm: lengthMm(0, 5000, 70).exactOptional(),
    thicknessMm: lengthMm(1, 5000, 110).exactOptional(),
    widthMm: lengthMm(10, LONGEST_MM, 2700),
    heightMm: lengthMm(10, LONGEST_MM, 2400).exactOptional(),
    datum: z
      .strictObject({
        kind: z.enum(['floor', 'mantel', 'furniture', 'ceiling', 'nosing']),
        aboveFloorMm: lengthMm(0, LONGEST_MM, 0).exactOptional(),
        fallMm: lengthMm(-5000, 5000, 0).exactOptional(),
        riseMm: lengthMm(1, 1000, 180).exactOptional().describe('Of one stair, with a nosing as datum.'),
        goingMm: lengthMm(1, 2000, 250)
          .exactOptional()
          .describe('Of one stair, nosing to nosing, with a nosing as datum.'),
        climbs: z.enum(['left', 'right']).exactOptional().describe('Which way the stairs go up.'),
        widthMm: lengthMm(1, LONGEST_MM, 1400)
          .exactOptional()
          .describe('Of the mantel or furniture; the piece is taken to be over its middle.'),
      })
      .exactOptional(),
    ceilingFallMm: lengthMm(-20_000, 20_000, 0)
      .exactOptional()
      .describe(
        'The ceiling over the wall’s width, positive when its right end is higher; heightMm is then at the left end.',
      ),
    pictureRail: z
      .enum(['sound', 'loose', 'none', 'unknown'])
      .exactOptional()
      .describe('A moulding that takes hooks: sound when it was pulled by hand and did not move.'),
    steelMm: lengthMm(0.1, 10, 0.5).exactOptional().describe('Thickness of the steel of steel studs.'),
    studs: orUnknown(
      z.strictObject({
        spacingMm: lengthMm(10, 5000, 450).exactOptional(),
        firstMm: lengthMm(0, LONGEST_MM, 200).exactOptional(),
        widthMm: lengthMm(10, 500, 45).exactOptional(),
      }),
    ).exactOptional(),
    courses: z
      .strictObject({
        gaugeMm: lengthMm(10, 2000, 86).exactOptional(),
        firstBedMm: lengthMm(0, LONGEST_MM, 75).exactOptional(),
        jointMm: lengthMm(0, 200, 10).exactOptional(),
        lengthMm: lengthMm(10, 2000, 240).exactOptional().describe('A unit and one perpend.'),
        perpendMm: lengthMm(0, LONGEST_MM, 600)
          .exactOptional()
          .describe('Left edge of a perpend in the course of the marks, from the left end.'),
      })
      .exactOptional(),
    accessories: orUnknown(z.array(accessory).max(200)).exactOptional(),
    unplaced: z.array(unplaced).max(200).exactOptional(),
    farSide: z.enum(['seen', 'unknown']).exactOptional(),
    ends: z.strictObject({ left: end, right: end }).exactOptional(),
    wet: z.enum(['no', 'bathroom', 'shower', 'unknown']).exactOptional(),
    coating: z.enum(['none', 'textured', 'unknown']).exactOptional(),
    asbestos: z.enum(['tested-clear', 'not-tested', 'unknown']).exactOptional(),
    tensioned: z.enum(['no', 'possible', 'scanned', 'unknown']).exactOptional(),
    separating: yesNoUnknown.exactOptional(),
    external: yesNoUnknown.exactOptional().describe('An outside wall.'),
    common: yesNoUnknown
      .exactOptional()
      .describe('Common property, as a corridor of flats is: stops without consent.'),
    hides: z
      .array(z.enum(['pocket-door', 'cistern', 'boiler', 'flue', 'meter', 'wall-heating']))
      .max(6)
      .exactOptional()
      .describe('What the wall is built round; any of it stops the job.'),
    condition: orUnknown(z.enum(['sound', 'poor'])).exactOptional(),
  })
  .meta({ id: 'Wall', examples: [EXAMPLE_JOB.wall] });
