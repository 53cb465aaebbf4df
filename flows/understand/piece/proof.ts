import { kg, weightOf } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import { type Found, fact, facts, nothing, refused } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { KG_IN } from '../words/unit.ts';
import { massesIn } from './mass.ts';

/** A pull test is five readings at the least (common practice; NCMA TEK 12-3C asks for five). */
const FEWEST_READINGS = 5;

/** What is printed on a packet or read off a pull tester, when that was asked. */
export function readProof(outline: Outline, { awaiting }: Listening): Found {
  if (awaiting !== 'proof.packetRatingN' && awaiting !== 'proof.pullTestN') return nothing(outline);
  const masses = massesIn(outline.tokens);
  const spoken = masses.findLast((mass) => mass.unit !== null)?.unit ?? null;
  const newtons = masses
    .filter((mass) => !mass.negative && mass.value.gt(0))
    .flatMap((mass) => {
      const unit = mass.unit ?? spoken;
      return unit === null ? [] : [weightOf(kg(mass.value.mul(KG_IN[unit]).valueOf()))];
    });
  const [first] = newtons;
  if (first === undefined) return nothing(outline);
  if (awaiting === 'proof.packetRatingN')
    return facts(outline, fact(awaiting, { proof: { packetRatingN: first } }, outline.said));
  if (newtons.length < FEWEST_READINGS) {
    return refused(outline, {
      question: awaiting,
      because: 'a pull test is five readings or more',
      example: '1.9 2.1 2.3 2.0 2.2 kN',
    });
  }
  return facts(outline, fact(awaiting, { proof: { pullTestN: newtons } }, outline.said));
}
