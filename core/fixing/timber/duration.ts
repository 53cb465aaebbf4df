import { sourced } from '../../sources.ts';

/** Load duration factors of timber connections on the US route; impact is not allowed for connections. */
export const LOAD_DURATION_CD = sourced(
  { permanent: 0.9, 'ten-years': 1, 'two-months': 1.15, 'seven-days': 1.25, 'ten-minutes': 1.6 },
  'NDS-2018',
  'Table 2.3.2',
  'read',
);

/** Modification factors of solid timber in service classes 1 and 2 on the Eurocode route. */
export const K_MOD = sourced(
  { permanent: 0.6, long: 0.7, instantaneous: 1.1 },
  'EN1995-1-1',
  'Table 3.1',
  'read',
);
