import { expect, test } from 'vitest';
import { EXAMPLE_JOB } from '../../../src/schema/example-job.ts';
import { posted } from '../app-under-test.ts';
import type { AppFactory } from './messages.ts';

/** The example job with one field put in place of another; undefined takes it away. */
function jobWith(path: string, value: unknown): object {
  const job = structuredClone(EXAMPLE_JOB);
  const steps = path.split('.');
  const last = steps.pop() ?? '';
  let at: object = job;
  for (const step of steps) at = Reflect.get(at, step);
  if (value === undefined) Reflect.deleteProperty(at, last);
  else Reflect.set(at, last, value);
  return job;
}

const RINGS = EXAMPLE_JOB.piece.hanging;

/** [path, what is put there]: each is refused at this path, or the one given third. */
const REFUSED: [string, unknown, string?][] = [
  ['piece', undefined],
  ['piece.kind', undefined],
  ['piece.kind', 'wardrobe'],
  ['piece.widthMm', undefined],
  ['piece.widthMm', 0],
  ['piece.widthMm', -840],
  ['piece.widthMm', '840'],
  ['piece.widthMm', null],
  ['piece.widthMm', 1e9],
  ['piece.heightMm', undefined],
  ['piece.massKg', undefined],
  ['piece.massKg', 0],
  ['piece.massKg', -24],
  ['piece.massKg', 900_000],
  ['piece.massKg', '24 kg'],
  ['piece.hanging', undefined],
  ['piece.hanging.by', 'magic'],
  ['piece.hanging.points', []],
  ['piece.hanging.points.0.fromTopMm', undefined],
  ['piece.hanging.points.0.fromLeftMm', undefined, 'piece.hanging.points.0'],
  ['piece.hanging', { by: 'cord', points: RINGS.points }],
  ['piece.hanging', { by: 'cord', points: RINGS.points.slice(1), riseMm: 90 }, 'piece.hanging.points'],
  ['piece.hanging', { by: 'batten', lengthMm: 600 }, 'piece.hanging.fromTopMm'],
  ['piece.colour', 'gold'],
  ['piece.build', {}],
  ['wall.baseMaterial', undefined],
  ['wall.baseMaterial', 'cheese'],
  ['wall.widthMm', undefined],
  ['wall.widthMm', 2.7],
  ['wall.accessories', 'none'],
  ['wall.accessories', null],
  ['wall.accessories.0.kind', 'cupboard'],
  ['wall.accessories.0.zMm', 3],
  ['wall.datum.fallMm', 1e6],
  ['wall.condition', 'fine'],
  ['place.across', undefined],
  ['place.across', { by: 'left-edge' }, 'place.across.mm'],
  ['place.across', { by: 'centre', mm: 3 }, 'place.across.mm'],
  ['place.up', undefined],
  ['place.up.mm', -1],
  ['place.below', 'shark tank'],
  ['building.yearBuilt', 19.68],
  ['building.country', 'Atlantis'],
  ['crew.people', 0],
  ['crew.people', 2.5],
  ['proof', { pullTestN: [] }, 'proof.pullTestN'],
  ['pieces', [EXAMPLE_JOB.piece]],
];

/** [path, what is put there]: each is taken. */
const TAKEN: [string, unknown][] = [
  ['crew', undefined],
  ['building', undefined],
  ['piece.depthMm', undefined],
  ['piece.massKg', 0.5],
  ['piece.massKg', 900],
  ['piece.glass', 'unknown'],
  ['piece.comFromWallMm', 22.5],
  ['piece.hanging', { by: 'keyholes', points: [{ fromCentreMm: -200, fromTopMm: 60 }], seatToScrewMm: -8 }],
  ['piece.hanging', { by: 'cord', points: RINGS.points, lengthMm: 900, hooksApartMm: 0 }],
  ['piece.hanging', { by: 'batten', fromTopMm: 120, lengthMm: 600 }],
  ['piece.hanging', { by: 'clips', points: RINGS.points }],
  ['piece.hanging.points.1.fromLeftMm', 745],
  ['wall.baseMaterial', 'unknown'],
  ['wall.studs', 'unknown'],
  ['wall.accessories', 'unknown'],
  ['wall.accessories', []],
  ['wall.farSide', 'unknown'],
  ['wall.separating', 'unknown'],
  ['wall.ends', { left: 'open' }],
  ['wall.datum', { kind: 'mantel', aboveFloorMm: 1100, fallMm: -6 }],
  ['place.across', { by: 'between', fromMm: 600, toMm: 2100 }],
  ['place.up', { by: 'below-ceiling', mm: 150 }],
  ['building.consent', false],
  ['crew.people', 'unknown'],
  ['proof', { packetRatingN: 300, saidBy: 'Robin' }],
];

/** A whole job: contract, section 4. */
export function jobContract(appWith: AppFactory): void {
  test.each(REFUSED)('a job with %s %j is refused there', async (path, value, at = path) => {
    const app = await appWith();
    const response = await app.request('/v1/plans', posted(jobWith(path, value)));
    expect(response.status).toBe(422);
    const { type, errors } = await response.json();
    expect(type).toBe('/problems/bad-field');
    expect(errors).toContainEqual(
      expect.objectContaining({ path: at, expected: expect.stringMatching(/./), example: expect.anything() }),
    );
    expect(app.jobs).toHaveLength(0);
  });

  test.each(TAKEN)('a job with %s %j is taken as it was sent', async (path, value) => {
    const app = await appWith();
    const job = jobWith(path, value);
    expect((await app.request('/v1/plans', posted(job))).status).toBe(200);
    // What would change if an assumption were wrong is planned after the job itself.
    expect(app.jobs[0]).toEqual(job);
  });

  test('a piece may come with what it is made of instead of its mass', async () => {
    const app = await appWith();
    const { massKg: _, ...piece } = EXAMPLE_JOB.piece;
    const build = { glazing: { material: 'glass', thicknessMm: 4 } };
    const response = await app.request('/v1/plans', posted({ ...EXAMPLE_JOB, piece: { ...piece, build } }));
    expect(response.status).toBe(200);
  });

  test('one piece and several at once are refused in a plain sentence', async () => {
    const app = await appWith();
    const job = { ...EXAMPLE_JOB, pieces: [EXAMPLE_JOB.piece], arrange: { as: 'row', gapMm: 75 } };
    const response = await app.request('/v1/plans', posted(job));
    expect(response.status).toBe(422);
    const { errors } = await response.json();
    expect(errors).toContainEqual(
      expect.objectContaining({ path: 'pieces', expected: expect.stringContaining('not both') }),
    );
  });

  test('a refusal names what was looked for, what came and what would do', async () => {
    const app = await appWith();
    const { errors } = await (await app.request('/v1/plans', posted(jobWith('piece.massKg', -3)))).json();
    expect(errors).toEqual([
      {
        path: 'piece.massKg',
        expected: 'a number from 0.01 to 5000 kilograms',
        received: '-3',
        example: 24,
      },
    ]);
  });

  test.each([
    ['infinity', '1e999'],
    ['a number past all sense', '9'.repeat(400)],
    ['minus nothing', '-1e-999'],
  ])('a width of %s is refused', async (_, width) => {
    const app = await appWith();
    const body = JSON.stringify(EXAMPLE_JOB).replace('"widthMm":840', `"widthMm":${width}`);
    expect((await app.request('/v1/plans', posted(body))).status).toBe(422);
  });

  test.each([
    ['__proto__', '{"__proto__":{"piece":{}}}'],
    ['constructor', '{"constructor":{"prototype":{"massKg":1}}}'],
    ['20,000 brackets', '['.repeat(20_000) + ']'.repeat(20_000)],
  ])('a body of %s is refused and touches nothing', async (_, body) => {
    const app = await appWith();
    expect((await app.request('/v1/plans', posted(body))).status).toBe(422);
    expect(Reflect.get({}, 'piece') ?? Reflect.get({}, 'massKg')).toBeUndefined();
  });

  test.each([
    ['marks', { marks: [{ id: 'A', fromLeftMm: 1027, upMm: 1020 }] }, 200],
    ['a fixing', { fixing: { plug: { diameterMm: 8, lengthMm: 50 }, screw: { gauge: 14 } } }, 200],
    ['nothing', {}, 422],
    ['no marks', { marks: [] }, 422],
    ['an empty hand', { fixing: {} }, 422],
    [
      'one mark twice',
      { marks: [0, 9].map((off) => ({ id: 'A', fromLeftMm: 1027 + off, upMm: 1020 })) },
      422,
    ],
    ['a mark without its height', { marks: [{ id: 'A', fromLeftMm: 1027 }] }, 422],
    ['a fastener of no such name', { fixing: { fastener: 'chewing-gum' } }, 422],
  ])('a check of %s is answered with its status', async (_, measured, status) => {
    const app = await appWith();
    const response = await app.request('/v1/checks', posted({ job: EXAMPLE_JOB, measured }));
    expect(response.status).toBe(status);
  });
}
