import type { Fixing } from '../fixing/fixing-shape.ts';

const tenth = (value: number): string => String(Math.round(value * 10) / 10);

/** A fixing as it is told from another: its kind and sizes in millimetres. */
export function fixingName({ fastener, plug, screw }: Fixing): string {
  const sizes = [
    ...(plug ? [`plug ${tenth(plug.diameterMm)} x ${tenth(plug.lengthMm)}`] : []),
    ...(screw ? [`screw ${tenth(screw.diameterMm)} x ${tenth(screw.lengthMm)}`] : []),
  ];
  const kind = fastener.replaceAll('-', ' ');
  return sizes.length === 0 ? kind : `${kind} (${sizes.join(', ')} mm)`;
}
