import type { JobSoFar } from '../core/job.ts';
import type { Entry } from './entry.ts';
import { withHangersFromLeft } from './hanger-points.ts';
import { laidOver } from './merge.ts';
import type { QuestionName } from './question.ts';
import type { DisplayUnit } from './reading.ts';

/** What the entries come to. Everything else in a conversation is derived from this. */
export type Folded = {
  /** Entries that still count: since the last start-over, less what was taken back. */
  readonly live: readonly Entry[];
  /** As said: no figure added. */
  readonly said: JobSoFar;
  /** The job so far, `fromLeftMm` added to the hangers. */
  readonly job: JobSoFar;
  readonly unit: DisplayUnit;
};

export const NOTHING_SAID: Folded = { live: [], said: {}, job: {}, unit: 'mm' };

/** The job is the fold of the entries since the last start-over. */
export function fold(entries: readonly Entry[], onto: Folded = NOTHING_SAID): Folded {
  const folded = entries.reduce(withEntry, onto);
  return folded.said === onto.said ? folded : { ...folded, job: withHangersFromLeft(folded.said) };
}

function withEntry(folded: Folded, entry: Entry): Folded {
  const unit = entry.unit ?? folded.unit;
  switch (entry.act) {
    case 'start-over':
      return { ...NOTHING_SAID, unit };
    case 'new-piece':
      return { ...told(folded.live.flatMap(keptForANewPiece)), unit };
    case 'take-back':
      return { ...told(lessTakenBack(folded.live, entry.question)), unit };
    default: {
      const live = withAdded(folded.live, entry);
      const adds = entry.value !== null && entry.act !== 'asked-back';
      const said = adds ? laidOver(folded.said, entry.value ?? {}) : folded.said;
      return { live, said, job: folded.job, unit };
    }
  }
}

/** The same entries folded afresh; the unit is the caller's to keep. */
function told(live: readonly Entry[]): Omit<Folded, 'unit'> {
  const said = live
    .filter((entry) => entry.act !== 'asked-back')
    .reduce<JobSoFar>((job, entry) => (entry.value === null ? job : laidOver(job, entry.value)), {});
  return { live, said, job: withHangersFromLeft(said) };
}

/** What was asked back stays open, and last, until its own question is answered. */
function withAdded(live: readonly Entry[], entry: Entry): readonly Entry[] {
  const last = live.at(-1);
  const isElsewhere =
    last?.act === 'asked-back' && entry.act !== 'asked-back' && entry.question !== last.question;
  return isElsewhere ? [...live.slice(0, -1), entry, last] : [...answeredBack(live), entry];
}

function answeredBack(live: readonly Entry[]): readonly Entry[] {
  return live.at(-1)?.act === 'asked-back' ? live.slice(0, -1) : live;
}

/** Taking back what was asked back drops only that; else every answer to the question goes, so it is open again. */
function lessTakenBack(live: readonly Entry[], question: QuestionName | null): readonly Entry[] {
  const last = live.at(-1);
  if (last?.act === 'asked-back' && last.question === question) return live.slice(0, -1);
  return answeredBack(live).filter((entry) => entry.question !== question);
}

/** A new piece keeps building, wall and crew; a datum said with the old place goes with it. */
function keptForANewPiece(entry: Entry): Entry[] {
  const of = entry.question ?? '';
  if (entry.act === 'confirm' || entry.act === 'acknowledge' || entry.act === 'asked-back') return [];
  if (of.startsWith('piece.') || of.startsWith('place.') || of.startsWith('proof.')) return [];
  if (entry.value === null) return [entry];
  const { building, wall, crew } = entry.value;
  return [
    { ...entry, value: { ...(building && { building }), ...(wall && { wall }), ...(crew && { crew }) } },
  ];
}
