import type { Job, JobSoFar } from '../core/job.ts';
import type { Plan } from '../core/plan-shape.ts';
import { laidOver } from './merge.ts';
import type { QuestionName } from './question.ts';
import type { Heard } from './questions/shape.ts';
import { wholeJob } from './whole-job.ts';

type Doubt = {
  question: QuestionName;
  isMissing: (job: Job) => boolean;
  oneWay: JobSoFar;
  theOther: JobSoFar;
};

/**
 * What is assumed and said unless it decides something: the plan is worked out both ways, and the question is
 * asked only when the two differ in what to buy, what to heed, or whether to drill at all.
 */
const DOUBTS: readonly Doubt[] = [
  {
    question: 'wall.cores',
    isMissing: ({ wall }) =>
      (wall.baseMaterial === 'clay-brick' || wall.baseMaterial === 'concrete-block') &&
      wall.cores === undefined,
    oneWay: { wall: { cores: 'solid' } },
    theOther: { wall: { cores: 'unknown' } },
  },
  {
    question: 'piece.glass',
    isMissing: ({ piece }) =>
      (piece.kind === 'mirror' || piece.kind === 'picture') && piece.glass === undefined,
    oneWay: { piece: { glass: 'safety' } },
    theOther: { piece: { glass: 'plain' } },
  },
  {
    question: 'crew.people',
    isMissing: ({ crew }) => crew?.people === undefined,
    oneWay: { crew: { people: 2 } },
    theOther: { crew: { people: 1 } },
  },
];

/** The first question whose answer would change this plan and is not there; the next is looked at after its answer. */
export function decidingOf(job: Job, heard: Heard, planOf: (job: Job) => Plan): QuestionName | null {
  const open = DOUBTS.filter((doubt) => doubt.isMissing(job) && !heard.unknown.has(doubt.question));
  return open.find((doubt) => decides(doubt, job, planOf))?.question ?? null;
}

function decides(doubt: Doubt, job: Job, planOf: (job: Job) => Plan): boolean {
  const [one, other] = [doubt.oneWay, doubt.theOther].map((part) => wholeJob(laidOver(job, part)));
  if (!one || !other) return false;
  return whatMatters(planOf(one)) !== whatMatters(planOf(other));
}

/** Of two stops only what stops matters: nobody is asked for glass when the hangers are off the frame. */
function whatMatters({ verdict, fixing, cautions }: Plan): string {
  if (verdict === 'stop')
    return JSON.stringify(cautions.flatMap(({ id, severity }) => (severity === 'stop' ? [id] : [])));
  const heeded = cautions.filter((each) => each.severity !== 'note').map(({ id, text }) => `${id} ${text}`);
  return JSON.stringify([
    verdict,
    fixing?.fastener,
    fixing?.plug,
    fixing?.screw,
    fixing?.count,
    heeded.sort(),
  ]);
}
