import type { JobSoFar } from '../../../core/job.ts';
import { kg, mm } from '../../../core/quantity.ts';
import { isQuestionName } from '../../../flows/questions/all.ts';
import type { Listening, Reading } from '../../../flows/reading.ts';

/** A row of the reference sayings, as the file's own note describes it. */
export type Saying = {
  id?: string;
  q: string;
  say: string;
  known?: Record<string, string | number>;
  points?: [number, number][];
  tol?: number;
  reject?: boolean;
  unknown?: string;
  partial?: boolean;
  ask?: boolean;
  or?: string;
  greet?: boolean;
  back?: boolean;
  explain?: boolean;
  reset?: boolean;
  given?: Record<string, number>;
};

type Outcome = 'understood' | 'asked back' | 'misunderstood';
export type Scored = { outcome: Outcome; passes: boolean; why: string };

/** The conversation a row is said in. */
export function listeningOf({ q, given }: Saying): Listening {
  const known: JobSoFar = {};
  if (given?.['piece.widthMm'] !== undefined) known.piece = { widthMm: mm(given['piece.widthMm']) };
  if (q === 'after-mass') known.piece = { ...known.piece, massKg: kg(13) };
  const awaiting =
    q === 'any' ? 'piece.size' : q === 'after-mass' ? 'piece.size' : isQuestionName(q) ? q : null;
  return {
    awaiting,
    known,
    unit: 'mm',
    lastAnswered: q === 'after-mass' ? 'piece.massKg' : null,
    hasPlan: false,
  };
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

function merge(into: Record<string, unknown>, from: Record<string, unknown>): Record<string, unknown> {
  for (const [key, value] of Object.entries(from)) {
    const before = into[key];
    into[key] =
      isRecord(value) && !Array.isArray(value) && isRecord(before) ? merge({ ...before }, value) : value;
  }
  return into;
}

/** The facts of a reading as one job. */
export function jobOf(reading: Reading): Record<string, unknown> {
  return reading.facts.reduce<Record<string, unknown>>(
    (job, fact) => merge(job, structuredClone(fact.value)),
    {},
  );
}

export function at(job: unknown, path: string): unknown {
  return path.split('.').reduce<unknown>((held, key) => (isRecord(held) ? held[key] : undefined), job);
}

function near(got: unknown, want: string | number, tolerance: number): boolean {
  return typeof want === 'number'
    ? typeof got === 'number' && Math.abs(got - want) <= tolerance + 1e-9
    : got === want;
}

function pointsAgree(job: unknown, { points = [], tol = 0, given }: Saying): boolean {
  const got = at(job, 'piece.hanging.points');
  const width = given?.['piece.widthMm'];
  if (!Array.isArray(got) || got.length !== points.length) return false;
  return points.every(([x, y], index) => {
    const point: unknown = got[index];
    const across =
      x === 0.5
        ? near(at(point, 'fromCentreMm'), 0, tol)
        : x < 0
          ? near(at(point, 'fromRightMm'), -x, tol) ||
            (width !== undefined && near(at(point, 'fromLeftMm'), width + x, tol))
          : near(at(point, 'fromLeftMm'), x, tol) ||
            (width !== undefined && near(at(point, 'fromRightMm'), width - x, tol));
    return across && near(at(point, 'fromTopMm'), y, tol);
  });
}

function wrongs(row: Saying, job: unknown): string[] {
  const wrong = Object.entries(row.known ?? {}).flatMap(([path, want]) => {
    const got = at(job, path);
    return near(got, want, row.tol ?? 0) ? [] : [`${path} is ${JSON.stringify(got)}, not ${want}`];
  });
  if (row.points && !pointsAgree(job, row))
    wrong.push(`points are ${JSON.stringify(at(job, 'piece.hanging.points'))}`);
  return wrong;
}

/** Understood, asked back, or misunderstood (something wrong was recorded, or what can't be an answer was). */
export function score(row: Saying, reading: Reading): Scored {
  const job = jobOf(reading);
  const shown = JSON.stringify({
    intent: reading.intent,
    job,
    asks: reading.asks.map((ask) => ask.text),
    refused: reading.refused,
  });
  const understood = (passes: boolean): Scored => ({
    outcome: passes ? 'understood' : 'asked back',
    passes,
    why: shown,
  });
  const recordedNothing = reading.facts.length === 0;
  if (row.greet) return understood(reading.intent === 'greet');
  if (row.back) return understood(reading.intent === 'back');
  if (row.explain) return understood(reading.intent === 'why');
  if (row.reset) return understood(reading.intent === 'start-over');
  if (row.unknown !== undefined) {
    if (!recordedNothing) return { outcome: 'misunderstood', passes: false, why: shown };
    return understood(reading.intent === 'dont-know');
  }
  if (row.reject)
    return {
      outcome: recordedNothing ? 'understood' : 'misunderstood',
      passes: recordedNothing && reading.refused.length + reading.asks.length > 0,
      why: shown,
    };
  if (row.ask)
    return {
      outcome: recordedNothing ? 'asked back' : 'misunderstood',
      passes: recordedNothing && reading.asks.length > 0,
      why: shown,
    };
  if (row.partial && !row.known) {
    const partial = reading.facts.some((fact) => fact.partial !== undefined);
    return {
      outcome: partial ? 'understood' : 'asked back',
      passes: partial || reading.asks.length > 0,
      why: shown,
    };
  }
  const wrong = wrongs(row, job);
  if (wrong.length === 0) return { outcome: 'understood', passes: true, why: shown };
  const recordedWrong = wrong.some(
    (each) => !each.includes(' is undefined') && !each.includes('are undefined'),
  );
  return {
    outcome: recordedWrong ? 'misunderstood' : 'asked back',
    passes: row.or !== undefined && !recordedWrong,
    why: `${wrong.join('; ')} — ${shown}`,
  };
}
