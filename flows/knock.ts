import type { BaseMaterial } from '../core/job.ts';
import type { AskBack, Reading, Understand } from './reading.ts';
import { MATERIAL } from './wording/words.ts';

/** How a wall sounds and what may sound so: common practice; it names candidates, it decides none. */
const SOUNDS: readonly { heard: RegExp; may: readonly BaseMaterial[]; so: string }[] = [
  {
    heard:
      /\bdrum\w*\b.*\b(?:random|patch\w*|no pattern|blob\w*|dab\w*|spots?)\b|\b(?:random|patchy)\b.*\b(?:firm|solid|hard)\b/,
    may: ['plasterboard-on-dabs', 'plasterboard-on-timber-studs'],
    so: 'A drum with firm patches and no pattern is most often board stuck to masonry.',
  },
  {
    heard:
      /\bdrum\w*\b|\bhollow\b.*\b(?:lines?|every|studs?|steady)\b|\b(?:lines?|stripes?) of (?:dots|screws|magnet)/,
    may: ['plasterboard-on-timber-studs', 'plasterboard-on-steel-studs', 'lath-and-plaster'],
    so: 'A drum with firm upright lines is a sheet on studs. A magnet that catches on dots up a line says timber, an unbroken pull says steel, small nails close together say lath.',
  },
  {
    heard: /\b(?:rattl\w*|crumbl\w*)\b.*\b(?:behind|inside)\b/,
    may: ['lath-and-plaster', 'plasterboard-on-timber-studs'],
    so: 'Dull and hollow with a rattle behind is most often lath and plaster.',
  },
  {
    heard: /\b(?:dull|dead|thud|solid|hard|rock|stone)\b/,
    may: ['clay-brick', 'concrete-block', 'concrete'],
    so: 'Dull and hard everywhere is masonry; which, the knock does not tell. Look where a box was cut in, in the roof space or outside.',
  },
];

/** At the question what the wall is, how it sounds names what it may be, to be picked; nothing is taken from a sound alone. */
export const withKnock =
  (understand: Understand): Understand =>
  (said, listening) => {
    const reading = understand(said, listening);
    if (listening.awaiting !== 'wall.baseMaterial' || listening.hasPlan || isTold(reading)) return reading;
    const ask = askAbout(said);
    return ask === null ? reading : { ...reading, intent: 'answer', refused: [], asks: [ask] };
  };

const isTold = ({ facts, asks, intent }: Reading): boolean =>
  (intent !== 'answer' && intent !== 'not-understood') ||
  [...facts, ...asks].some(({ question }) => question === 'wall.baseMaterial');

function askAbout(said: string): AskBack | null {
  const text = said.toLowerCase();
  const sound = SOUNDS.find(({ heard }) => heard.test(text));
  if (sound === undefined || said.length > 200) return null;
  return {
    question: 'wall.baseMaterial',
    text: `${sound.so} Which is it?`,
    readings: [
      ...sound.may.map((baseMaterial) => ({
        label: sentenceCase(MATERIAL[baseMaterial]),
        fact: {
          question: 'wall.baseMaterial' as const,
          value: { wall: { baseMaterial } },
          said,
          inferred: true,
        },
      })),
      { label: 'Still not sure' },
    ],
  };
}

const sentenceCase = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
