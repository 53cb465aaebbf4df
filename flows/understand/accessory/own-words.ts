import { type Outline, outlineOf } from '../words/outline.ts';
import type { Token } from '../words/token.ts';
import { markersIn } from './face.ts';
import { NAMES } from './words.ts';

/** Words of the piece, of where it hangs and of what the wall is: with no fitting beside them, they are not about one. */
const OTHERS =
  /\b(?:mirrors?|pictures?|frames?|canvas|paintings?|prints?|piece|artwork|d ?rings?|rings|hangers?|keyholes?|cord|batten|hangs?|hanging|hung|centre (?:it|of it on)|centred|put it|want it|goes|mantel|above the (?:sofa|couch|bed|sideboard)|(?:wall|ceiling|room) (?:is|height|width)|wide wall|plaster(?:ed)?|brick|block|concrete|plasterboard|drywall|studs?|kg|kilos?|lbs?|pounds|weighs?|heavy|built|rent|own it)\b/;

type Span = { from: number; to: number };

/** The stretches of a message that are about fittings, as one text, and the message that is left to other readers. */
export function ownWords(outline: Outline, asked: boolean): { text: string; rest: Outline } {
  const { text } = outline;
  const spans = spansOf(text);
  const first = spans.findIndex((span) => named(text, span));
  let own = asked;
  let figures = 0;
  const mine: Span[] = [];
  const others: Span[] = [];
  spans.forEach((span, at) => {
    const words = text.slice(span.from, span.to);
    const isNamed = named(text, span);
    const isOther = OTHERS.test(words);
    if (isNamed && !(isOther && !asked && !/<\d+>/.test(words))) {
      own = true;
      figures = 0;
    } else if (isOther || (!asked && at < first)) own = false;
    else if (markersIn(words).length > 0 && (asked || own)) own = true;
    else if (!asked && figures >= 2) own = false;
    if (own) figures += words.match(/<\d+>/g)?.length ?? 0;
    (own ? mine : others).push(span);
  });
  const told = mine.map(({ from, to }) => text.slice(from, to)).join(' ');
  return { text: told.trim(), rest: restOf(outline, others) };
}

/** Each with the mark that ends it. */
function spansOf(text: string): Span[] {
  const cuts = [...text.matchAll(/ [,;.](?= |$)/g)].map(({ index }) => index + 2);
  return [0, ...cuts]
    .map((from, at) => ({ from, to: cuts[at] ?? text.length }))
    .filter(({ from, to }) => to > from);
}

const named = (text: string, { from, to }: Span): boolean => text.slice(from, to).search(NAMES) >= 0;

function restOf(outline: Outline, others: readonly Span[]): Outline {
  const comma: Token = { kind: 'mark', text: ',', glued: false };
  const left = others.flatMap(({ from, to }) => [
    ...outline.parts
      .filter(({ start, end }) => start >= from && end <= to)
      .flatMap((part) => outline.tokens.slice(part.from, part.to)),
    comma,
  ]);
  return outlineOf(left, outline);
}
