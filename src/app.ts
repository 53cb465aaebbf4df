import { Hono } from 'hono';
import { HTTPException } from 'hono/http-exception';
import { whatIf } from '../core/what-if/what-if.ts';
import { askKeyPage } from './chat/ask-key.ts';
import { ASSET_TYPES } from './chat/asset-files.ts';
import { chatPage } from './chat/page.ts';
import type { DoorEnv, Doors } from './doors.ts';
import { jsonBody } from './http/json-body.ts';
import { type ProblemName, problem, problemOfStatus } from './http/problem.ts';
import { requestLog } from './http/request-log.ts';
import { securityHeaders } from './http/security-headers.ts';
import { openApi } from './openapi/openapi.ts';
import { neutralDoor } from './platforms/neutral/door.ts';
import { checkRequestSchema } from './schema/check.ts';
import { anyJobSchema } from './schema/group-job.ts';
import { cautionJson, planJson } from './schema/plan-json.ts';
import { admit } from './who/admit.ts';
import { refusedLocally } from './who/local-only.ts';
import { crewOfPage, keepKey } from './who/session.ts';

/** The routes (contract, section 2), the same on Node and in workerd: nothing here knows which one it is. */
export function appOf(doors: Doors): Hono<DoorEnv> {
  const { config, crewOf, planOf, checkOf } = doors;
  const app = new Hono<DoorEnv>();
  const admitted = admit(doors);

  app.use(requestLog(doors.now, doors.log));
  app.use(securityHeaders);
  app.use(async (c, next) => {
    const refused = config.keys.length === 0 ? refusedLocally(c.req.raw) : null;
    return refused === null ? next() : problem('wrong-host', refused);
  });

  app.get('/', async (c) => c.html((await crewOfPage(c, doors)) === null ? askKeyPage(false) : chatPage()));
  app.post('/session', async (c) => (await keepKey(c, doors)) ?? c.html(askKeyPage(true), 401));
  app.get('/chat/:file', async (c) => {
    const type = Object.hasOwn(ASSET_TYPES, c.req.param('file'))
      ? ASSET_TYPES[c.req.param('file')]
      : undefined;
    if (type === undefined) return problem('not-found', 'There is nothing at this address.');
    const headers = { 'content-type': type, 'cache-control': 'no-cache' };
    return c.body(await doors.asset(c.req.param('file')), 200, headers);
  });

  app.post('/v1/messages', admitted, (c) => neutralDoor(c, crewOf));
  app.post('/v1/plans', admitted, async (c) => {
    const job = await jsonBody(c, anyJobSchema);
    return job instanceof Response ? job : c.json(planJson(whatIf(job, planOf(job), planOf)));
  });
  app.post('/v1/checks', admitted, async (c) => {
    const asked = await jsonBody(c, checkRequestSchema);
    if (asked instanceof Response) return asked;
    const check = checkOf(asked.job, asked.measured);
    return c.json({ ...check, cautions: check.cautions.map(cautionJson) });
  });
  app.get('/v1/plans/:id', admitted, async (c) => {
    const plan = await crewOf(c.get('admitted').crew).plan(c.req.param('id'));
    if (plan === null) return problem('not-found', 'This crew has no plan of this id.');
    return c.body(plan, 200, { 'content-type': 'application/json' });
  });

  const description = JSON.stringify(openApi(config.keys.length > 0));
  app.get('/openapi.json', (c) => c.body(description, 200, { 'content-type': 'application/json' }));
  app.get('/healthz', (c) => c.json({ ok: true }));

  app.notFound((c) => notServed(app, c.req.path));
  app.onError(faultOf);
  return app;
}

/** What a library refuses keeps its status; anything else is our fault, and says nothing of its cause. */
function faultOf(error: Error): Response {
  const name = error instanceof HTTPException ? problemOfStatus(error.status) : 'fault';
  return problem(name, FAULT_DETAILS[name] ?? 'This could not be read.');
}

const FAULT_DETAILS: Partial<Record<ProblemName, string>> = {
  fault: 'Something went wrong here, not with what you sent. Nothing was recorded; try again.',
};

/** Another method of a known path is 405 with those it has; any other path is 404. */
function notServed(app: Hono<DoorEnv>, path: string): Response {
  const methods = ['GET', 'POST'].filter((method) =>
    app.router.match(method, path)[0].some(([[, route]]) => route.method !== 'ALL'),
  );
  if (methods.length === 0) return problem('not-found', 'There is nothing at this address.');
  const allow = methods.flatMap((method) => (method === 'GET' ? ['GET', 'HEAD'] : [method])).join(', ');
  return problem('wrong-method', `Here only ${allow} is answered.`, { headers: { allow } });
}
