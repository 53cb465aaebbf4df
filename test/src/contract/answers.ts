import { expect, test } from 'vitest';
import { EXAMPLE_JOB } from '../../../src/schema/example-job.ts';
import { posted } from '../app-under-test.ts';
import type { AppFactory } from './messages.ts';

/** What every answer has in common, whatever the route. */
export function answerContract(appWith: AppFactory): void {
  test.each([
    ['GET', '/nowhere', 404, 'not-found', null],
    ['POST', '/v1/nowhere', 404, 'not-found', null],
    ['GET', '/v1/plans/unknown', 404, 'not-found', null],
    ['GET', '/v1/plans/p1.svg', 404, 'not-found', null],
    ['GET', '/v1/plans/p1.pdf', 404, 'not-found', null],
    ['GET', '/v1/plans/..%2f..%2fetc', 404, 'not-found', null],
    ['GET', '/v1/plans/%00', 404, 'not-found', null],
    ['GET', '/v1/plans/%ff', 404, 'not-found', null],
    ['GET', '/slack/events', 404, 'not-found', null],
    ['GET', '/v1/messages', 405, 'wrong-method', 'POST'],
    ['DELETE', '/v1/plans/p1', 405, 'wrong-method', 'GET, HEAD'],
    ['OPTIONS', '/v1/checks', 405, 'wrong-method', 'POST'],
    ['PUT', '/', 405, 'wrong-method', 'GET, HEAD'],
  ])('%s %s is answered with %i', async (method, path, status, name, allow) => {
    const app = await appWith();
    const response = await app.request(path, { method });
    expect([response.status, response.headers.get('allow')]).toEqual([status, allow]);
    expect(await response.json()).toMatchObject({ type: `/problems/${name}`, status });
  });

  test.each(['/', '/healthz', '/openapi.json', '/chat/page.js'])(
    'HEAD %s is GET without its body',
    async (path) => {
      const app = await appWith();
      const [head, get] = [await app.request(path, { method: 'HEAD' }), await app.request(path)];
      expect([head.status, head.headers.get('content-type')]).toEqual([200, get.headers.get('content-type')]);
      expect(await head.text()).toBe('');
    },
  );

  test('every answer, an error too, forbids frames, foreign scripts and guessing its type', async () => {
    const app = await appWith();
    for (const path of ['/', '/healthz', '/nowhere', '/v1/plans/unknown']) {
      const { headers } = await app.request(path);
      expect(headers.get('content-security-policy')).toContain("default-src 'none'");
      expect(headers.get('content-security-policy')).not.toContain('unsafe');
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('referrer-policy')).toBe('same-origin');
      expect(headers.get('access-control-allow-origin')).toBeNull();
    }
  });

  test('a fault is 500 and tells neither its cause nor what was sent', async () => {
    const app = await appWith();
    app.break(new TypeError('secret at /secret/path'));
    const response = await app.request('/v1/plans', posted(EXAMPLE_JOB));
    const body = await response.text();
    expect(response.status).toBe(500);
    expect(JSON.parse(body).type).toBe('/problems/fault');
    expect(body).not.toMatch(/secret|TypeError| at /);
    expect(app.lines[0]?.fault).toMatch(/^TypeError \| at /);
    expect(app.lines[0]?.fault).not.toContain('secret at');
  });
}
