import { describe, expect, it } from 'vitest';
import { mm } from '../../../core/quantity.ts';
import { intoStud, pipePlate, reachBeforeCable } from '../../../core/wall/stud-setback.ts';
import { cases } from '../caution/cases.ts';
import { heldAt, inches, jobWith, saidOf, severityOf } from '../caution/ordinary-job.ts';

const inInches = (value: number): number => value / 25.4;

describe('how deep a stud may be screwed', () => {
  it.each(cases('KC-D2'))('$title', ({ inputs, expected, tolerance }) => {
    const reach = reachBeforeCable(inches(inputs.board_in));
    expect(Math.abs(reach - expected.mm)).toBeLessThanOrEqual(tolerance);
    expect(inInches(reach)).toBeCloseTo(expected.max_screw_reach_from_finished_face_in, 6);
    expect(inputs.setback_in).toBe(1.25);
  });

  it.each(cases('KC-D3'))('$title', ({ inputs, expected }) => {
    const screw = inches(inputs.screw_in);
    const { inStudMm, pastSetbackMm } = intoStud(
      screw,
      inches(inputs.board_in),
      inches(inputs.hook_plate_in),
    );
    expect(inInches(inStudMm)).toBeCloseTo(expected.penetration_into_stud_in, 6);
    expect(inInches(pastSetbackMm)).toBeCloseTo(expected.exceeds_setback_by_in, 6);

    const job = jobWith({
      building: { country: 'US' },
      wall: { baseMaterial: 'plasterboard-on-timber-studs', boardMm: inches(inputs.board_in) },
    });
    const screwed = heldAt(40, {
      fastener: 'stud-screw',
      bit: { kind: 'wood', action: 'rotary', diameterMm: mm(3), depthMm: mm(40) },
      screw: { diameterMm: mm(4.8), lengthMm: screw, head: 'pan' },
    });
    const { plug: _, ...fixing } = screwed.fixing;
    expect(severityOf(saidOf(job, undefined, { ...screwed, fixing }), 'C-SV-3')).toBe(expected.severity);
  });

  it.each(cases('KC-D5'))('$title', ({ inputs, expected, tolerance }) => {
    const edge = mm(inputs.pipe_edge_to_stud_face_mm);
    const irc = pipePlate(edge, 'irc-2006');
    const upc = pipePlate(edge, 'upc');
    expect(Math.abs(irc.belowMm - expected.irc2006_plate_required_below_mm)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(upc.belowMm - expected.upc_plate_required_below_mm)).toBeLessThanOrEqual(tolerance);
    expect([irc.expected, upc.expected]).toEqual([
      expected.irc2006_plate_expected,
      expected.upc_plate_expected,
    ]);
  });
});
