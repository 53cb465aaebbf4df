import type { Caution } from '../plan-shape.ts';
import { basisOf, type Sourced, sourced } from '../sources.ts';
import { PLATE_STEEL } from '../wall/stud-setback.ts';

/** What somebody says while they work, that no field of a job holds. */
export type WorkEvent =
  | 'steel-behind-board'
  | 'suspect-dust'
  | 'tape-for-dust'
  | 'weak-hanger'
  | 'common-property'
  | 'hidden-things'
  | 'wall-heating';

const practice = sourced(0, 'common-practice', 'what to do when it happens', 'common-practice');
const essentials = sourced(0, 'HSE-A0', 'no sweeping, class H vacuum', 'read-secondary');

type Cited = Omit<Sourced<unknown>, 'value'>;

const said = (
  id: string,
  severity: Caution['severity'],
  text: string,
  record: Cited,
  clears?: string,
): Caution => ({ id, severity, text, basis: [basisOf(record)], ...(clears !== undefined && { clears }) });

/** The caution for each event; stops first come with what clears them. */
export const EVENT_CAUTIONS: Record<WorkEvent, Caution> = {
  'steel-behind-board': said(
    'C-SV-5',
    'stop',
    'Stop. Steel just behind the board is usually put there to protect a cable or pipe; do not press harder. Move well away from it and scan again.',
    PLATE_STEEL,
    'Another spot, away from the plate, or an upright line on the magnet that shows it is a steel stud.',
  ),
  'suspect-dust': said(
    'C-AB-5',
    'stop',
    "Stop. Don't sweep, and don't use a household vacuum. Keep people out, wet it lightly, shut the room and get a licensed asbestos professional.",
    essentials,
    'A licensed professional who has cleaned up and cleared the room.',
  ),
  'tape-for-dust': said(
    'C-SI-3',
    'note',
    'Tape and an envelope are handy for mess. They do not protect your lungs.',
    practice,
  ),
  'weak-hanger': said(
    'C-HG-3',
    'stop',
    'Not for this weight: a sawtooth, a nail alone or an adhesive strip is for 5 kg at the most. Put strap rings on the frame.',
    practice,
    'Two rings or strap hangers screwed into solid frame.',
  ),
  'common-property': said(
    'C-GT-6',
    'stop',
    'Common property is not yours to drill.',
    practice,
    'A yes from the body that owns it.',
  ),
  'hidden-things': said(
    'C-GT-7',
    'stop',
    'Too much is hidden in a pocket-door, cistern, boiler, flue or meter wall. Choose another wall, or a picture rail.',
    practice,
    'Another wall.',
  ),
  'wall-heating': said(
    'C-GT-8',
    'stop',
    'Wall heating: a hole can cut the pipe. Choose another wall, or have the pipes traced and marked.',
    practice,
    'The heating pipes traced and marked by whoever put them in, or another wall.',
  ),
};
