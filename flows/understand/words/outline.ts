import type { QuestionName } from '../../question.ts';
import type { DisplayUnit } from '../../reading.ts';
import { type Found as LengthFound, lengthsIn } from '../lengths/length.ts';
import type { Token } from './token.ts';

/**
 * A message with each length as "<0>", "<1>" …, so that a pattern of words can say what a length is of:
 * "bottom <0> above the mantel". Words are as in `token.ts`: lower case, no apostrophes.
 */
export type Outline = {
  tokens: readonly Token[];
  text: string;
  /** The whole message in the readers' spelling, apostrophes gone, figures as typed; it does not shrink. */
  words: string;
  /** As typed. */
  said: string;
  unit: DisplayUnit;
  /** A word was corrected by likeness: what names a wall is then confirmed. */
  guessed: boolean;
  parts: readonly { start: number; end: number; from: number; to: number }[];
};

export type Source = Pick<Outline, 'words' | 'said' | 'unit' | 'guessed'>;

export function outlineOf(tokens: readonly Token[], source: Source): Outline {
  const { words, said, unit, guessed } = source;
  const starts = new Map(
    lengthsIn(tokens, { unit }).map((length, index) => [length.from, { index, to: length.to }]),
  );
  const parts: Outline['parts'][number][] = [];
  let text = '';
  for (let at = 0; at < tokens.length; ) {
    const length = starts.get(at);
    const to = Math.max(length?.to ?? 0, at + 1);
    if (text !== '') text += ' ';
    const start = text.length;
    text += length === undefined ? (tokens[at]?.text ?? '') : `<${length.index}>`;
    parts.push({ start, end: text.length, from: at, to });
    at = to;
  }
  return { tokens, text, words, said, unit, guessed, parts };
}

/** The length that "<n>" stands for, as the question reads it. */
export function lengthOf(
  outline: Outline,
  n: string | undefined,
  question: QuestionName,
): LengthFound | null {
  if (n === undefined) return null;
  return lengthsIn(outline.tokens, { unit: outline.unit, question })[Number(n)] ?? null;
}

const COMMA: Token = { kind: 'mark', text: ',', glued: false };

/** The message without the words of a match, so that no other reader uses them; a comma stands in their place. */
export function without(outline: Outline, match: { index: number; 0: string }): Outline {
  const end = match.index + match[0].length;
  const used = outline.parts.filter((part) => part.end > match.index && part.start < end);
  const from = used[0]?.from;
  const to = used.at(-1)?.to;
  if (from === undefined || to === undefined) return outline;
  const left = [...outline.tokens.slice(0, from), COMMA, ...outline.tokens.slice(to)];
  return outlineOf(left, outline);
}
