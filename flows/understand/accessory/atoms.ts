import { ROLE_FORMS, type Role } from './roles.ts';

/** A figure, or two that belong together, with what it measures; `shared` with the fittings before it. */
export type Atom = { role: Role; n: number; m?: number; shared: boolean };

/** "Both 300 up": of the fittings before it too. */
const OF_ALL = /\b(?:both|all|each|everything|same)(?: (?:of them|at|are|is|about|the same))* *$/;

/** "600 and 1800 from the left": the first figure shares the words of the last. */
const LISTED: ReadonlySet<Role> = new Set(['left', 'right', 'along', 'up', 'high']);

/** Every figure of the words, in order, with what it measures. `listed` joins figures with "and" into one list. */
export function atomsIn(words: string, listed: boolean): Atom[] {
  const atoms: (Atom & { at: number; end: number })[] = [];
  const text = words
    .replace(/\s+/g, ' ')
    .replace(/ [()~@] /g, ' ')
    .replace(/ [()~@] /g, ' ');
  let at = 0;
  while (at < text.length) {
    const hit = text[at] === ' ' ? null : hitAt(text, at);
    if (hit === null) {
      const space = text.indexOf(' ', at);
      at = space < 0 ? text.length : space + 1;
      continue;
    }
    atoms.push({
      ...hit,
      at,
      shared: OF_ALL.test(text.slice(0, at)) || /^ (?:each|both|all)(?= |$)/.test(text.slice(hit.end)),
    });
    at = hit.end;
  }
  if (listed) shareLabels(text, atoms);
  return atoms;
}

function hitAt(text: string, at: number): (Omit<Atom, 'shared'> & { end: number }) | null {
  for (const [role, form] of ROLE_FORMS) {
    form.lastIndex = at;
    const match = form.exec(text);
    if (match === null) continue;
    const [n, m] = [Number(match[1]), match[2] === undefined ? undefined : Number(match[2])];
    return { role, n, ...(m !== undefined && { m }), end: at + match[0].length };
  }
  return null;
}

function shareLabels(text: string, atoms: (Atom & { at: number; end: number })[]): void {
  for (let at = atoms.length - 2; at >= 0; at -= 1) {
    const [one, next] = [atoms[at], atoms[at + 1]];
    if (one?.role !== 'bare' || next === undefined || !LISTED.has(next.role)) continue;
    const joint = text.slice(one.end, next.at);
    // "500 and 2200, 300 up": the comma parts what is across from what is up.
    if ((next.role === 'up' || next.role === 'high') && joint.includes(',')) continue;
    if (/^ (?:(?:and|,|&|then|or|mm|cm|also|the other|another|one|at) )*$/.test(joint))
      atoms[at] = { ...one, role: next.role };
  }
}
