import type { JobSoFar } from '../../../core/job.ts';
import { sum } from '../../../core/quantity.ts';
import type { Finish } from '../../../core/wall/wall.ts';
import { type Found, fact, facts } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';

export type Kind = Exclude<Finish['kind'], 'unknown'>;

/** A finish as the part of the job it is. */
export const value = (kind: Kind, thicknessMm?: NonNullable<Finish['thicknessMm']>): JobSoFar => ({
  wall: { finish: thicknessMm === undefined ? { kind } : { kind, thicknessMm } },
});

const COAT =
  '(?:tiles?|tiled|render|plaster|skim|adhesive|grout|glue|cement|mortar|backing coat|scratch coat|bed)';
const COATS = new RegExp(
  `(?:\\b(${COAT})(?: (?:is|are|about|of|,|thick))* )?<(\\d+)>(?: (?:thick|of|a|cement|hard|wall|ceramic|porcelain|stone|marble))*(?: (${COAT}))? (?:on|over|plus|and|with|\\+|,)(?: (?:a|the|about|top of|of))* <(\\d+)>(?: (?:thick|of|a|cement|hard|tile|sand and cement|bed of))*(?: (${COAT}))`,
);

/** "Tile 10, adhesive 5". */
const COATS_TURNED = new RegExp(`\\b(${COAT}) <(\\d+)>()(?: (?:,|and|on|plus))* (${COAT}) <(\\d+)>`);

/** "8mm tiles on 5mm adhesive", "10 mm tile over 12 mm render": the outer coat names it. */
export function readCoats(outline: Outline): Found | null {
  const turned = COATS_TURNED.exec(outline.text);
  const match = turned ?? COATS.exec(outline.text);
  const outer = match?.[1] ?? match?.[3];
  const [second, inner] = turned === null ? [match?.[4], match?.[5]] : [turned[5], turned[4]];
  const one = match === null ? null : lengthOf(outline, match[2], 'wall.finish');
  const two = match === null ? null : lengthOf(outline, second, 'wall.finish');
  if (match === null || outer === undefined || one?.readings.length !== 1 || two?.readings.length !== 1)
    return null;
  if (one.negative || two.negative) return null;
  const words = `${outer} ${inner ?? ''}`;
  const kind = /tile/.test(words) ? 'tile' : /render/.test(words) ? 'render' : 'plaster';
  return facts(
    without(outline, match),
    fact('wall.finish', value(kind, sum(one.valueMm, two.valueMm)), outline.said),
  );
}
