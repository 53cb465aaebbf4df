import type { AskBack, Reading, Understand } from './reading.ts';
import { SOUNDS } from './sounds.ts';
import { MATERIAL } from './wording/words.ts';

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
