import type { Hanging } from '../../piece/piece.ts';

/** How frameless glass sits in its rail and clips. Common practice, no source. */
export function clipsAdvice(hanging: Hanging): string[] {
  if (hanging.by !== 'clips') return [];
  return [
    'The marks are the screws of the lower rail, which carries all of the glass; set the rail level first, and the upper clips from it.',
    'Ground edges only, 4 to 6 mm glass, soft washers or felt between glass and every metal; the clips closed until they just touch, never tightened on the glass.',
  ];
}
