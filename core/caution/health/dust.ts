import type { Country } from '../../job.ts';
import { type Sourced, sourced } from '../../sources.ts';
import type { BaseMaterial } from '../../wall/wall.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';
import { baseKind, drills } from '../wall/base-kinds.ts';

/** Respirable crystalline silica in the air at work, mg/m3 over 8 hours. */
export const SILICA_LIMITS: Partial<Record<Country, Sourced<number>>> = {
  US: sourced(0.05, '29CFR1926.1153', '(d)(1), permissible limit', 'read-secondary'),
  AU: sourced(0.05, 'AU-silica:2024', 'exposure standard since 1 July 2020', 'read'),
  UK: sourced(0.1, 'EH40:2020', 'workplace exposure limit', 'read-secondary'),
};

const TABLE_1 = sourced(0, '29CFR1926.1153', 'Table 1 row (vii): handheld drills', 'read-secondary');
const PROCESSING = sourced(0, 'AU-silica:2024', 'processing of silica substances', 'read-secondary');
const MASK = sourced(0, 'our-choice', 'safety 4: a mask where there is no extraction', 'our-choice');
const EYES = sourced(0, '29CFR1926.102', 'eye protection', 'from-memory');

const dusty = (facts: Facts): boolean =>
  facts.whole && drills(facts) && (baseKind(facts)?.silica === true || hardFinish(facts));

const hardFinish = ({ job }: Facts): boolean =>
  job.wall?.finish?.kind === 'tile' || job.wall?.finish?.kind === 'render';

const DUST: Partial<Record<BaseMaterial, string>> = {
  'clay-brick': 'Brick',
  'concrete-block': 'Block',
  concrete: 'Concrete',
  'aerated-concrete': 'Block',
  'natural-stone': 'Stone',
  'plasterboard-on-dabs': 'Block',
  'lath-and-plaster': 'Old sand plaster',
  'fibre-cement-on-studs': 'Cement sheet',
};

/** "Brick", "Tile and brick"; a tiled board has only the tile's. */
function dustOf({ job: { wall } }: Facts): string {
  const base = wall && DUST[wall.baseMaterial ?? 'unknown'];
  if (wall?.finish?.kind !== 'tile') return base ?? 'Render';
  return base === undefined ? 'Tile' : `Tile and ${base.toLowerCase()}`;
}

const hammers = ({ fixing }: Facts): boolean =>
  fixing?.ok === true && fixing.fixing.bit.action === 'hammer-after-finish';

const extracted = ({ job }: Facts): boolean => job.crew?.dustExtraction === true;

/** The limit where one is known, so that the crew can see how little is too much. */
function limitText({ job }: Facts): string {
  const country = job.building?.country;
  const limit = country && country !== 'unknown' ? SILICA_LIMITS[country] : undefined;
  return limit ? ` The limit at work is ${limit.value} mg in a cubic metre of air.` : '';
}

/** Dust, eyes, ears. */
export const dustRules: readonly Rule[] = [
  {
    id: 'C-SI-1',
    severity: 'warn',
    whileDrilling: true,
    applies: (facts) => dusty(facts) && !extracted(facts),
    text: (facts) =>
      `${dustOf(facts)} dust harms lungs. Use a shroud and a vacuum with a fine filter at the hole. If you can't, wear a fitted P2, FFP3 or N95 mask, keep others out, shut the door, and don't blow the hole out.${limitText(facts)}`,
    basis: from(TABLE_1, MASK),
  },
  {
    id: 'C-SI-2',
    severity: 'note',
    whileDrilling: true,
    applies: (facts) => dusty(facts) && extracted(facts),
    text: 'Dust: vacuum the hole through its full depth; do not blow it out.',
    basis: from(TABLE_1),
  },
  {
    id: 'C-SI-4',
    severity: 'warn',
    whileDrilling: true,
    applies: (facts) => dusty(facts) && facts.job.building?.country === 'AU',
    text: 'In Australia drilling this counts as processing silica: keep the dust down at the tool or wet, and wear a fitted mask if any dust is left.',
    basis: from(PROCESSING),
  },
  {
    id: 'C-PP-1',
    severity: 'note',
    whileDrilling: true,
    applies: (facts) => facts.whole && drills(facts),
    text: (facts) =>
      hammers(facts) ? 'Glasses on, and ear protection: this is hammer drilling.' : 'Glasses on.',
    basis: from(EYES),
  },
];
