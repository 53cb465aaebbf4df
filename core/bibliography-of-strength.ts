import type { Source } from './bibliography-entry.ts';

/** Documents on what holds: timber, steel, concrete, masonry, plugs, board, earthquakes. */
export const STRENGTH_SOURCES = {
  'NDS-2018': {
    title: 'National Design Specification for Wood Construction, 2018',
    issuer: 'American Wood Council',
  },
  'AWC-TR12': {
    title: 'Technical Report 12: General Dowel Equations for Calculating Lateral Connection Values',
    issuer: 'American Wood Council',
  },
  'FPL-GTR-282': {
    title: 'Wood Handbook: wood as an engineering material (GTR-190, 2010; GTR-282, 2021)',
    issuer: 'USDA Forest Products Laboratory',
  },
  'CWC-lead-holes': { title: 'Lead hole table for wood screws', issuer: 'Canadian Wood Council' },
  'civil-engineering-formulas': {
    title: 'Civil Engineering Formulas, ch. 6, lateral loads on wood screws',
    issuer: 'textbook',
  },
  'EN338:2016': { title: 'Structural timber: strength classes', issuer: 'CEN' },
  'EN1993-1-8:2005': { title: 'Eurocode 3, part 1-8: design of joints', issuer: 'CEN' },
  'EN1990:2002': { title: 'Eurocode: basis of structural design', issuer: 'CEN' },
  'ISO898-1': { title: 'Mechanical properties of fasteners: bolts, screws and studs', issuer: 'ISO' },
  'CEN/TS1992-4-2:2009': {
    title: 'Design of fastenings for use in concrete, part 4-2: headed fasteners',
    issuer: 'CEN',
  },
  'ETAG001-C': { title: 'ETAG 001 Annex C: design methods for anchorages', issuer: 'EOTA' },
  'EOTA-TR029': { title: 'TR 029: design of bonded anchors', issuer: 'EOTA' },
  ETAG020: { title: 'ETAG 020: plastic anchors for multiple use (now EAD 330284)', issuer: 'EOTA' },
  'ETAG029-C': { title: 'ETAG 029 Annex C, TR 054: anchors in masonry', issuer: 'EOTA' },
  'EN1996-1-1:2005': { title: 'Eurocode 6, part 1-1: masonry', issuer: 'CEN' },
  'ASCE7-16': {
    title: 'Minimum Design Loads and Associated Criteria for Buildings and Other Structures, 2016',
    issuer: 'ASCE',
  },
  'EN1998-1:2004': { title: 'Eurocode 8, part 1: earthquake resistance', issuer: 'CEN' },
  'AS1170.4:2007': {
    title: 'Structural design actions: earthquake actions in Australia',
    issuer: 'Standards Australia',
  },
  'ACI318-19': { title: 'Building Code Requirements for Structural Concrete', issuer: 'ACI' },
  'ACI349.2R-07': { title: 'Guide to the concrete capacity design method: examples', issuer: 'ACI' },
  TMS402: {
    title: 'Building Code Requirements for Masonry Structures, as quoted in NCMA TEK 12-3C',
    issuer: 'TMS',
  },
  'ASTM-C1396': { title: 'Standard specification for gypsum board (was C36)', issuer: 'ASTM' },
  EN520: { title: 'Gypsum plasterboards', issuer: 'CEN' },
  ISO1478: { title: 'Tapping screws thread', issuer: 'ISO' },
  ISO5468: { title: 'Rotary and impact masonry drill bits with hardmetal tips', issuer: 'ISO' },
  'ADA-2010': { title: 'ADA Standards for Accessible Design, 2010', issuer: 'US Department of Justice' },
  'spring-wire': {
    title: 'Tensile strength of spring wire, S_ut = A / d^m, as in machine-design textbooks',
    issuer: 'textbook',
  },
  'AISI-S100': {
    title: 'North American Specification for the Design of Cold-Formed Steel Structural Members',
    issuer: 'AISI',
  },
  packet: { title: 'Rating printed on the packet, as read out by the person', issuer: 'the person on site' },
} as const satisfies Record<string, Source>;
