import type { Check, Measured } from '../core/check.ts';
import type { GroupJob } from '../core/group-job.ts';
import type { Job } from '../core/job.ts';
import type { Plan } from '../core/plan-shape.ts';
import type { Config } from './config.ts';
import type { CrewOf } from './crew-face.ts';
import type { LogLine } from './http/log-line.ts';

/** All that the app is given: no module of it reaches for a clock, a file or the environment. */
export type Doors = {
  config: Config;
  crewOf: CrewOf;
  planOf: (job: Job | GroupJob) => Plan;
  checkOf: (job: Job | GroupJob, measured: Measured) => Check;
  /** Milliseconds since 1970. */
  now: () => number;
  log: (line: LogLine) => void;
  /** A file of the chat page, kept by whichever engine starts the app. Called with known names only. */
  asset: (file: string) => Promise<string>;
};

/** What the middleware found out about a request, for the routes behind it. */
export type Admitted = {
  crew: string;
  /** `webhook-id` of a signed request, which is the message's id. */
  signedId: string | null;
  /** Read already, because a signature covers it. */
  body: Uint8Array | undefined;
};

export type DoorEnv = { Variables: { admitted: Admitted } };
