import type { Caution, Severity } from '../plan-shape.ts';
import { uniqueBases } from '../sources.ts';
import { forPieces, saidOnce } from './which-pieces.ts';

const ORDER: readonly Severity[] = ['stop', 'warn', 'note'];

/** Cautions of several pieces: each id once, at its worst, in words that name the pieces where it is not all of them. */
export function groupCautions(perPiece: readonly (readonly Caution[])[]): Caution[] {
  const ids = [...new Set(perPiece.flat().map((each) => each.id))];
  const merged = ids.flatMap((id) => {
    const own = perPiece.map((cautions) => cautions.filter((each) => each.id === id));
    const worst = ORDER.find((severity) => own.flat().some((each) => each.severity === severity));
    const spoken = own.map((cautions) => cautions.filter((each) => each.severity === worst));
    return asOne(spoken);
  });
  return ORDER.flatMap((severity) => merged.filter((each) => each.severity === severity));
}

function asOne(perPiece: readonly (readonly Caution[])[]): Caution[] {
  const [first] = perPiece.flat();
  if (!first) return [];
  const texts = saidOnce(
    perPiece.map((cautions) => cautions.map((each) => each.text)),
    (text) => text,
    (text, pieces) => forPieces(pieces, text),
  );
  const clears = saidOnce(
    perPiece.map((cautions) => cautions.flatMap((each) => each.clears ?? [])),
    (text) => text,
    (text, pieces) => forPieces(pieces, text),
  );
  const { clears: _, ...rest } = first;
  return [
    {
      ...rest,
      text: texts.join(' '),
      ...(clears.length > 0 && { clears: clears.join(' ') }),
      basis: uniqueBases(perPiece.flat().flatMap((each) => [...each.basis])),
    },
  ];
}
