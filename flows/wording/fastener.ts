import type { Fastener } from '../../core/fixing/fastener.ts';

/** What a fastener is called at a counter. */
export const FASTENER: Readonly<Record<Fastener, string>> = {
  'plug-and-screw': 'plug and screw',
  'hollow-unit-plug': 'plug for hollow units, and screw',
  'aerated-plug': 'plug for aerated block, and screw',
  'frame-plug': 'frame plug',
  'concrete-screw': 'concrete screw',
  'resin-stud': 'threaded stud in resin',
  'stud-screw': 'screw into the stud',
  'steel-stud-screw': 'tapping screw into the steel stud',
  'timber-screw': 'wood screw',
  'lath-screw': 'screw into the lath',
  'batten-screws': 'screw through a batten',
  'board-across-studs': 'board across the studs',
  'screw-in-anchor': 'screw-in board anchor',
  'expanding-sleeve-anchor': 'expanding-sleeve anchor',
  'spring-toggle': 'spring toggle',
  'bar-toggle': 'bar toggle',
  'strap-toggle': 'strap toggle',
  'winged-plug': 'winged plug',
  'pin-hook': 'pin hook',
  'picture-rail-hook': 'picture-rail hook',
};
