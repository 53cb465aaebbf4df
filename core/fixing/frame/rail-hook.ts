import { kg, mm, STANDARD_GRAVITY, weightOf } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import { envelope, linear, type WorstCheck, worse } from '../acting/worst-check.ts';
import type { BoardPlace } from '../board/board-place.ts';
import { type Candidate, governingOf } from '../candidate.ts';
import { pickedWhys } from '../told/picked-whys.ts';
import { utilisationWhy } from '../told/why-it-holds.ts';

/** Line 1 of the trade's walk 1.11: a sound rail fixed to grounds. */
const RAIL = sourced(
  { hookKg: kg(10), pieceKg: kg(20) },
  'common-practice',
  'picture rail, sound and fixed to grounds: 10 a hook, 20 a piece',
  'common-practice',
);

/** A hook over a picture rail above each hanger, a chain or wire down to it: no hole. Only where the rail is said to be sound. */
export function railHook({ job, load, setOut }: BoardPlace): Candidate[] {
  const { by } = job.piece.hanging;
  if (job.wall.pictureRail !== 'sound' || (by !== 'rings' && by !== 'cord')) return [];
  if (!(load.massKg <= RAIL.value.pieceKg)) return [];
  const hook = weightOf(RAIL.value.hookKg);
  let worst: WorstCheck | null = null;
  for (const point of load.actions.perMark) {
    // A chain carries only downward: the piece leans on the wall below, and no screw resists the pull outward.
    worst = worse(worst, {
      mode: 'anchor-cap',
      resistanceN: hook,
      utilisation: linear({ shearN: point.shearN, tensionN: point.tensionN }, hook, hook),
      basis: [basisOf(RAIL)],
      noSource: true,
      acting: point,
      allowed: { shearN: hook, tensionN: hook },
    });
  }
  if (worst === null) return [];
  const held = worst;
  const point = envelope(load.actions.perMark);
  return [
    {
      ok: true,
      fastener: 'picture-rail-hook',
      name: 'picture-rail hook and chain',
      point,
      worst: held,
      fixing: () => ({
        fastener: 'picture-rail-hook',
        count: setOut.marks.length,
        bit: { kind: 'none', action: 'none', diameterMm: mm(0), depthMm: mm(0) },
        note: 'A hook over the rail straight above each mark, chain or wire in pairs down to the hanger at the mark. First pull down on the rail at each hook with the piece’s own weight: silent and still, or not at all.',
        governing: governingOf(held),
        utilisation: held.utilisation,
      }),
      why: () => [
        {
          of: 'hole',
          formula: 'none: the rail takes the hook',
          inputs: {},
          result: '0 mm',
          basis: [basisOf(RAIL)],
          symbols: '0',
          paths: ['fixing.bit.diameterMm', 'fixing.bit.depthMm'],
        },
        ...pickedWhys({ marks: setOut.marks.length, count: setOut.marks.length }, [basisOf(RAIL)]),
        ...utilisationWhy(held, point, {
          inputs: { capKg: RAIL.value.hookKg, gravity: STANDARD_GRAVITY },
          symbols: 'capKg x gravity',
        }),
      ],
      advice: [],
    },
  ];
}
