/** RFC 9457: every error leaves as `application/problem+json` and changes nothing. */
export const PROBLEMS = {
  'bad-json': { status: 400, title: 'The body is not JSON' },
  unauthorised: { status: 401, title: 'No valid key or signature' },
  'wrong-host': { status: 403, title: 'Not a request this server answers' },
  'not-found': { status: 404, title: 'Nothing here' },
  'wrong-method': { status: 405, title: 'Not with this method' },
  erased: { status: 410, title: 'Erased' },
  'too-large': { status: 413, title: 'The body is too large' },
  'not-json': { status: 415, title: 'Only application/json is read' },
  'bad-field': { status: 422, title: 'A field is missing or cannot be read' },
  conflict: { status: 422, title: 'This id was used for something else' },
  fault: { status: 500, title: 'A fault of the program' },
} as const;

export type ProblemName = keyof typeof PROBLEMS;

/** What is wrong with one field: where, what was looked for, what came, and what would do. */
export type FieldError = { path: string; expected: string; received?: string; example: unknown };

export const PROBLEM_TYPE = '/problems/';
export const PROBLEM_MEDIA_TYPE = 'application/problem+json';

/** The response for a problem. `detail` is shown to whoever asked: it holds no secret and no stack. */
export function problem(
  name: ProblemName,
  detail: string,
  more: { errors?: FieldError[]; headers?: Record<string, string> } = {},
): Response {
  const { status, title } = PROBLEMS[name];
  const body = {
    type: `${PROBLEM_TYPE}${name}`,
    title,
    status,
    detail,
    ...(more.errors && { errors: more.errors }),
  };
  return new Response(JSON.stringify(body), {
    status,
    headers: { 'content-type': PROBLEM_MEDIA_TYPE, ...more.headers },
  });
}

/** The problem that has a status, for errors a library threw; a fault when none has. */
export function problemOfStatus(status: number): ProblemName {
  const names = Object.keys(PROBLEMS) as ProblemName[];
  return names.find((name) => PROBLEMS[name].status === status) ?? 'fault';
}
