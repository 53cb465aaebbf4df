import type { AccessoryKind } from '../../../core/job.ts';

/** What may be on a wall, each region's words for it (trade.md 10.2); longer names first. */
const KINDS: [AccessoryKind, string][] = [
  [
    'consumer-unit',
    'consumer units?|fuse ?box(?:es)?|switch ?boards?|meter box(?:es)?|breaker panels?|distribution boards?',
  ],
  [
    'switch',
    '(?:light |dimmer |fan |double |single |isolator |shower |cooker )*switch(?:es)?|light swi?tch(?:es)?|dimmers?|isolators?|pull cords?',
  ],
  [
    'socket',
    '(?:double |single |twin |plug |power |wall |electric(?:al)? |tv |aerial |data |phone |usb |shaver )*(?:sockets?|powerpoints?|outlets?|receptacles?|points?)|fused spurs?|spurs?|plugs?',
  ],
  ['thermostat', 'thermostats?|room stats?|stats?'],
  ['boiler', 'boilers?|water heaters?|hot water (?:unit|cylinder|tank)s?'],
  ['heater', '(?:wall |panel |bathroom |fan |storage )*heaters?|(?:heated )?towel rails?'],
  ['light', '(?:wall |picture |reading |strip )*(?:lights?|lamps?)|sconces?|down ?lights?'],
  ['blank-plate', 'blank(?:ing)? plates?|cover plates?|junction boxe?s?|blanks?'],
  ['toilet', 'toilets?|cisterns?|wcs?'],
  ['shower', 'showers?'],
  ['basin', 'basins?|sinks?|vanity|vanities'],
  ['tap', 'taps?|faucets?|stop ?cocks?'],
  ['radiator', 'radiators?|rads?'],
  ['gas', 'gas (?:meters?|pipes?|fires?|taps?|bayonets?|points?|outlets?|hobs?)|gas'],
  ['pipe', '(?:water |copper |waste |soil )*pipes?|pipe ?work'],
  ['cable', 'cables?|conduits?|trunking|wires?'],
  ['window', 'windows?'],
  ['door', 'doors?|doorways?'],
];

export const ACCESSORY = new RegExp(
  `\\b(?:${KINDS.map(([, words]) => `(${words})`).join('|')})\\b|\\b(another(?: one)?|the other one|second one)\\b`,
  'g',
);

/** The kind that a match of ACCESSORY names; `like` stands for "another". */
export function kindOf(match: RegExpMatchArray, like: AccessoryKind | null): AccessoryKind | null {
  const at = KINDS.findIndex((_, index) => match[index + 1] !== undefined);
  return KINDS[at]?.[0] ?? like;
}

/** Plain names, for asking where one is. */
export function nameOf(kind: AccessoryKind): string {
  return kind.replaceAll('-', ' ');
}

/** Words that cannot be about anything but a wall's fittings, whatever was asked. */
export const UNASKED =
  /\b(?:sockets?|powerpoints?|outlets?|receptacles?|switch(?:es)?|thermostats?|consumer unit|radiators?)\b/;
