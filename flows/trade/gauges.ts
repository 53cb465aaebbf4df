import { GAUGES, type Gauge, nominalOf, WOOD_SCREW_ROOT } from '../../core/fixing/steel/screw-sizes.ts';
import { LEAD_HOLE, pilotHole } from '../../core/fixing/timber/timber-species.ts';
import { MM_PER_INCH } from '../../core/quantity.ts';
import { tidy } from '../wording/length.ts';
import { by, figureBefore, type TradeAnswer } from './trade-answer.ts';

const GAUGE = 'gauge|guage|gage|ga|g';
/** Gauges outside these the formula of the standard does not cover. */
const COVERED = { least: 6, most: 24 };

const gaugeIn = (text: string): Gauge | undefined =>
  GAUGES.find((each) => each === figureBefore(text, `(?:${GAUGE})\\b`));

function size(text: string): string | null {
  const gauge = figureBefore(text, `(?:${GAUGE})\\b`);
  if (gauge === null || gauge < COVERED.least || gauge > COVERED.most) return null;
  const { nominalMm } = nominalOf(gauge);
  return `${gauge} gauge is ${tidy(nominalMm, 2)} mm, ${tidy(nominalMm / MM_PER_INCH, 3)} in. ${by({ source: 'ASME-B18.6.1', at: 'NDS-2018 Appendix L, Table L3', standing: 'read' })}`;
}

function pilot(text: string): string | null {
  const gauge = gaugeIn(text);
  if (gauge === undefined) return null;
  const root = WOOD_SCREW_ROOT.value[gauge];
  const soft = tidy(pilotHole(root, 'softwood'), 1);
  const hard = tidy(pilotHole(root, 'hardwood'), 1);
  return `Pilot for a ${gauge} gauge: ${soft} mm in softwood such as pine, ${hard} mm in hardwood. ${by(LEAD_HOLE)}`;
}

/** "3/16 in mm": exact by definition. */
function fraction(text: string): string | null {
  const [, whole, top, bottom] = /(?:(\d+)[\s-]+)?(\d+)\s*\/\s*(\d+)/.exec(text) ?? [];
  if (top === undefined || bottom === undefined || Number(bottom) === 0) return null;
  const inches = Number(whole ?? 0) + Number(top) / Number(bottom);
  const name = `${whole === undefined ? '' : `${whole}-`}${top}/${bottom}`;
  return `${name} in is ${tidy(inches * MM_PER_INCH, 2)} mm, exactly ${MM_PER_INCH} to the inch. A plug sold in mm wants its own bit.`;
}

export const GAUGE_ANSWERS: readonly TradeAnswer[] = [
  { asks: [/\b(?:pilot|lead|pre-?drill)/, /\d|ten|twelve|fourteen|eight|six/], answer: pilot },
  {
    asks: [
      new RegExp(`\\b(?:${GAUGE})\\b`),
      /\b(?:mm|mil|millimet|inch|inches|in|size|thick|diameter|big)\b/,
    ],
    answer: size,
  },
  { asks: [/\d\s*\/\s*\d/, /\b(?:mm|mil|metric|millimet)/], answer: fraction },
];
