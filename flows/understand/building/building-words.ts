import type { Building } from '../../../core/job.ts';

type Tenure = Exclude<Building['tenure'], 'unknown' | undefined>;
export type Kind = Exclude<Building['kind'], 'unknown' | undefined>;

/** Whose it is, and what building: said anywhere, or alone in answer. */
export const TENURE: [Tenure, RegExp][] = [
  [
    'client',
    /\b(?:clients?|customers?)(?: ?s)?\b(?! (?:wants?|said|never|says|did|has|told|likes|would|is|asked))|\b(?:for|its) (?:a |the |my )?(?:clients?|customers?)\b|\bworking for\b|\bsomeone elses\b|\b(?:the )?owners? (?:wants|asked|is having)\b/,
  ],
  [
    'tenant',
    /\b(?:i|we|im|were) ?(?:are |am |just |only )?(?:rent|renting|tenants?|lease|leasing|let)\b|\brent(?:ed|al|er|ers|ing)\b|\btenants?\b|\btenancy\b|\blandlords?\b|\bcouncil (?:house|flat)\b|\bhousing association\b|\bleased?\b/,
  ],
  [
    'owner',
    /(?:^|[,;.] |\band |\b(?:1[6-9]|20)\d\d )(?:its |it is |and )?(?:mine|ours)(?=\s*(?:[,;.]|$))|\b(?:i|we) (?:own|bought|live in my own)\b|\b(?:own|owned) (?:it|the place|my own|by me|by us|our own|house|home)\b|\bowners?(?: occupied| occupier)?\b|\bmortgage\b|\bhomeowner\b|\bfreehold\b/,
  ],
];
/** "My house", said in passing: an owner's, unless something else is said of it; confirmed before the plan. */
export const MY_HOUSE =
  /\b(?:my|our) (?:own |new |old )?(?:house|home)\b(?! ?(?:owner|s (?:landlord|owner)))/;
export const TENURE_ALONE: [Tenure, RegExp][] = [
  ['client', /\bcustomer\b|\bclient\b|\bnot mine\b|\bjob\b|\ba job\b/],
  ['tenant', /\brent\b|\blet\b/],
  [
    'owner',
    /\bmine\b|\bours\b|\b(?:my|our) (?:own )?(?:house|home|place|flat|apartment|wall)\b|\bown\b|\bown it\b|\bmy place\b|\bparents?\b|\bfamily\b/,
  ],
];

export const KINDS: [Kind, RegExp][] = [
  [
    'flat',
    /\b(?:flats?|apartments?|units?(?= (?:in|block|building))|condos?|condominium|tower block|high ?rise|maisonette|studio apartment|block of (?:flats|units)|penthouse|bedsit)\b/,
  ],
  [
    'public',
    /\b(?:public|shops?|office (?:block|building|park|fit ?out)s?|offices|restaurants?|pubs?|cafes?|café|hotels?|schools?|church|hall(?= for)|hospitals?|clinic|gallery|museum|library|commercial|school|gym|salon|surgery|community (?:hall|centre)|town hall|bar)\b/,
  ],
  [
    'house',
    /\b(?:house|houses|cottage|bungalow|villa|terrace|terraced|semi|townhouse|town house|detached|farmhouse|duplex|homestead|cabin|barn)\b/,
  ],
];
export const KIND_ALONE: [Kind, RegExp][] = [
  ['flat', /\bunit\b|\bflat\b/],
  ['house', /\bhome\b|\bhouse\b/],
];
