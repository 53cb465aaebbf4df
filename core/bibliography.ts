/** A document, or the honest lack of one. */
export type Source = { readonly title: string; readonly issuer: string };

/** The bibliography: id with edition, title, issuer. Every id is cited somewhere, and each citation has its place. */
export const SOURCES = {
  'common-practice': { title: 'Common practice of installers, no source', issuer: 'the trade' },
  'our-choice': { title: 'A declared choice of this project, no source', issuer: 'wallhand' },
  statics: { title: 'Statics and plane geometry, textbook', issuer: 'derived' },
  'EN1992-4:2018': {
    title: 'Eurocode 2, part 4: design of fastenings for use in concrete',
    issuer: 'CEN',
  },
  'Vision-Res-30(10):1990': {
    title: 'Recognition of stimulus orientation, Vision Research 30(10), 1990, pages 1429 to 1437',
    issuer: 'a journal of vision research',
  },
  'NHBC-2020': { title: 'NHBC Standards 2020', issuer: 'NHBC' },
  'EN1995-1-1': { title: 'Eurocode 5: design of timber structures, part 1-1', issuer: 'CEN' },
  'ASME-B18.6.1': { title: 'Wood screws, inch series (diameters as in NDS-2018 appendix L)', issuer: 'ASME' },
  'EN572-1': { title: 'Glass in building: basic soda-lime silicate glass products, part 1', issuer: 'CEN' },
  'EN1991-1-1:2002': { title: 'Eurocode 1: actions on structures, part 1-1: densities', issuer: 'CEN' },
  'EN12385-4': { title: 'Steel wire ropes: stranded ropes for general lifting', issuer: 'CEN' },
  '49CFR393.108': {
    title: 'Protection against shifting cargo: working load limits',
    issuer: 'United States',
  },
  '2006/42/EC': { title: 'Machinery directive, annex I', issuer: 'European Union' },
  'AS/NZS4455.1': {
    title: 'Masonry units, pavers and flags, part 1: masonry units',
    issuer: 'Standards Australia',
  },
  'EN771-1': { title: 'Specification for masonry units, part 1: clay masonry units', issuer: 'CEN' },
  'BIA-TN10': {
    title: 'Technical Note 10: dimensioning and estimating brick masonry',
    issuer: 'Brick Industry Association',
  },
  // Fixing: what holds.
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
  packet: { title: 'Rating printed on the packet, as read out by the person', issuer: 'the person on site' },
  'BS7671:2018': {
    title: 'BS 7671, requirements for electrical installations, as quoted by a secondary page',
    issuer: 'IET and BSI',
  },
  'ASNZS3000:2018': {
    title: 'AS/NZS 3000, wiring rules, as quoted by a trade forum',
    issuer: 'Standards Australia and Standards New Zealand',
  },
  'NEC:300.4': {
    title: 'NFPA 70, national electrical code, article 300.4, as quoted by a secondary page',
    issuer: 'NFPA',
  },
  'IRC:2006': {
    title: 'International residential code, pipe protection plates, as quoted by a secondary page',
    issuer: 'ICC',
  },
  'UPC:312.9': {
    title: 'Uniform plumbing code, steel plates, as quoted by a secondary page',
    issuer: 'IAPMO',
  },
  'NT-asbestos': {
    title: 'Asbestos: questions of homeowners',
    issuer: 'Northern Territory Government',
  },
  'HSE-A0': {
    title: 'Asbestos Essentials, sheet A0 and the list of task sheets',
    issuer: 'HSE',
  },
  'NZ-asbestos:2016': {
    title: 'Health and safety at work (asbestos) regulations 2016, as a property agency quotes them',
    issuer: 'New Zealand',
  },
  'CPSC:1977': {
    title: 'Ban of patching compounds that contain asbestos, as quoted by secondary pages',
    issuer: 'CPSC',
  },
  'asbestos-bans': {
    title: 'Asbestos bans of other countries',
    issuer: 'from memory',
  },
  '40CFR745.83': {
    title: 'Lead renovation, repair and painting rule, definitions',
    issuer: 'EPA',
  },
  'SA-Health-lead': {
    title: 'Lead paint in older houses',
    issuer: 'SA Health',
  },
  'Defra-lead': {
    title: 'Advice on lead paint in older homes',
    issuer: 'Defra',
  },
  'lead-elsewhere': {
    title: 'Lead in house paint in other countries',
    issuer: 'from memory',
  },
  '29CFR1926.1153': {
    title: 'Respirable crystalline silica in construction, Table 1',
    issuer: 'OSHA',
  },
  'EH40:2020': {
    title: 'Workplace exposure limits, as reported in 2020',
    issuer: 'HSE',
  },
  'AU-silica:2024': {
    title: 'Work health and safety amendments on crystalline silica, from 1 September 2024',
    issuer: 'Safe Work Australia and the states',
  },
  '29CFR1926.52': {
    title: 'Occupational noise exposure, Table D-2',
    issuer: 'OSHA',
  },
  'NIOSH:98-126': {
    title: 'Criteria for a recommended standard: noise exposure',
    issuer: 'NIOSH',
  },
  '29CFR1926.102': {
    title: 'Eye and face protection',
    issuer: 'OSHA',
  },
  'HSE-L23': {
    title: 'Manual handling guidance L23 with INDG143, lifting filter and team lifts',
    issuer: 'HSE',
  },
  'NIOSH:94-110': {
    title: 'Applications manual for the revised lifting equation, rev. 9/2021',
    issuer: 'NIOSH',
  },
  'HSE-INDG402': {
    title: 'Safe use of ladders and stepladders',
    issuer: 'HSE',
  },
  'ADK:2013': {
    title: 'Approved Document K, K4 section 5',
    issuer: 'UK Government',
  },
  AS1288: {
    title: 'AS 1288, glass in buildings, as a trade summary quotes it',
    issuer: 'Standards Australia',
  },
  'ABCB:10.2.2': {
    title: 'Housing provisions 10.2.2, wet areas',
    issuer: 'ABCB',
  },
  'IRC:R1001.11': {
    title: 'Combustible trim at masonry fireplaces, with NFPA 211',
    issuer: 'ICC and NFPA',
  },
  'FEMA:2008': {
    title: 'Mount framed pictures and mirrors securely, April 2008',
    issuer: 'FEMA',
  },
  'PT-scanning': {
    title: 'Guidance on scanning tensioned concrete before drilling',
    issuer: 'scanning trade',
  },
  'RTA-NZ:42': {
    title: 'Residential tenancies act, sections 42A and 42B',
    issuer: 'New Zealand',
  },
  'NSW-RTR': {
    title: 'Residential tenancies regulation, list of minor changes',
    issuer: 'New South Wales',
  },
  'PLBCA:1990': {
    title: 'Planning (listed buildings and conservation areas) act 1990, section 7',
    issuer: 'UK',
  },
  'PartyWall:1996': {
    title: 'Party wall act 1996, explanatory booklet',
    issuer: 'UK Government',
  },
  'separating-walls': {
    title: 'Fire and sound separation in building codes (IBC 714, NCC, ADB)',
    issuer: 'from memory',
  },
  'electrical-law': {
    title: 'Electrical work for licensed or registered people, national laws',
    issuer: 'from memory',
  },
  'NBS-M20': { title: 'M20 plastered coatings, specification page', issuer: 'NBS' },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof SOURCES;
