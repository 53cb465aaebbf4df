import type { Source } from './bibliography-entry.ts';

/** Documents on what stops or cautions a job: services, dust, lifting, glass, fire, tenure. */
export const CAUTION_SOURCES = {
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
