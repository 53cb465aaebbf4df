import type { Source } from './bibliography-entry.ts';
import { CAUTION_SOURCES } from './bibliography-of-cautions.ts';
import { STRENGTH_SOURCES } from './bibliography-of-strength.ts';

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
  DIN105: { title: 'Clay masonry units: normal and thin format', issuer: 'DIN' },
  'BIA-TN10': {
    title: 'Technical Note 10: dimensioning and estimating brick masonry',
    issuer: 'Brick Industry Association',
  },
  ...STRENGTH_SOURCES,
  ...CAUTION_SOURCES,
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof SOURCES;
