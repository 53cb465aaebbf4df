import { type Millimetres, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';
import type { Accessory, AccessoryKind } from './wall.ts';

/** What a plate measures when nobody measured it: the larger common plate. */
export const PLATE_WIDTH = sourced(
  mm(146),
  'our-choice',
  'contract 4: the larger common plate',
  'our-choice',
);
const PLATE_HEIGHT = sourced(mm(86), 'our-choice', 'contract 4: the larger common plate', 'our-choice');

/** A door leaf with its lining, when only its middle was given; wide, so that a door counts as near. */
const DOOR_WIDTH = sourced(mm(900), 'our-choice', 'a door leaf with its lining', 'our-choice');

type Service = 'electric' | 'plumbing' | 'opening';

/** What may run in the wall to each kind of accessory. A blank plate still counts; an opening hides nothing. */
const SERVICE: Record<AccessoryKind, Service> = {
  socket: 'electric',
  switch: 'electric',
  light: 'electric',
  thermostat: 'electric',
  heater: 'electric',
  'consumer-unit': 'electric',
  'blank-plate': 'electric',
  cable: 'electric',
  tap: 'plumbing',
  basin: 'plumbing',
  toilet: 'plumbing',
  shower: 'plumbing',
  radiator: 'plumbing',
  boiler: 'plumbing',
  gas: 'plumbing',
  pipe: 'plumbing',
  window: 'opening',
  door: 'opening',
};

const SPOKEN: Partial<Record<AccessoryKind, string>> = {
  'consumer-unit': 'consumer unit',
  'blank-plate': 'blank plate',
  gas: 'gas point',
  heater: 'wall heater',
};

/** Which service an accessory stands for. */
export function serviceOf(kind: AccessoryKind): Service {
  return SERVICE[kind] ?? 'electric';
}

/** The trade's word for an accessory. */
export function spokenKind(kind: AccessoryKind): string {
  return SPOKEN[kind] ?? kind;
}

/** Width and height of an accessory in millimetres, as measured or as assumed. */
export function sizeOf(accessory: Accessory): { widthMm: Millimetres; heightMm: Millimetres } {
  const width = accessory.kind === 'door' ? DOOR_WIDTH.value : PLATE_WIDTH.value;
  return {
    widthMm: accessory.widthMm ?? width,
    heightMm: accessory.heightMm ?? PLATE_HEIGHT.value,
  };
}
