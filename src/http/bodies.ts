import { checkRequestSchema, checkSchema } from '../schema/check.ts';
import { anyJobSchema, groupJobSchema } from '../schema/group-job.ts';
import { jobSchema } from '../schema/job.ts';
import { messageSchema } from '../schema/message.ts';
import { planSchema } from '../schema/plan.ts';
import { problemSchema } from '../schema/problem.ts';
import { answerSchema, loggedPlanSchema } from '../schema/reply.ts';

/** The bodies that routes take and give, by their names in the description. */
export const BODIES = {
  Answer: answerSchema,
  AnyJob: anyJobSchema,
  Check: checkSchema,
  CheckRequest: checkRequestSchema,
  GroupJob: groupJobSchema,
  Job: jobSchema,
  LoggedPlan: loggedPlanSchema,
  Message: messageSchema,
  Plan: planSchema,
  Problem: problemSchema,
} as const;

export type SchemaName = keyof typeof BODIES;
