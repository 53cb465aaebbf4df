import { checkOf } from '../core/check.ts';
import { planOfAny } from '../core/plan-of-pieces.ts';
import { appOf } from './app.ts';
import { readConfig } from './config.ts';
import { type CrewNamespace, crewsIn } from './crew-object.ts';

export { CrewObject } from './crew-object.ts';

/** The chat page's files, kept by the platform; the Worker runs first, so that its headers are on them. */
type Assets = { fetch: (url: string) => Promise<Response> };
type Env = { CREW: CrewNamespace; ASSETS: Assets } & Record<string, unknown>;
type Serve = (request: Request) => Response | Promise<Response>;

/** The same routes as on Node. A configuration that is refused answers everything with the reason, which holds no secret. */
const serveWith = async (env: Env): Promise<Serve> => {
  const read = await readConfig(env);
  if (!read.ok) {
    const refused = `${read.refused.join('\n')}\n`;
    console.error(refused);
    return () => new Response(refused, { status: 503, headers: { 'content-type': 'text/plain' } });
  }
  const app = appOf({
    ...{ config: read.config, crewOf: crewsIn(env.CREW), planOf: planOfAny, checkOf, now: Date.now },
    asset: async (file) => (await env.ASSETS.fetch(`https://assets.local/${file}`)).text(),
    log: (line) => console.log(JSON.stringify(line)),
  });
  return (request) => app.fetch(request);
};

/** Made at the first request: Workers refuse timers and randomness while a module loads. */
let serving: Promise<Serve> | null = null;

export default {
  fetch: async (request: Request, env: Env): Promise<Response> => {
    serving ??= serveWith(env);
    return (await serving)(request);
  },
};
