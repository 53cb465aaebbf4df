import type { JobSoFar } from '../../core/job.ts';
import type { Choice } from '../reply.ts';
import { hangingIsWhole } from '../whole-job.ts';
import { choice, isAbsent, NOT_SURE, type Question } from './shape.ts';

export const hanging: Question = {
  asks: hangingAsks,
  expects: 'points',
  choices: [],
  choicesFor: hangingChoices,
  why: 'The screw goes where the hanger bears, so its place on the back decides each mark.',
  example: 'two rings, 95 in from each side and 240 down',
  isMissing: ({ job, unknown }) =>
    !hangingIsWhole(job.piece?.hanging) ||
    ((hooksAreOpen(job) || isOneSided(job)) && !unknown.has('piece.hanging')),
  ifUnknown: null,
  howTo:
    'Lay it face down. For each ring or slot: from the side of the frame in to its middle, and from the top of the frame down to where the hook will bear, ring pulled up tight. For a cord, pull it up hard with two fingers where the hooks will go.',
};

/** One hook or two puts the marks elsewhere; not known is reckoned as one. */
const hooksAreOpen = ({ piece }: JobSoFar): boolean =>
  piece?.hanging?.by === 'cord' && isAbsent(piece.hanging.hooksApartMm);

/** What is on the back first; then, of a whole cord, one hook. */
function hangingChoices(job: JobSoFar): readonly Choice[] {
  const known = job.piece?.hanging;
  if (known?.by === undefined && (known?.points ?? []).length === 0)
    return [
      choice('rings', 'Rings'),
      choice('keyholes', 'Keyholes'),
      choice('cord', 'A cord or wire'),
      choice('split batten', 'A split batten'),
      choice('clips', 'Clips'),
      NOT_SURE,
    ];
  return hangingIsWhole(known) && hooksAreOpen(job) ? [choice('one hook', 'One hook'), NOT_SURE] : [];
}

/** "The left ring is 95 in": the other one has not been told of. */
function isOneSided({ piece }: JobSoFar): boolean {
  const [only, other] = piece?.hanging?.points ?? [];
  return only !== undefined && other === undefined && isAbsent(only.fromCentreMm);
}

function hangingAsks({ piece }: JobSoFar): string {
  const known = piece?.hanging;
  if (piece && isOneSided({ piece }) && known?.points?.every(({ fromTopMm }) => !isAbsent(fromTopMm)))
    return 'And the other one: how far in from its own side, and how far down, in mm? If there is only one, say where from the middle it is.';
  switch (known?.by) {
    case 'cord':
      if (hangingIsWhole(known)) return 'One hook under that cord, or two and how far apart, in mm?';
      return (known.points?.length ?? 0) > 1
        ? 'How long is the cord, or how far above the rings does it pull up, in mm? And one hook, or two and how far apart?'
        : 'Where are the two ends of the cord, in from each side and down from the top, in mm? And how long is it, or how far does it pull up?';
    case 'batten':
      return 'The split batten: how far down from the top of the frame does it bear, and how long is it, in mm?';
    case 'rings':
      if (known.hanger === 'sawtooth')
        return 'The sawtooth: how far down from the top do its teeth bear, in mm? Or two rings put on instead: how far in and down?';
      return 'The rings: how far in from each side, and how far down from the top to where they bear, in mm?';
    case 'keyholes':
      return 'The keyholes: middle of each slot in from the side, and its narrow top end down from the top, in mm?';
    case 'clips':
      return 'The clips: how far in from each side and down from the top, in mm?';
    default:
      return 'How does it hang? Say what is on the back (rings, keyholes, cord, batten), how far in from each side and how far down from the top, in mm.';
  }
}
