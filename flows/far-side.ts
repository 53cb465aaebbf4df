import type { Understand } from './reading.ts';

/**
 * How thick the wall is, is asked of who has not looked at its other side, and "or look there and tell me":
 * what answers no thickness is heard as told of that side.
 */
export const withFarSide =
  (understand: Understand): Understand =>
  (said, listening) => {
    const reading = understand(said, listening);
    const isAsked = listening.awaiting === 'wall.thicknessMm' && listening.known.wall?.farSide === 'unknown';
    if (!isAsked || reading.facts.length + reading.asks.length > 0 || !UNHEARD.has(reading.intent))
      return reading;
    const far = understand(said, { ...listening, awaiting: 'wall.farSide' });
    const isTold = [...far.facts, ...far.asks].some(({ question }) => OF_THE_FACES.has(question));
    return isTold ? far : reading;
  };

const UNHEARD: ReadonlySet<string> = new Set(['answer', 'not-understood', 'none-of-these', 'no']);
const OF_THE_FACES: ReadonlySet<string> = new Set(['wall.farSide', 'wall.accessories']);
