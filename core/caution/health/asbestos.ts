import type { Country } from '../../job.ts';
import { basisOf } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { once } from '../once.ts';
import type { Rule } from '../rule.ts';
import { baseKind } from '../wall/base-kinds.ts';
import {
  ASBESTOS_LINES,
  type AsbestosFinding,
  asbestosFinding,
  lineFor,
  type Suspect,
} from './asbestos-lines.ts';

const CLEARS =
  'A laboratory result that says it is clear (a competent person takes the sample), or a way without holes: a picture rail, a wall of another material, or standing the piece on the floor.';

/** Old tiles on a frame often stand on a sheet that is not what the rest of the room is lined with. */
const tiledOnFrame = ({ job: { wall } }: Facts): boolean =>
  wall?.finish?.kind === 'tile' && wall.baseMaterial?.endsWith('-studs') === true;

/** Every suspect thing in this wall. A coating nobody has named is not by itself suspect. */
function suspectsOf(facts: Facts): Suspect[] {
  const { baseMaterial, coating } = facts.job.wall ?? {};
  const suspects: Suspect[] = [];
  if (baseMaterial === 'fibre-cement-on-studs') suspects.push('fibre-cement');
  if (coating === 'textured') suspects.push('textured-coating');
  if (baseKind(facts)?.plasterboard) suspects.push('joint-compound-plasterboard');
  if (tiledOnFrame(facts)) suspects.push('tile-backing');
  return suspects.length > 0 ? suspects : ['not-suspect'];
}

const RANK = { stop: 2, warn: 1, note: 0 } as const;

const worst = (found: readonly (AsbestosFinding | null)[]): AsbestosFinding | null =>
  found.reduce((a, b) => (a === null || (b !== null && RANK[b.severity] > RANK[a.severity]) ? b : a), null);

/** While the country is not asked yet, only what stops in every country is certain: the mildest of all. */
const findingOf = once((facts): AsbestosFinding | null => {
  const country = facts.heard(facts.job.building?.country);
  const year = facts.heard(facts.job.building?.yearBuilt);
  if (year === 'not-asked') return null;
  const testedClear = facts.job.wall?.asbestos === 'tested-clear';
  const suspects = suspectsOf(facts);
  const inCountry = (each: Country | 'unknown'): AsbestosFinding | null =>
    worst(
      suspects.map((material) =>
        asbestosFinding({ country: each, year: year === 'unknown' ? null : year, material, testedClear }),
      ),
    );
  if (country !== 'not-asked') return inCountry(country);
  const everywhere = (Object.keys(ASBESTOS_LINES) as Country[]).map(inCountry);
  return everywhere.every((each) => each?.severity === 'stop') ? { id: 'C-AB-1', severity: 'stop' } : null;
});

/** True when no hole may be made at all until a laboratory has spoken. */
export function asbestosStops(facts: Facts): boolean {
  return findingOf(facts)?.severity === 'stop';
}

const is =
  (id: AsbestosFinding['id']) =>
  (facts: Facts): boolean =>
    findingOf(facts)?.id === id;

const isSuspect = (facts: Facts): boolean => !suspectsOf(facts).includes('not-suspect');

function thing(facts: Facts): string {
  const suspects = suspectsOf(facts);
  if (suspects.includes('fibre-cement')) return 'A fibre cement sheet';
  if (suspects.includes('textured-coating')) return 'A textured coating';
  return suspects.includes('tile-backing') ? 'The sheet behind tiles' : 'The filler over board joints';
}

function age(facts: Facts): string {
  const year = facts.job.building?.yearBuilt;
  return typeof year === 'number' ? `of ${year}` : 'of unknown age';
}

/** In doubt although no year says that it is past the line: filler where no line names it, a sheet of no known age. */
function stillOld({ job }: Facts): boolean {
  const { country, yearBuilt } = job.building ?? {};
  return typeof yearBuilt !== 'number' || yearBuilt <= lineFor(country ?? 'unknown').value.likely;
}

function lineText(facts: Facts): string {
  const { country } = facts.job.building ?? {};
  const { doubt } = lineFor(country ?? 'unknown').value;
  return `${country === undefined || country === 'unknown' ? 'With no country given' : `In ${country}`} the last year in doubt is ${doubt}.`;
}

const ours = { source: 'our-choice', at: 'safety 2', standing: 'our-choice' } as const;
const { AU, UK, NZ, US } = ASBESTOS_LINES;
const basis = [...[AU, UK, NZ, US].map(basisOf), basisOf(ours)];

/** Asbestos. Nothing here ever tells how to drill, sand or fix into a suspect material. */
export const asbestosRules: readonly Rule[] = [
  {
    id: 'C-AB-1',
    severity: 'stop',
    applies: is('C-AB-1'),
    text: (facts) =>
      `${thing(facts)} ${age(facts)} can contain asbestos. Don't drill it, pin it or sand it, however small the hole: have it tested first. A picture rail, another wall or the floor needs no hole here.`,
    clears: CLEARS,
    basis,
  },
  {
    id: 'C-AB-2',
    severity: 'stop',
    applies: is('C-AB-2'),
    text: (facts) =>
      `The total ban came at the end of ${ASBESTOS_LINES.AU.value.doubt}, so a fibre cement sheet ${age(facts)} is still in doubt. Test it before anyone makes a hole; a picture rail or another wall needs none.`,
    clears: CLEARS,
    basis: [basisOf(ASBESTOS_LINES.AU), basisOf(ours)],
  },
  {
    id: 'C-AB-3',
    severity: 'warn',
    applies: is('C-AB-3'),
    text: (facts) =>
      stillOld(facts)
        ? `${thing(facts)} ${age(facts)} may hold asbestos; some of that time did. Keep every hole off joints and patches, or have it tested first.`
        : `${thing(facts)} ${age(facts)} is probably clear of asbestos, not certainly. A test is cheap next to the risk.`,
    basis,
  },
  {
    id: 'C-AB-4',
    severity: 'note',
    applies: (facts) => is('C-AB-4')(facts) && isSuspect(facts),
    text: (facts) =>
      typeof facts.job.building?.yearBuilt === 'number'
        ? `Asbestos is unlikely at this age; reused or imported material is the exception. ${lineText(facts)}`
        : 'The year is not known. Plain board is not a suspect sheet, but an old textured coating or old filler at the joints would be: say so if you see any.',
    basis,
  },
  {
    id: 'C-AB-4',
    severity: 'note',
    applies: (facts) =>
      is('C-AB-4')(facts) &&
      !isSuspect(facts) &&
      facts.heard(facts.job.wall?.coating) === 'unknown' &&
      maybeOld(facts),
    text: 'This wall is not on the list of suspect materials. A textured coating of that age would be: say so if there is one, and it changes the answer.',
    basis,
  },
];

function maybeOld({ job }: Facts): boolean {
  const { country, yearBuilt } = job.building ?? {};
  return typeof yearBuilt !== 'number' || yearBuilt <= lineFor(country ?? 'unknown').value.doubt;
}
