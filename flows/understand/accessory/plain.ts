import { markersIn } from './face.ts';
import type { Lengths } from './units.ts';
import { NOT_ON_THE_WALL } from './words.ts';

/** The widest pipe on a wall, so that "22 mm pipe" says nothing of where it is; our choice. In millimetres. */
const WIDEST_PIPE = 160;
const FITTING =
  '(?:(?:more|double|dbl|single|sgl|twin|triple|big|small|old|new|white|metal|light|dimmer|wall|plug|power|tv|data|phone|blank|blanking) )*(?:sockets?|switch(?:es)?|powerpoints?|outlets?|points?|lights?|plates?|radiators?|windows?|doors?|thermostats?|heaters?|spurs?|taps?|pipes?|doubles?|dbls?|singles?|twins?)';
const COUNT = new RegExp(`<(\\d+)>(?: x)?(?= ${FITTING}\\b)`, 'g');
const COUNT_AFTER = /\b(sockets?|switch(?:es)?|powerpoints?|outlets?|points?|lights?) x <(\d+)>(?= |$)/g;
const BORE =
  /<(\d+)>(?= (?:(?:copper|plastic|waste|soil|water|heating|gas|steel|black) )*(?:pipes?|cables?|conduits?|trunking)\b)/g;

/** The words with what is no place taken out: counts as plain digits, gangs, bores, lamps that stand on the floor. */
export function plainWords(text: string, small: (n: number) => number | null, lengths: Lengths): string {
  const numbered = text.includes('(') ? text : text.replace(/(?:^| )(?:<\d+>|\d+|[a-h]) \)(?= )/g, ' ;');
  return numbered
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

const OF_A_PLACE =
  /^(?:<\d+>|[^a-z<]|up|along|across|from|off|of|the|at|is|its|it|on|in|and|then|high|floor|ground|deck|left|right|hand|end|corner|side|edge|about|around|roughly|approx|maybe|say|ish|over|above|middle|centre|measured|to|that|thats|one|there|mm|cm|by|both|all|each|yes|yeah|ok|sorry|a|an|bit|just|as|i|face|level|ffl|affl?|away|back|height|distance)$/;

/** Nothing but figures and which way they go: said to "where is the switch", it is the switch's. */
export function tellsOnlyAPlace(text: string): boolean {
  const markers = markersIn(text);
  const rest = markers.reduceRight((words, { at, end }) => `${words.slice(0, at)} ${words.slice(end)}`, text);
  const words = rest
    .replace(/\b(left|right)( hand)? wall\b/g, '$1')
    .split(' ')
    .filter(Boolean);
  return (
    (markers.length > 0 || words.some((word) => word.startsWith('<'))) &&
    words.every((word) => OF_A_PLACE.test(word))
  );
}
