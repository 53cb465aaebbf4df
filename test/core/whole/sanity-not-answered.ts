/** Typical jobs whose base material this part of the core does not work out yet. They end in a plain stop. */
export const SANITY_NOT_ANSWERED: Record<string, string> = {
  'SJ-20': 'plasterboard on steel studs',
  'SJ-24': 'lath and plaster',
  'SJ-27': 'fibre cement on studs, after the asbestos line',
};
