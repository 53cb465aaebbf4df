import type { BaseMaterial, Cores } from '../../../core/wall/wall.ts';

const NOT_KNOWN =
  /\b(?:dunno|idk|dont know|do not know|not sure|unsure|no idea|cant (?:tell|say))\b[^,.;]*\b(?:solid|hollow|cored|cores|holes?|perforated)\b/;

/** Holes in the units, as said; null when nothing is said of them. `text` is an outline. */
export function coresIn(text: string, base: BaseMaterial | undefined): Cores | null {
  if (NOT_KNOWN.test(text)) return null;
  if (
    /\b(?:no|without|not any) (?:holes?|cores?|frogs?|voids?)\b|\bnot (?:hollow|cored|perforated|holey)\b/.test(
      text,
    )
  )
    return 'solid';
  if (
    /\b(?:core ?-? ?filled|cores? (?:are |is )?(?:all )?filled|filled (?:cores?|with (?:concrete|grout))|grouted|fully filled|reinforced and filled)\b/.test(
      text,
    )
  )
    return 'solid';
  if (
    /\b(?:holes?|holey|perforated|perforations?|cored|cores|extruded|wire ?-? ?cut|(?:ten|three|<\d+>) ?-? ?hole)\b/.test(
      text,
    )
  ) {
    return base === 'concrete-block' ? 'hollow' : 'perforated';
  }
  if (/\bhollow\b/.test(text)) return base === 'clay-brick' ? 'perforated' : 'hollow';
  if (/\bsolid\b/.test(text) && !/\bnot (?:very |too )?solid\b/.test(text)) return 'solid';
  return null;
}

/** In answer to the question about holes: also a wall that has none to speak of. */
export function coresAnswer(text: string): Cores | null {
  const said = coresIn(text, undefined);
  if (said !== null) return said;
  if (
    /\b(?:not (?:a )?brick|not masonry|no bricks?|does ?nt apply|not applicable|n ?\/ ?a|no units|its (?:plasterboard|drywall|timber|board))\b/.test(
      text,
    )
  )
    return 'unknown';
  if (/\b(?:hard|heavy|full|one piece|all through|right through)\b/.test(text)) return 'solid';
  return null;
}
