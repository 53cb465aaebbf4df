import type { Hanging } from '../../piece/piece.ts';
import type { Millimetres } from '../../quantity.ts';

/** What must be matched between a hanger and the head of its screw; nothing for a ring. Common practice. */
export function hangerNote(by: Hanging['by'], shankMm: Millimetres): string[] {
  if (by === 'cord') return ['A hook with a groove and a keeper under the screw’s head, not a bare screw.'];
  if (by !== 'keyholes') return [];
  const shank = Math.round(shankMm * 10) / 10;
  return [
    `The head must pass the round of the keyhole and not the slot, and the slot must take a ${shank} mm shank: try it on the bench.`,
  ];
}
