import { HANGER_CAPS, type KnownHanger, STRAP_ON_FOUR } from '../../piece/hanger-caps.ts';
import type { Hanging } from '../../piece/piece.ts';
import type { ChainLink } from '../../plan-shape.ts';
import { type Kilograms, type Newtons, weightOf } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import { kilogramsOf, upToWhole } from './in-kilograms.ts';

const within = (force: Newtons, cap: Kilograms): boolean => force <= weightOf(cap);

/** The hanger's kind where it was said; a bare ring is a ring of unknown kind. */
export function hangerKind(hanging: Hanging): KnownHanger | null {
  if (!('hanger' in hanging) || hanging.hanger === undefined || hanging.hanger === 'ring') return null;
  return hanging.hanger;
}

/** One hanger on the piece against its cap of common practice; of unknown kind, what it must be. Newtons. */
export function hangerLink(hanging: Hanging, actionN: Newtons): ChainLink {
  const kind = hangerKind(hanging);
  if (kind === null) {
    return {
      link: 'hanger',
      name: hanging.by === 'keyholes' ? 'keyhole' : 'ring',
      actionN,
      needs: hanging.by === 'keyholes' ? keyholeNeeds(actionN) : ringNeeds(actionN),
      basis: (hanging.by === 'keyholes' ? KEYHOLES : RINGS).map(basisOf),
    };
  }
  const { name, each } = HANGER_CAPS[kind];
  const resistanceN = weightOf(each.value);
  const utilisation = actionN / resistanceN;
  const needs =
    utilisation <= 1 ? null : hanging.by === 'keyholes' ? keyholeNeeds(actionN) : ringNeeds(actionN);
  return {
    link: 'hanger',
    name,
    actionN,
    resistanceN,
    utilisation,
    ...(needs !== null && { needs }),
    basis: [basisOf(each)],
  };
}

const RINGS = [HANGER_CAPS['d-ring'].each, HANGER_CAPS['strap-ring'].each, STRAP_ON_FOUR];
const KEYHOLES = [HANGER_CAPS['keyhole-routed'].each, HANGER_CAPS['keyhole-plate'].each];

/** The lightest ring of the trade that takes a force. */
function ringNeeds(force: Newtons): string {
  const d = HANGER_CAPS['d-ring'].each.value;
  const strap = HANGER_CAPS['strap-ring'].each.value;
  if (within(force, d)) return `a D-ring on a screw of its own in solid wood (${d} kg), or a strap ring`;
  if (within(force, strap))
    return `a strap ring on two or more screws (${strap} kg); a D-ring on one screw is for ${d}`;
  const four = STRAP_ON_FOUR.value;
  return within(force, four)
    ? `a strap ring on all of its four screws (${four} kg)`
    : `a hanger rated ${upToWhole(force)} kg or more on its packet, or a split batten`;
}

function keyholeNeeds(force: Newtons): string {
  const routed = HANGER_CAPS['keyhole-routed'].each.value;
  const plate = HANGER_CAPS['keyhole-plate'].each.value;
  if (within(force, routed)) return `a keyhole plate, or a slot in sound wood (${routed} kg)`;
  return within(force, plate)
    ? `a metal keyhole plate let in (${plate} kg); a slot cut in the wood is for ${routed}`
    : `a plate rated ${upToWhole(force)} kg or more on its packet, or a split batten; ${kilogramsOf(force)} is over what keyholes are for`;
}
