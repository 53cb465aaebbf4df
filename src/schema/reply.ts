import { z } from 'zod';
import { FURTHER_QUESTION_NAMES, QUESTION_NAMES } from '../../flows/question.ts';
import { jobSoFarSchema } from './job.ts';
import { crossCheckSchema, fixingSchema, markSchema, planSchema, verdictSchema } from './plan.ts';

const text = z.string();
const questionName = z.enum([...QUESTION_NAMES, ...FURTHER_QUESTION_NAMES]);
const linked = { text, alt: z.string(), url: z.string() };

/** Every reply has `text`, complete in itself; the rest is for a client that can show more. */
const replySchema = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('text'), text }),
    z.strictObject({
      kind: z.literal('question'),
      question: questionName,
      text,
      expects: z.enum([
        'text',
        'choice',
        'length',
        'mass',
        'size',
        'points',
        'yes-no',
        'number',
        'year',
        'place',
        'accessories',
      ]),
      choices: z.array(z.strictObject({ value: z.string(), label: z.string() })),
    }),
    z.strictObject({
      kind: z.literal('caution'),
      id: z.string(),
      severity: z.enum(['stop', 'warn', 'note']),
      text,
      basis: z.array(z.string()),
    }),
    z.strictObject({
      kind: z.literal('marks'),
      text,
      marks: z.array(markSchema),
      crossChecks: z.array(crossCheckSchema),
      unit: z.enum(['mm', 'cm', 'm', 'in']).describe('What the person measures in.'),
    }),
    z.strictObject({ kind: z.literal('fixing'), text, fixing: fixingSchema }),
    z.strictObject({
      kind: z.literal('table'),
      text,
      columns: z.array(z.string()),
      rows: z.array(z.array(z.string())),
    }),
    z.strictObject({ kind: z.literal('picture'), ...linked }),
    z.strictObject({ kind: z.literal('document'), ...linked }),
    z.strictObject({ kind: z.literal('plan'), text, id: z.string(), verdict: verdictSchema }),
  ])
  .meta({ id: 'Reply' });

/** The answer to a message (contract, section 3). */
export const answerSchema = z
  .strictObject({
    conversation: z.string(),
    turn: z.int(),
    replies: z.array(replySchema),
    awaiting: questionName.nullable().describe('The question now open.'),
    known: jobSoFarSchema,
    plan: z.string().nullable().describe('The id of the logged plan, once there is one.'),
  })
  .meta({ id: 'Answer' });

/** A plan as it was logged. A stop may be logged before the whole job is known. */
export const loggedPlanSchema = planSchema
  .extend({ id: z.string(), job: jobSoFarSchema, conversation: z.string(), at: z.string() })
  .meta({ id: 'LoggedPlan' });
