import type { Lengths } from './accessory-units.ts';
import { NOT_ON_THE_WALL } from './accessory-words.ts';

/** The widest pipe on a wall, so that "22 mm pipe" says nothing of where it is; our choice. In millimetres. */
const WIDEST_PIPE = 160;
const FITTING =
  '(?:(?:more|double|single|twin|triple|big|small|old|new|white|metal|light|dimmer|wall|plug|power|tv|data|phone|blank|blanking) )*(?:sockets?|switch(?:es)?|powerpoints?|outlets?|points?|lights?|plates?|radiators?|windows?|doors?|thermostats?|heaters?|spurs?|taps?|pipes?)';
const COUNT = new RegExp(`<(\\d+)>(?: x)?(?= ${FITTING}\\b)`, 'g');
const COUNT_AFTER = /\b(sockets?|switch(?:es)?|powerpoints?|outlets?|points?|lights?) x <(\d+)>(?= |$)/g;
const BORE =
  /<(\d+)>(?= (?:(?:copper|plastic|waste|soil|water|heating|gas|steel|black) )*(?:pipes?|cables?|conduits?|trunking)\b)/g;

/** The words with what is no place taken out: counts as plain digits, gangs, bores, lamps that stand on the floor. */
export function plainWords(text: string, small: (n: number) => number | null, lengths: Lengths): string {
  return text
    .replace(NOT_ON_THE_WALL, ' ')
    .replace(/(?:<\d+>|\b[1-9]|\b(?:one|two|three|four)) (?:gangs?|ways?|poles?|pins?)\b/g, ' ')
    .replace(COUNT, (said, n: string) => `${small(Number(n)) ?? said}`)
    .replace(COUNT_AFTER, (said, name: string, n: string) =>
      small(Number(n)) === null ? said : `${name} x ${small(Number(n))}`,
    )
    .replace(BORE, (said, n: string) => ((lengths(Number(n)) ?? WIDEST_PIPE + 1) <= WIDEST_PIPE ? ' ' : said))
    .replace(/\s+/g, ' ')
    .trim();
}
