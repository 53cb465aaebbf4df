import { expect } from 'vitest';
import type { JobSoFar } from '../../../core/job.ts';
import type { QuestionName } from '../../../flows/question.ts';
import type { AskBack, Intent, Listening, Reading } from '../../../flows/reading.ts';
import { understand } from '../../../flows/understand/understand.ts';
import { at, jobOf } from './score.ts';

/** What must come of a saying: fields of the job; "ask" and "reject" record nothing; else the intent. */
export type Want = Record<string, unknown> | 'ask' | 'reject' | Exclude<Intent, 'answer'>;
export type Row = readonly [awaiting: QuestionName | null, say: string, want: Want];

type Setting = {
  known?: JobSoFar;
  lastAnswered?: QuestionName;
  hasPlan?: boolean;
  offered?: AskBack;
  unit?: 'mm' | 'in';
};

export function hear(say: string, awaiting: QuestionName | null, setting: Setting = {}): Reading {
  const listening: Listening = {
    awaiting,
    known: setting.known ?? {},
    unit: setting.unit ?? 'mm',
    lastAnswered: setting.lastAnswered ?? null,
    hasPlan: setting.hasPlan ?? false,
    ...(setting.offered === undefined ? {} : { offered: setting.offered }),
  };
  return understand(say, listening);
}

export function expectHeard(reading: Reading, want: Want): void {
  if (want === 'ask') {
    expect(reading.facts).toEqual([]);
    expect(reading.asks.length).toBeGreaterThan(0);
    return;
  }
  if (want === 'reject') {
    expect(reading.facts).toEqual([]);
    expect(reading.refused.length).toBeGreaterThan(0);
    return;
  }
  if (typeof want === 'string') {
    expect(reading.intent).toBe(want);
    return;
  }
  const job = jobOf(reading);
  for (const [path, value] of Object.entries(want)) {
    const got = at(job, path);
    if (typeof value === 'number') expect(got, path).toBeCloseTo(value, 1);
    else expect(got, path).toEqual(value);
  }
}
