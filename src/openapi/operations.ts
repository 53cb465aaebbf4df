import type { SchemaName } from '../http/bodies.ts';
import type { ProblemName } from '../http/problem.ts';

/** What a route takes and gives; the schemas are named here and kept in `src/schema`. */
export type Operation = {
  method: 'get' | 'post';
  path: string;
  id: string;
  summary: string;
  parameters?: object[];
  takes?: { schema: SchemaName | object; type?: string };
  /** A `type` of '' has no body. */
  gives: { status: number; description: string; schema?: SchemaName; type?: string }[];
  problems: ProblemName[];
};

const EVERYWHERE: ProblemName[] = ['wrong-host', 'fault'];
const JSON_IN: ProblemName[] = [
  ...EVERYWHERE,
  'unauthorised',
  'not-json',
  'too-large',
  'bad-json',
  'bad-field',
];

/** Names the crew of a signed request. A key belongs to one crew, so with one this can only agree. */
const CREW_PARAMETER = {
  name: 'crew',
  in: 'query',
  required: false,
  description: 'The crew of a signed request.',
  schema: { type: 'string', pattern: '^[a-z0-9-]{1,40}$' },
};

export const OPERATIONS: readonly Operation[] = [
  {
    method: 'get',
    path: '/',
    id: 'chatPage',
    summary: 'The chat page; where keys are set it asks for one once.',
    gives: [{ status: 200, description: 'A page for a phone or a desk.', type: 'text/html' }],
    problems: EVERYWHERE,
  },
  {
    method: 'post',
    path: '/session',
    id: 'keepKey',
    summary: 'Keeps a key as a cookie of one crew, for the chat page.',
    takes: {
      type: 'application/x-www-form-urlencoded',
      schema: { type: 'object', properties: { key: { type: 'string' } }, required: ['key'] },
    },
    gives: [
      { status: 303, description: 'Kept; on to the chat page.', type: '' },
      { status: 401, description: 'Not a key of this server: the page asks again.', type: 'text/html' },
    ],
    problems: [...EVERYWHERE, 'not-found', 'too-large'],
  },
  {
    method: 'post',
    path: '/v1/messages',
    id: 'sendMessage',
    summary: 'One message of a conversation in, the answer out.',
    parameters: [
      CREW_PARAMETER,
      {
        name: 'Idempotency-Key',
        in: 'header',
        required: false,
        description: 'The id of the message where the body has none.',
        schema: { type: 'string' },
      },
    ],
    takes: { schema: 'Message' },
    gives: [{ status: 200, description: 'The same bytes for the same message, for ever.', schema: 'Answer' }],
    problems: [...JSON_IN, 'conflict', 'erased'],
  },
  {
    method: 'post',
    path: '/v1/plans',
    id: 'makePlan',
    summary: 'A whole job in, of one piece or several, a plan out. Nothing is kept.',
    parameters: [CREW_PARAMETER],
    takes: { schema: 'AnyJob' },
    gives: [
      { status: 200, description: 'A plan; `stop` when it cannot or may not be done.', schema: 'Plan' },
    ],
    problems: JSON_IN,
  },
  {
    method: 'post',
    path: '/v1/checks',
    id: 'checkMarks',
    summary: 'A job and what was measured in; what is off, and by how much, out. Nothing is kept.',
    parameters: [CREW_PARAMETER],
    takes: { schema: 'CheckRequest' },
    gives: [
      { status: 200, description: 'A verdict on the marks and the fixing in the hand.', schema: 'Check' },
    ],
    problems: JSON_IN,
  },
  {
    method: 'get',
    path: '/v1/plans/{id}',
    id: 'readPlan',
    summary: 'A plan as it was logged.',
    parameters: [
      CREW_PARAMETER,
      {
        name: 'id',
        in: 'path',
        required: true,
        schema: { type: 'string' },
        description: 'As given in a reply.',
      },
    ],
    gives: [{ status: 200, description: 'The plan, its job, conversation and time.', schema: 'LoggedPlan' }],
    problems: [...EVERYWHERE, 'unauthorised', 'not-found'],
  },
  {
    method: 'get',
    path: '/openapi.json',
    id: 'description',
    summary: 'This description.',
    gives: [{ status: 200, description: 'OpenAPI 3.1.' }],
    problems: EVERYWHERE,
  },
  {
    method: 'get',
    path: '/healthz',
    id: 'health',
    summary: 'Whether the server answers.',
    gives: [{ status: 200, description: 'It does.' }],
    problems: EVERYWHERE,
  },
];
