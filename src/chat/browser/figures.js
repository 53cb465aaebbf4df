// @ts-check
/** A size as it is sold: millimetres, to a tenth where there is one. */
function figure(/** @type {number} */ value) {
  return String(Math.round(value * 10) / 10);
}

/** @typedef {import('../../../core/fixing/fixing-shape.ts').Fixing} Fixing */

/** A name of the contract as words: `plug-and-screw`. */
function words(/** @type {string} */ name) {
  return name.replaceAll('-', ' ');
}

/** A number nobody published is never shown as if somebody had. */
const NO_SOURCE = ': common practice, no source';

/** @type {Record<Fixing['governing']['mode'], string>} */
const LIMITS = {
  'screw-bending': 'what the screw bears before it bends',
  'screw-shear': 'what the screw bears before it shears',
  'screw-tension': 'what the screw bears before it tears',
  'plug-cap': 'the cap for such a plug',
  'packet-rating': 'the packet’s rating',
  'pull-test': 'what the pull test allows',
  'timber-lateral': 'what the timber bears sideways',
  'timber-withdrawal': 'what draws the screw out of the timber',
  'concrete-cone': 'what breaks the concrete out',
  masonry: 'what the masonry bears',
  'anchor-cap': 'the cap for such a fixing',
};

const ACTIONS = {
  rotary: 'rotary, no hammer',
  'hammer-after-finish': 'hammer only once past the finish',
  'rotary-until-known': 'rotary until you know it is solid',
  none: '',
};

/**
 * What goes into the wall, line by line.
 * @param {Fixing} fixing
 * @returns {[string, string][]}
 */
export function fixingLines(fixing) {
  const { bit, pilot, plug, screw, governing } = fixing;
  /** @type {[string, string | null | undefined | false][]} */
  const lines = [
    ['Fixing', `${fixing.count} × ${words(fixing.fastener)}`],
    ['Bit', bit.kind !== 'none' && `${figure(bit.diameterMm)} mm ${bit.kind}`],
    [
      'Hole',
      bit.depthMm > 0 && [`${figure(bit.depthMm)} mm deep`, ACTIONS[bit.action]].filter(Boolean).join(', '),
    ],
    ['Pilot', pilot && `${figure(pilot.diameterMm)} mm, ${figure(pilot.depthMm)} mm deep`],
    ['Plug', plug && `${figure(plug.diameterMm)} × ${figure(plug.lengthMm)} mm`],
    ['Screw', screw && screwWords(screw)],
    ['Note', fixing.note],
    [
      'Load',
      `${Math.round(fixing.utilisation * 100)} % of ${LIMITS[governing.mode]}${governing.noSource ? NO_SOURCE : ''}`,
    ],
  ];
  return lines.flatMap(([name, value]) => (value ? [[name, value]] : []));
}

/** @param {NonNullable<Fixing['screw']>} screw */
function screwWords(screw) {
  const gauge = screw.gauge === undefined ? '' : `${screw.gauge} gauge, `;
  return `${gauge}${figure(screw.diameterMm)} × ${figure(screw.lengthMm)} mm, ${screw.head} head`;
}
