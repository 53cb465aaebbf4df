import type { Entry } from '../../flows/entry.ts';
import type { CrewDefaults } from '../../flows/step-shape.ts';

type Remembered = keyof CrewDefaults;

const OF_QUESTION: Partial<Record<string, Remembered>> = {
  'building.country': 'country',
  'crew.dustExtraction': 'dustExtraction',
};

const said = ({ value }: Entry): CrewDefaults => {
  const out: Record<string, unknown> = {
    country: value?.building?.country,
    dustExtraction: value?.crew?.dustExtraction,
  };
  for (const [key, it] of Object.entries(out)) if (it === undefined || it === 'unknown') delete out[key];
  return out as CrewDefaults;
};

/**
 * What a crew remembers for its next conversation: only what its people said outright, never what was
 * assumed, read between the lines, or remembered already. Taking an answer back forgets it.
 * Gives the same object when nothing changed, so that nothing need be written.
 */
export const rememberedAfter = (before: CrewDefaults, added: readonly Entry[]): CrewDefaults => {
  let now = before;
  for (const entry of added) {
    const forgotten = entry.act === 'take-back' && entry.question ? OF_QUESTION[entry.question] : undefined;
    if (forgotten && now[forgotten] !== undefined) {
      now = { ...now };
      delete now[forgotten];
    }
    if (entry.act !== 'set' || entry.inferred) continue;
    const news = said(entry);
    const keys = Object.keys(news) as Remembered[];
    if (keys.some((key) => news[key] !== now[key])) now = { ...now, ...news };
  }
  return now;
};
