import { expect, test } from 'vitest';
import { EVENT_CAUTIONS } from '../../../../core/caution/events.ts';
import { tiltCaution } from '../../../../core/caution/hanging/level.ts';
import { degrees } from '../../../../core/quantity.ts';
import { accessRows } from './access.ts';
import { asbestosRows } from './asbestos.ts';
import { dustAndLeadRows } from './dust-and-lead.ts';
import { gatesRows } from './gates.ts';
import { liftingRows } from './lifting.ts';
import { placeRows } from './place.ts';
import { NO_JOB, REFERENCE_IDS } from './reference-ids.ts';
import { said } from './row.ts';
import { servicesRows } from './services.ts';
import { wallAndHangingRows } from './wall-and-hanging.ts';

const ROWS = [
  ...servicesRows,
  ...asbestosRows,
  ...dustAndLeadRows,
  ...accessRows,
  ...placeRows,
  ...wallAndHangingRows,
  ...gatesRows,
  ...liftingRows,
];
const CASES = ROWS.flatMap(({ id, from, cases }) =>
  cases.map(([says, severity, side]) => ({ id, from, says, severity: severity ?? 'not said', side })),
);

test.each(CASES)('$says: $id is $severity ($from; severity ours)', ({ id, severity, side }) => {
  expect(said(id, side) ?? 'not said').toBe(severity);
});

test.each(Object.entries(REFERENCE_IDS))(
  '%s of the reference is seen on both sides, at each severity its row gives, or no job reaches it',
  (id, severities) => {
    const cases = ROWS.filter((row) => row.id === id).flatMap((row) => row.cases);
    const seen = new Set(cases.map(([, severity]) => severity));
    if (Object.hasOwn(NO_JOB, id)) return expect(cases).toEqual([]);
    expect([
      ...severities.filter((each) => !seen.has(each)),
      ...(seen.has(null) ? [] : ['not said']),
    ]).toEqual([]);
  },
);

test('what no job reaches but an event or a measured tilt does has the severity of its row', () => {
  const elsewhere = [
    ...Object.values(EVENT_CAUTIONS),
    ...[0.2, 0.6].map((tilt) => tiltCaution(degrees(tilt))).filter((each) => each !== null),
  ];
  for (const id of Object.keys(NO_JOB).filter((each) => each !== 'C-PB-3')) {
    expect(elsewhere.find((each) => each.id === id)?.severity, id).toBe(REFERENCE_IDS[id]?.[0]);
  }
});

test('no row is of an id that the reference does not have', () => {
  expect(ROWS.filter(({ id }) => !Object.hasOwn(REFERENCE_IDS, id))).toEqual([]);
});
