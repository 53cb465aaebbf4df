import type { Assumption } from '../../plan-shape.ts';
import type { BoardRow } from './board-row.ts';

export const STUDS_TAKEN: Assumption = {
  field: 'wall.studs',
  value: 'unknown',
  because:
    'two studs at the closest usual spacing are reckoned with, lying as badly behind the frame as they can',
};

/** What to do first where a board or batten goes across studs. */
export function rowAdvice(row: BoardRow, batten: boolean): string[] {
  if (!row.found)
    return [
      'Find two studs first, both edges of each, neither of them straight above or below a socket, switch or pipe: this stands on them. The marks are where the hangers bear on the board, not where it is screwed to the wall.',
    ];
  return batten
    ? ['Find both edges of each stud before drilling.']
    : [
        'The marks are where the hangers bear on the board, not where it is screwed to the studs; find both edges of each stud.',
      ];
}
