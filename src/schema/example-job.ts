/** The contract's own example: it is shown in the description and its parts are the examples of refusals. */
export const EXAMPLE_JOB = {
  building: { country: 'AU', yearBuilt: 1968, kind: 'house', tenure: 'owner' },
  piece: {
    kind: 'mirror',
    widthMm: 840,
    heightMm: 1120,
    depthMm: 30,
    massKg: 24,
    glass: 'safety',
    hanging: {
      by: 'rings',
      points: [
        { fromLeftMm: 95, fromTopMm: 240 },
        { fromRightMm: 95, fromTopMm: 240 },
      ],
      seatToScrewMm: 0,
      standOffMm: 6,
    },
  },
  wall: {
    baseMaterial: 'clay-brick',
    cores: 'unknown',
    finish: { kind: 'plaster', thicknessMm: 12 },
    thicknessMm: 110,
    widthMm: 2700,
    heightMm: 2400,
    datum: { kind: 'floor', aboveFloorMm: 0, fallMm: 0 },
    studs: { spacingMm: 450, firstMm: 200, widthMm: 45 },
    accessories: [{ kind: 'socket', face: 'this', xMm: 600, yMm: 300 }],
  },
  place: { across: { by: 'centre' }, up: { by: 'bottom-above', mm: 140 }, below: 'nothing' },
  crew: { people: 2, dustExtraction: false },
};
