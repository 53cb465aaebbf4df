import { PLATE_WIDTH } from '../../core/wall/accessory.ts';
import { BAND } from '../../core/wall/bands.ts';
import { marginOf } from '../../core/wall/zone.ts';
import { by, type TradeAnswer } from './trade-answer.ts';

const POINT = /\b(?:switch|socket|power ?point|outlet|gpo|light|plate|thermostat)s?\b/;

export const SERVICE_ANSWERS: readonly TradeAnswer[] = [
  {
    asks: [/\b(?:how far|how close|how near|clear of|sideways|distance)\b/, POINT],
    answer: (_, job) => {
      const margin = marginOf(job.building?.country);
      return `Past the edge of the plate, ${margin} mm more, and the bit’s radius; a plate nobody measured counts as ${PLATE_WIDTH.value} mm wide. Scan anyway. ${by(PLATE_WIDTH)}`;
    },
  },
  {
    asks: [/\b(?:above|over|below|under|beneath|beside|next to|in line)\b/, POINT],
    answer: () =>
      `No. Straight up, down and sideways of it cables may run, as wide as the plate; where no rule says so they may run anywhere. Move sideways. ${by({ source: BAND.source, at: '522.6.202(i)', standing: 'read-secondary' })}`,
  },
  {
    asks: [/\b150\b|\bzones?\b/],
    answer: () =>
      `Within ${BAND.value} mm of the top of the wall and of its corners, and straight from any accessory. None along the floor; old wiring ignores them. ${by(BAND)}`,
  },
  {
    asks: [
      /\b(?:safe|ok|okay|good to go|all right|alright)\b.*\b(?:drill|here|go)\b|\b(?:is|are|will|would) (?:it|this|that|they|the wall|my wall)(?: be)? safe\b|\b(?:detector|scanner)\b/,
    ],
    answer: () =>
      'I can’t say that of any wall, and a quiet detector proves nothing: plastic pipe, dead cable, foil and wet plaster fool it. I can say what was checked; scan, switch off, and stop on any change of feel. (Common practice, no source.)',
  },
  {
    asks: [
      /\bhit\b|\bsmell\b|\bwire\b.*\bdrilled\b/,
      /\b(?:wire|cable|pipe|water|gas|metal|steel|reo|rebar)\b/,
    ],
    answer: trouble,
  },
];

function trouble(text: string): string {
  if (/\bgas\b/.test(text))
    return 'Out, and everyone with you. No switches, no flame. Shut the meter valve if it is on the way, and ring the gas emergency number from outside. (From memory, not checked against a text.)';
  if (/\b(?:pipe|water)\b/.test(text))
    return 'Stop valve, open a low tap, electricity off if water is near it, then a plumber. (From memory, not checked against a text.)';
  if (/\b(?:wire|cable)\b/.test(text))
    return 'Let go, touch no metal, main switch off, and an electrician before it goes on again. (From memory, not checked against a text.)';
  return 'Stop, and do not press harder: steel just behind board is often a plate put there to guard a cable or a pipe; a long line of it is a stud; in concrete it is reinforcement, so move and do not cut. (Read in pages that quote the wiring rules, and common practice.)';
}
