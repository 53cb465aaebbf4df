import type { Check, Measured } from '../../core/check.ts';
import type { GroupJob } from '../../core/group-job.ts';
import type { Job } from '../../core/job.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { newtons } from '../../core/quantity.ts';
import { appOf } from '../../src/app.ts';
import { readConfig } from '../../src/config.ts';
import type { CrewMessage } from '../../src/crew-face.ts';
import type { LogLine } from '../../src/http/log-line.ts';
import { fakeCrews } from './fake-crew.ts';

export type AppUnderTest = {
  request: (path: string, init?: RequestInit) => Promise<Response>;
  taken: Map<string, CrewMessage[]>;
  lines: LogLine[];
  jobs: (Job | GroupJob)[];
  /** Milliseconds since 1970; a test may move it. */
  clock: { now: number };
  break: (error: Error) => void;
};

/** The moment of the published Standard Webhooks vector. */
const VECTOR_TIME_S = 1614265330;

export const KEYED = {
  WALLHAND_KEYS: [
    'harbour:harbour-key',
    'hill:hill-key',
    'harbour:whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw',
    // printf %s hashed-key | sha256sum
    'hashed:sha256:a4ae87b73fa5645e6aee415a6f72be4dcbd99d057a7b40cb1b867c181d179260',
  ].join(','),
  WALLHAND_SECRET: 'a secret of the tests, long enough',
};

/** The app with a crew, a plan and a clock that are not real; everything between them is. */
export async function appUnderTest(env: Record<string, string> = {}): Promise<AppUnderTest> {
  const read = await readConfig(env);
  if (!read.ok) throw new Error(read.refused.join(' '));
  const { crewOf, taken } = fakeCrews();
  const lines: LogLine[] = [];
  const jobs: (Job | GroupJob)[] = [];
  const clock = { now: VECTOR_TIME_S * 1000 };
  let broken: Error | null = null;
  const app = appOf({
    config: read.config,
    crewOf,
    planOf: (job) => {
      if (broken) throw broken;
      jobs.push(job);
      return EMPTY_PLAN;
    },
    checkOf: (_job: Job | GroupJob, measured: Measured): Check => ({
      verdict: 'go',
      marks: (measured.marks ?? []).map(({ id, fromLeftMm, upMm }) => ({
        id,
        offByMm: { across: fromLeftMm, up: upMm },
      })),
      tiltDeg: null,
      fixing: null,
      cautions: [],
      text: 'as measured',
    }),
    now: () => clock.now,
    log: (line) => lines.push(line),
    asset: async (file) => `the bytes of ${file}`,
  });
  return {
    request: async (path, init) => app.request(path, init),
    taken,
    lines,
    jobs,
    clock,
    break: (error) => {
      broken = error;
    },
  };
}

const EMPTY_PLAN: Plan = {
  verdict: 'care',
  frame: null,
  marks: [],
  crossChecks: [],
  actions: { weightN: newtons(0), perMark: [] },
  fixing: null,
  alternatives: [],
  rejected: [],
  cautions: [
    {
      id: 'C-SV-1',
      severity: 'warn',
      text: 'Scan and isolate.',
      basis: [{ id: 'our-choice', title: 'A declared choice', at: 'test', standing: 'our-choice' }],
    },
  ],
  clear: [],
  assumptions: [{ field: 'wall.finish.thicknessMm', value: 12, because: 'not said' }],
  advice: [],
  steps: [],
  tools: [],
  shopping: [],
  why: [],
  basis: [],
};

/** A POST of JSON, as text when it must be exactly so. */
export function posted(body: unknown, headers: Record<string, string> = {}): RequestInit {
  return {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  };
}
