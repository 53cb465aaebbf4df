import type { AccessoryKind } from '../../../core/wall/wall.ts';

const ELECTRIC =
  '(?:double|dbl|single|sgl|twin|triple|dual|gang|plug|power|wall|electric|electrical|mains|usb|shaver|cooker|spare|floor)';
const WEAK =
  '(?:tv|television|telly|aerial|antenna|data|phone|telephone|network|ethernet|internet|coax|satellite|hdmi)';

/** What may be on a wall, each region's words for it (trade.md 10.2); longer names first. */
const KINDS: [AccessoryKind, string][] = [
  [
    'consumer-unit',
    'consumer units?|fuse ?box(?:es)?|fuse ?boards?|switch ?boards?|(?:electric(?:ity|al)? |power )?meter(?: box(?:es)?)?(?!s)|(?:breaker|electric(?:al)?) (?:panels?|box(?:es)?)|distribution boards?',
  ],
  [
    'switch',
    `(?:(?:light|dimmer|fan|double|single|twin|triple|two|three|gang|way|isolator|isolating|shower|cooker|heater|immersion|boiler|fused|pull|cord|wall|rocker|toggle) )*switch(?:es)?|dimmers?|isolators?|pull ?cords?`,
  ],
  ['thermostat', 'thermostats?|room stats?|stats?'],
  [
    'socket',
    `(?:${ELECTRIC} |${WEAK} )*(?:sockets?|powerpoints?|outlets?|receptacles?|jacks?|points)|(?:${ELECTRIC} |${WEAK} )+point|(?:switched |fused )*spurs?|plugs?(?! (?:and|&) screw)|(?:tv )?(?:aerials?|antennas?)|ethernet|(?:doubles?|dbls?|singles?|twins?)(?! (?:light|gang|way|dimmer|switch|socket|point|plug|powerpoint|outlet|glaz|brick|layer|door|radiator|window|skin|bed|room|board|thick|wall|height))`,
  ],
  ['boiler', 'boilers?|water heaters?|hot water (?:unit|cylinder|tank)s?'],
  [
    'heater',
    '(?:(?:wall|panel|bathroom|fan|storage|electric|convector|infrared|night storage) )*(?:heaters?|fires?(?! ?place)(?! (?:door|alarm)))|(?:heated )?towel (?:rails?|radiators?|warmers?)|air ?con(?:ditioners?|ditioning)?(?: units?)?|split systems?',
  ],
  [
    'light',
    '(?:(?:wall|picture|reading|strip|vanity|mirror|emergency|outside) )*(?:lights?|lamps?|uplighters?)|sconces?',
  ],
  [
    'blank-plate',
    'blank(?:ing|ed)? (?:plates?|off)|(?:blank|cover|face) ?plates?|junction box(?:es)?|blanks|blank (?:box|panel)|(?:alarm|burglar|smoke|heat) (?:panels?|keypads?|sensors?|detectors?|box(?:es)?|alarms?)|alarms?|keypads?|intercoms?|entry ?phones?|door ?(?:bells?|chimes?)|(?:bell|chime)s?(?: (?:box|push|unit))?|sensors?|(?:extractor |bathroom )?(?:extractors?|fans?)|speakers?|cameras?',
  ],
  ['toilet', 'toilets?|cisterns?|wcs?|urinals?|bidets?|flush plates?'],
  ['shower', '(?:electric )?showers?(?: (?:unit|valve|mixer|head)s?)?'],
  ['basin', '(?:wash ?|hand ?)?basins?|sinks?|vanity(?: units?)?|vanities'],
  ['tap', '(?:outside |garden |bath |hose )*taps?|faucets?|stop ?cocks?|hose bibs?'],
  ['radiator', 'radiators?|rads?'],
  ['gas', 'gas (?:meters?|pipes?|fires?|taps?|bayonets?|points?|outlets?|hobs?|lines?|heaters?)|gas'],
  [
    'pipe',
    '(?:(?:water|copper|waste|soil|drain|heating|boxed|in|hot|cold|down|boxing|vertical|horizontal) )*pipes?(?: ?(?:boxing|box(?:es)?|chase|run)| stack)?|pipe ?work|soil stacks?|(?:boxed in|box(?:ed)?)[ -]?(?:in )?pipe ?work|boxings?|boxing[ -]in|riser(?: pipe)?s?',
  ],
  [
    'cable',
    '(?:electric(?:al)? |power |tv |data |armoured )*(?:cables?|conduits?|trunking|wires?|wiring|flex)',
  ],
  ['window', 'windows?'],
  ['door', 'door ?ways?|(?<!next )doors?'],
];

/** Every fitting named. Lights of the ceiling and lamps that stand on something are not on the wall. */
export const NAMES = new RegExp(`\\b(?:${KINDS.map(([, words]) => `(${words})`).join('|')})(?![a-z])`, 'g');
export const NOT_ON_THE_WALL =
  /\b(?:ceiling (?:lights?|roses?|fans?|lamps?|spots?)|down ?lights?|(?:floor|table|bedside|desk|standard) lamps?|bare wires?|hanging wires?)\b/g;

/** The kind that a match of NAMES is. */
export function kindOf(match: RegExpMatchArray): AccessoryKind {
  const at = KINDS.findIndex((_, index) => match[index + 1] !== undefined);
  return KINDS[at]?.[0] ?? 'blank-plate';
}

/** Plain names, for asking where one is. */
export function nameOf(kind: AccessoryKind): string {
  return kind.replaceAll('-', ' ');
}

/** Wider than a plate, so that "1000 wide" and "from 2000 to 2600" are said of it. */
export const HAS_A_WIDTH: ReadonlySet<AccessoryKind> = new Set([
  'window',
  'door',
  'radiator',
  'boiler',
  'heater',
  'basin',
  'toilet',
  'shower',
  'consumer-unit',
  'pipe',
  'gas',
]);
/** "Pipes" run together as one; of these a plural is at least two places. */
export const COUNTED_APART: ReadonlySet<AccessoryKind> = new Set([
  'socket',
  'switch',
  'light',
  'radiator',
  'window',
  'door',
  'thermostat',
  'heater',
  'blank-plate',
]);

/** Words that cannot be about anything but a wall's fittings, whatever was asked. */
export const UNASKED =
  /\b(?:sockets?|accessories|electrics|services|powerpoints?|outlets?|receptacles?|switch(?:es)?|thermostats?|consumer unit|fuse ?(?:box|board)|radiators?|dimmers?|wall lights?|blank(?:ing)? plates?)\b/;
