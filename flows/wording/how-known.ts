import type { Standing } from '../../core/sources.ts';

/** How well a number is known, in words. */
export const HOW_KNOWN: Readonly<Record<Standing, string>> = {
  read: 'read in the document',
  'read-secondary': 'read in a page that quotes it',
  derived: 'arithmetic',
  'from-memory': 'from memory, not checked against the text',
  'common-practice': 'common practice, no source',
  'our-choice': 'our choice, no source',
};
