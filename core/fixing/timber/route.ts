import type { Country, Unknown } from '../../job.ts';
import { EC5 } from './route-ec5.ts';
import { NDS } from './route-nds.ts';
import type { TimberRoute } from './route-shape.ts';

const NDS_ELSEWHERE: TimberRoute = {
  ...NDS,
  taken: [
    ...NDS.taken,
    {
      field: 'timber.route',
      value: 'NDS',
      because: 'no timber value of this country was read, so the screw is reckoned by the US route, whole',
    },
  ],
};

/** Whose rules a screw in timber is reckoned by: NDS in America, Eurocode 5 in Europe, elsewhere the US route and said so. */
export function timberRouteOf(country: Country | Unknown | undefined): TimberRoute {
  if (country === 'US' || country === 'CA') return NDS;
  return country === 'UK' || country === 'IE' || country === 'EU' ? EC5 : NDS_ELSEWHERE;
}
