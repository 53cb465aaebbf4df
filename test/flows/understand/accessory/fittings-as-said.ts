import type { JobSoFar } from '../../../../core/job.ts';
import type { Accessory, Unplaced } from '../../../../core/wall/wall.ts';

/**
 * A wrong face or a lost fitting can put a hole into a cable. Invented sayings, figures worked out by hand. Each row:
 * what is said, the fittings it places ("far switch 400 1200": kind, across, up), those it leaves to be asked for
 * ("?" for what is missing, "either" for a face that is not plain), and how the far side stands.
 */
export type Row = readonly [say: string, told: string, farSide?: 'seen' | 'unknown' | undefined];

export const ONE_FITTING: Row[] = [
  ['1 x dbl socket @ 1200 L, 300 ffl', 'socket 1200 300'],
  ['we got a thermostat 58 inches up and 20 inches over from left', 'thermostat 508 1473.2'],
  ['socket at sixty centimetres along and thirty up', 'socket 600 300'],
  ['socket 450 up. 1.2m from left', 'socket 1200 450'],
  ['switch 1.1 up 0.2 along', 'switch 200 1100'],
  ['socket from the left 600mm from the floor 300mm', 'socket 600 300'],
  ['socket up 300 left 600', 'socket 600 300'],
  ['socket - 600 from left - 300 up', 'socket 600 300'],
  ['x 600 y 300 socket', 'socket 600 300'],
  ['socket 1 foot 6 up and 2 foot in', 'socket 609.6 457.2'],
  ['socket 60 along 30 up, 15 cm wide', 'socket 600 300 wide 150'],
  ['heated towel rail 700 from left, 500 wide, 1100 up', 'heater 700 1100 wide 500'],
  ['spur for the boiler 900 from left 1200 up', 'socket 900 1200'],
  ['socket on the other side of the door 2000 from the left 300 up', 'socket 2000 300'],
  ['There is a socket. It is 600 from the left and 300 up.', 'socket 600 300'],
  ['theres a socket behind the sofa, 600 from the left 300 up', 'socket 600 300'],
  ['socket 600 from the left 300 up', 'socket 600 300'],
  ['socket 300 up 600 from the left', 'socket 600 300'],
  ['300 up 600 along, socket', 'socket 600 300'],
  ['socket at 600/300', 'socket 600 300'],
  ['socket (600, 300)', 'socket 600 300'],
  ['socket at 600,300', 'socket 600 300'],
  ['socket 600 across and 300 high', 'socket 600 300'],
  ['socket 600 in, 300 up', 'socket 600 300'],
  ['socket 600 in 300 up', 'socket 600 300'],
  ['socket x=600 y=300', 'socket 600 300'],
  ['socket: left 600, up 300', 'socket 600 300'],
  ['socket from left 600 up 300', 'socket 600 300'],
  ['socket 600mm from the left hand corner and 30cm off the floor', 'socket 600 300'],
  ['socket 2 foot from the left, 1 foot up', 'socket 609.6 304.8'],
  ['socket 24" from left 12" up', 'socket 609.6 304.8'],
  ['socket 2\' 3" from the left, 18 inches off the floor', 'socket 685.8 457.2'],
  ['socket 0.6 from the left, 0.3 up', 'socket 600 300'],
  ['socket half a metre from the left and 300 up', 'socket 500 300'],
  ['one socket on this side, 1250 from the left and 300 up', 'socket 1250 300'],
  ['double socket, six hundred from the left, three hundred up', 'socket 600 300'],
  ['600 from the left and 300 up theres a socket', 'socket 600 300'],
  ['13 amp socket 600 from left 450 up', 'socket 600 450'],
  ['2 gang switch 150 from left 1200 up', 'switch 150 1200'],
  ['double switch 200 from the left 1200 up', 'switch 200 1200'],
  ['dimmer 200 from the left 1200 up', 'switch 200 1200'],
  ['tv point 1500 from left 1300 up', 'socket 1500 1300'],
  ['aerial 1500 from left 300 up', 'socket 1500 300'],
  ['phone point 1500 from left 300 up', 'socket 1500 300'],
  ['data outlet 1500 from left 300 up', 'socket 1500 300'],
  ['fused spur 900 from left 450 up', 'socket 900 450'],
  ['room stat 300 from left 1500 up', 'thermostat 300 1500'],
  ['fuse box 400 from left 1800 up', 'consumer-unit 400 1800'],
  ['gas fire, 1500 from left, 300 up', 'gas 1500 300'],
  ['towel rail 700 from left 1100 up', 'heater 700 1100'],
  ['picture light 1500 from left 2000 up', 'light 1500 2000'],
  ['blanking plate 800 from left 1200 up', 'blank-plate 800 1200'],
  ['alarm keypad 300 from left 1400 up', 'blank-plate 300 1400'],
  ['stopcock 200 from left 150 up', 'tap 200 150'],
  ['cistern 900 from left 800 up', 'toilet 900 800'],
  ['pipe boxing 2900 from the left, 300 up', 'pipe 2900 300'],
  ['22mm pipe 400 from left 100 up', 'pipe 400 100'],
  ['pipe runs floor to ceiling 400 from the left', 'pipe 400 45'],
  ['nothing but a socket 600 from the left 300 up', 'socket 600 300'],
  ['just the one socket 600 from the left 300 up', 'socket 600 300'],
  ['no switches, one socket 600 from the left 300 up', 'socket 600 300'],
  ['ceiling light and a socket 600 from the left 300 up', 'socket 600 300'],
  ['socket 600 from the left, 300 up, mirror is 800 x 1200, bottom 140 above the floor', 'socket 600 300'],
];

export const SEVERAL: Row[] = [
  ['1) socket 600 from left 300 up 2) switch 200 from left 1200 up', 'socket 600 300 | switch 200 1200'],
  ['a) socket 600/300 b) switch 200/1200', 'socket 600 300 | switch 200 1200'],
  ['two doubles, 400 and 1800 along, 300 up', 'socket 400 300 | socket 1800 300'],
  ['a single socket 600 along and a double 1800 along, both 450 up', 'socket 600 450 | socket 1800 450'],
  [
    'tv socket 1500/1400, ethernet 1600/1400, double 1700/1400 all this side',
    'socket 1500 1400 | socket 1600 1400 | socket 1700 1400',
  ],
  ['a pair of sockets 600 and 1800 from the left, 300 up', 'socket 600 300 | socket 1800 300'],
  ['600 along 300 up socket, 200 along 1200 up switch', 'socket 600 300 | switch 200 1200'],
  [
    '600/300 double socket, 200/1200 light switch, nothing other side',
    'socket 600 300 | switch 200 1200',
    'seen',
  ],
  [
    'socket 600 left 300 up, switch 1200 up 200 left, radiator 1500 left 350 up 1000 wide',
    'socket 600 300 | switch 200 1200 | radiator 1500 350 wide 1000',
  ],
  [
    'two sockets, 300 up, one at 500 and one at 2200 from the left. other side clear',
    'socket 500 300 | socket 2200 300',
    'seen',
  ],
  ['two sockets, 400 and 2200 from the left, both 300 up', 'socket 400 300 | socket 2200 300'],
  ['sockets at 500 and 2200 from the left, both 300 up', 'socket 500 300 | socket 2200 300'],
  ['2 sockets 300 up at 400 and 2200', 'socket 400 300 | socket 2200 300'],
  [
    'two sockets, one 500 from the left 300 up, the other 2200 from the left 450 up',
    'socket 500 300 | socket 2200 450',
  ],
  ['socket at 600 and another at 2200, both 300 up', 'socket 600 300 | socket 2200 300'],
  [
    'three switches, 300, 1100 and 1900 along, all 1200 up',
    'switch 300 1200 | switch 1100 1200 | switch 1900 1200',
  ],
  [
    'three double sockets 300 up, 400, 1600 and 2800 from the left',
    'socket 400 300 | socket 1600 300 | socket 2800 300',
  ],
  ['sockets at 500, 1500 and 2500, 300 up', 'socket 500 300 | socket 1500 300 | socket 2500 300'],
  ['switches at 400/1200 and 900/1200', 'switch 400 1200 | switch 900 1200'],
  ['double socket x 2, 600 and 1800 from left, 300 up', 'socket 600 300 | socket 1800 300'],
  ['1 x socket 600 from left 300 up, 1 x switch 200 from left 1200 up', 'socket 600 300 | switch 200 1200'],
  ['- socket 600 from left 300 up\n- switch 200 from left 1200 up', 'socket 600 300 | switch 200 1200'],
  ['socket 600 from left 300 up\nswitch 200 from left 1200 up', 'socket 600 300 | switch 200 1200'],
  [
    'socket 600/300, switch 200/1200, thermostat 400/1500',
    'socket 600 300 | switch 200 1200 | thermostat 400 1500',
  ],
  ['socket 600 from left 300 up; 1200 up a switch 900 from left', 'socket 600 300 | switch 900 1200'],
  ['at 600/300 a socket, at 200/1200 a switch', 'socket 600 300 | switch 200 1200'],
  [
    '600 from the left and 300 up theres a socket, and at 200 from the left 1200 up a switch',
    'socket 600 300 | switch 200 1200',
  ],
  [
    'double socket 600 from left 300 high and a wall light 1400 from the left 1800 up',
    'socket 600 300 | light 1400 1800',
  ],
  [
    'socket and a switch, the switch is 1200 up 400 from the left, the socket is 300 up 600 from the left',
    'switch 400 1200 | socket 600 300',
  ],
  [
    '1 gang switch 1200 up 150 from left, 2 gang socket 450 up 900 from left',
    'switch 150 1200 | socket 900 450',
  ],
];

export const FACES: Row[] = [
  ['Dbl GPO 350mm off left wall, 300mm AFFL. Nil other side.', 'socket 350 300', 'seen'],
  ['socket 500mm from left, 450 up. Other side is outside.', 'socket 500 450', 'unknown'],
  [
    'on my side a socket 600/300, on theirs a switch 400/1200',
    'socket 600 300 | far switch 400 1200',
    'seen',
  ],
  ['front: nothing. back: switch at 300,1100', 'far switch 300 1100', 'seen'],
  ['near: socket 600/300; far: -', 'socket 600 300', 'seen'],
  ['near face: socket 600 x 300. far face: none', 'socket 600 300', 'seen'],
  ['our side: socket 600/300; neighbours side: dont know', 'socket 600 300', 'unknown'],
  [
    'socket 600/300, switch 400/1200, all on the other side',
    'far socket 600 300 | far switch 400 1200',
    'seen',
  ],
  ['socket 600/300; switch 400/1200; both other side', 'far socket 600 300 | far switch 400 1200', 'seen'],
  ['light switch, but its on the other side, 1200 up and 300 from the left', 'far switch 300 1200', 'seen'],
  [
    'There is a socket. Its on the other side. Its 600 from the left and 300 up.',
    'far socket 600 300',
    'seen',
  ],
  ['Switch (other side): 400mm from left, 1200mm up', 'far switch 400 1200', 'seen'],
  [
    'this side - socket 600 along 300 up. far side - switch 400 along 1200 up',
    'socket 600 300 | far switch 400 1200',
    'seen',
  ],
  [
    'switch 400/1200 (thats the other side), socket 600/300 this side',
    'far switch 400 1200 | socket 600 300',
    'seen',
  ],
  [
    'socket 600/300, no switches on this side, a light on the other side 1500/1800',
    'socket 600 300 | far light 1500 1800',
    'seen',
  ],
  [
    'socket 600 along, 300 up and nothing else on this side; other side has two sockets at 500 and 900 along, 300 up',
    'socket 600 300 | far socket 500 300 | far socket 900 300',
    'seen',
  ],
  ['other side nothing\n- this side socket 600 from left 300 up', 'socket 600 300', 'seen'],
  ['gpo 300 up 600 from left this side, nothin other side', 'socket 600 300', 'seen'],
  ['gpo 300 up 600 from left this side nothin other side', 'socket 600 300', 'seen'],
  ['one double socket 400 from the left 300 up, nothing behind', 'socket 400 300', 'seen'],
  ["socket 400 from the left 300 up, other side's clear", 'socket 400 300', 'seen'],
  ['socket 600 along 300 up here, nothing behind the wall', 'socket 600 300', 'seen'],
  ["socket 900 from the left 300 up, don't know about the other side", 'socket 900 300', 'unknown'],
  ['socket 900 from the left 300 up, cant get into next door', 'socket 900 300', 'unknown'],
  ['switch is 1.2m up and 40cm from the left when im in the hall', 'far switch 400 1200', 'seen'],
  [
    'socket 600 along 300 up on this face, switch 400 along 1200 up on the far face',
    'socket 600 300 | far switch 400 1200',
    'seen',
  ],
  [
    'this side socket 600 along 300 up other side switch 400 along 1200 up',
    'socket 600 300 | far switch 400 1200',
    'seen',
  ],
  [
    'this side: socket 600/300, switch 200/1200. other side: socket 700/450',
    'socket 600 300 | switch 200 1200 | far socket 700 450',
    'seen',
  ],
  ['other side: switch 400/1200. this side: socket 600/300', 'far switch 400 1200 | socket 600 300', 'seen'],
  ['socket 600/300 far side, switch 400/1200 near side', 'far socket 600 300 | switch 400 1200', 'seen'],
  [
    'socket 600 along 300 up, other side, switch 400 along 1200 up, this side',
    'far socket 600 300 | switch 400 1200',
    'seen',
  ],
  [
    'switch on this side 400/1200 and on the other side 900/1200',
    'switch 400 1200 | far switch 900 1200',
    'seen',
  ],
  [
    'switch 1250 from the left, 1100 up; another on the other side at 900 from the left, 1100 up',
    'switch 1250 1100 | far switch 900 1100',
    'seen',
  ],
  ['none here, one socket on the other side 700 from the left 450 up', 'far socket 700 450', 'seen'],
  ['nothing this side, other side switch 400 along 1200 up', 'far switch 400 1200', 'seen'],
  ['this side nothing other side switch 400 along 1200 up', 'far switch 400 1200', 'seen'],
  ['other side nothing, this side a socket 600 along 300 up', 'socket 600 300', 'seen'],
  ['clear this side but theres a switch on the back 400 along 1200 up', 'far switch 400 1200', 'seen'],
  [
    'no sockets on this side but a switch on the other at 400 from left 1200 up',
    'far switch 400 1200',
    'seen',
  ],
  ['next door has a socket 700 from the left 300 up', 'far socket 700 300', 'seen'],
  ['behind is the bathroom: basin 1200 from the left 850 up', 'far basin 1200 850', 'seen'],
  [
    'on the other side theres a switch at 400 along, 1200 up and a socket at 900 along, 300 up',
    'far switch 400 1200 | far socket 900 300',
    'seen',
  ],
  [
    'socket 600 from the left 300 up. other side is the hall, light switch 900 from the left 1200 up',
    'socket 600 300 | far switch 900 1200',
    'seen',
  ],
  ['other side is the kitchen. socket in the kitchen 600 from the left 300 up', 'far socket 600 300', 'seen'],
  ['hall side: switch 400/1200. this side: socket 600/300', 'far switch 400 1200 | socket 600 300', 'seen'],
  ['socket 900 from left 300 up, other side is the bedroom', 'socket 900 300', 'unknown'],
  [
    'this side is the lounge, socket 900 from left 300 up, other side is the hall, switch 400 from the left 1200 up',
    'socket 900 300 | far switch 400 1200',
    'seen',
  ],
  [
    'socket 600/300, other side is the hall, switch 400/1200 on the other side',
    'socket 600 300 | far switch 400 1200',
    'seen',
  ],
  ['socket 900 from left 300 up, the other side is outside and its clear', 'socket 900 300', 'seen'],
  ['radiator behind the couch 1500 from left 350 up, none on the other side', 'radiator 1500 350', 'seen'],
  [
    'two sockets on the other side, one at 500 and one at 2200 from the left, 300 up each',
    'far socket 500 300 | far socket 2200 300',
    'seen',
  ],
];

export const TO_BE_ASKED: Row[] = [
  ['theres a socket on the left and one on the right', 'socket ? ? | socket ? ?'],
  [
    'socket 600/300, switch 400/1200, on the other side',
    'far switch 400 1200 | either socket 600 300',
    'seen',
  ],
  ['socket 600 along 300 up, and the same on the other side', 'socket 600 300 | far socket ? ?', 'seen'],
  ['back to back sockets 600 along 300 up', 'socket 600 300 | far socket ? 300', 'seen'],
  ['toilet behind it', 'either toilet ? ?'],
  ['shower on the other side of the wall', 'far shower ? ?', 'seen'],
  [
    'the light switch in the hall is 20cm from the left edge of the wall and 110 cm from the floor',
    'either switch 200 1100',
  ],
  ['from the right 600 from the floor 300 socket', 'socket ? 300'],
  ['socket 600 from the left of the window, 300 up', 'socket ? 300'],
  ['two sockets, 300 up, one 500 from the left and one 500 from the right', 'socket 500 300 | socket ? 300'],
  [
    'thermostat on this side at 1500 up, 2m from the left; alarm box same place other side',
    'thermostat 2000 1500 | far blank-plate ? ?',
    'seen',
  ],
  ['socket 300 up, dunno how far along', 'socket ? 300'],
  ['theres trunking along the skirting', 'cable ? ?'],
  [
    "there's a double socket low down, about 1 metre from the left, 30cm up. other side is the hall, light switch somewhere",
    'socket 1000 300 | far switch ? ?',
    'seen',
  ],
  ['nothing here, the other side is the kitchen with a socket', 'far socket ? ?', 'seen'],
  [
    'two sockets and a switch on this side, nothing on the other',
    'socket ? ? | socket ? ? | switch ? ?',
    'seen',
  ],
  [
    'nothing on this side, two sockets and a switch on the other',
    'far socket ? ? | far socket ? ? | far switch ? ?',
    'seen',
  ],
  ['socket and switch on the other side', 'far socket ? ? | far switch ? ?', 'seen'],
  ['no sockets, light switch somewhere on the other side', 'far switch ? ?', 'seen'],
  ['nothing except an intercom by the door', 'blank-plate ? ?'],
  ['radiator under it, 1000 wide, centre at 1500', 'radiator 1500 ? wide 1000'],
  ['radiator 1000 wide 600 high, centre 1500 from the left', 'radiator 1500 ? wide 1000'],
  ['window from 2000 to 2600', 'window 2300 ? wide 600'],
  ['window starts at 2000 and ends at 2600', 'window 2300 ? wide 600'],
  ['window on the left', 'window ? ?'],
  ['door at the right end, 820 wide', 'door ? 990 wide 820'],
  [
    'a switch on the other side at 1100 high, 300 from the right as i face it there',
    'far switch ? 1100',
    'seen',
  ],
  ['light switch by the door, about 1200 up, 150 in from the right', 'switch ? 1200'],
  ['light switch 150 from the door, 1200 up', 'switch ? 1200'],
  ['socket 600 from the corner, 300 up', 'socket ? 300'],
  ['socket on the right, 600 in, 300 up', 'socket ? 300'],
  ['socket 600 from the left, 200 above the worktop', 'socket 600 ?'],
  ['just a tv point and a socket next to each other, 450 up', 'socket ? ? | socket ? 450'],
  ['socket 600 from the left 300 up next to the radiator', 'socket 600 300 | either radiator ? ?'],
  ['two sockets 600 from the left 300 up', 'socket 600 300 | socket ? 300'],
  ['sockets 600/300', 'socket ? ? | socket ? ?'],
  ['sockets on both sides at 600 from the left 300 up', 'socket 600 300 | far socket ? 300', 'seen'],
  ['socket 600 from the left 300 up, light above it 1800 up', 'socket 600 300 | light ? 1800'],
  ['socket 600 from the left 300 up and another 1800 from the left', 'socket 600 300 | socket 1800 ?'],
  ['socket 600 up 300', 'socket ? ?'],
  ['socket 400 from the left, 600 from the left, 300 up', 'socket ? ?'],
  ['socket in the kitchen 600 from the left 300 up', 'either socket 600 300'],
  [
    'socket 600/300 and a switch 400/1200 on the other side',
    'far switch 400 1200 | either socket 600 300',
    'seen',
  ],
  [
    'socket 600 along 300 up other side switch 400 along 1200 up',
    'either socket 600 300 | either switch 400 1200',
  ],
  ['switch 400/1200 on the far face, socket 600/300', 'far switch 400 1200 | either socket 600 300', 'seen'],
  [
    'socket 600/300, on the other side a switch 400/1200, radiator 1500/350',
    'socket 600 300 | far switch 400 1200 | either radiator 1500 350',
    'seen',
  ],
  ['socket on the opposite wall 600 from the left 300 up', 'either socket 600 300'],
  ['switch on the other side, 300 from the left looking from here, 1200 up', 'far switch ? 1200', 'seen'],
  ['yes, a switch', 'switch ? ?'],
];

/** On a wall 3000 wide and 2400 high. */
export const WALL_KNOWN: Row[] = [
  [
    'two sockets, 300 up, one 500 from the left and one 500 from the right',
    'socket 500 300 | socket 2500 300',
  ],
  ['light switch by the door, about 1200 up, 150 in from the right', 'switch 2850 1200'],
  [
    'a switch on the other side at 1100 high, 300 from the right as i face it there',
    'far switch 2700 1100',
    'seen',
  ],
  ['switch on the other side, 300 from the left looking from here, 1200 up', 'far switch 2700 1200', 'seen'],
  ['socket on the right, 600 in from the right hand corner, 300 up', 'socket 2400 300'],
  ['door at the right end, 820 wide', 'door 2590 990 wide 820'],
  ['door at the left end, 820 wide', 'door 410 990 wide 820'],
  ['light 300 below the ceiling, 1500 from the left', 'light 1500 2100'],
  ['window from 2000 to 2600, sill at 900, head at 2100', 'window 2300 1500 wide 600'],
  ['socket 3200 from the left 300 up', 'socket ? ?'],
  ['socket 600 from the left 2900 up', 'socket ? ?'],
];

/** "far switch 400 1200": what is known of a fitting, as the tables write it. */
const name = ({ face, kind, xMm, yMm, widthMm }: Unplaced | Accessory): string =>
  [
    face === 'far' ? 'far ' : face === undefined ? 'either ' : '',
    `${kind} ${rounded(xMm)} ${rounded(yMm)}`,
    widthMm === undefined ? '' : ` wide ${rounded(widthMm)}`,
  ].join('');

const rounded = (length: number | undefined): string =>
  length === undefined ? '?' : `${Math.round(length * 10) / 10}`;

/** The fittings of a wall, placed first, as the tables write them. */
export function namesOf(wall: JobSoFar['wall']): string {
  const list = Array.isArray(wall?.accessories) ? wall.accessories : [];
  return [...list, ...(wall?.unplaced ?? [])].map(name).join(' | ');
}

export const rows = (table: readonly Row[]) => table.map(([say, told, farSide]) => ({ say, told, farSide }));
