import { expect, test } from 'vitest';
import { EXAMPLE_JOB } from '../../../src/schema/example-job.ts';
import { posted } from '../app-under-test.ts';
import type { AppFactory } from './messages.ts';

type Leaf = { path: string; value: unknown };

/** Every field of the described job that holds a figure, a word, or a yes or no. */
function leavesOf(value: object, path = ''): Leaf[] {
  return Object.entries(value).flatMap(([name, inner]): Leaf[] => {
    const at = path === '' ? name : `${path}.${name}`;
    return typeof inner === 'object' && inner !== null ? leavesOf(inner, at) : [{ path: at, value: inner }];
  });
}

/** What a field of each kind never is. JSON can't write the last two of a figure, but a program may try. */
const NEVER: Record<string, string[]> = {
  number: ['"840"', '"NaN"', 'null', 'true', '{}', '[]', '-1000000000', '1000000000', '1e400', '-1e400'],
  string: ['"cheese"', '""', '3', 'null', 'true', '{}', '["mirror"]'],
  boolean: ['"yes"', '"true"', '1', '0', 'null'],
};

/** The described job as text, with one field's value put in place as it is written. */
function jobWith(path: string, written: string): string {
  const job: object = structuredClone(EXAMPLE_JOB);
  const steps = path.split('.');
  const last = steps.pop() ?? '';
  const holder = steps.reduce<object>((at, step) => Reflect.get(at, step), job);
  Reflect.set(holder, last, 'PUT HERE');
  return JSON.stringify(job).replace('"PUT HERE"', written);
}

/** Each field of a job on its own: contract, section 4. */
export function fieldContract(appWith: AppFactory): void {
  test.each(leavesOf(EXAMPLE_JOB))(
    'what $path can’t be is refused there, with what is looked for and an example of it',
    async ({ path, value }) => {
      const app = await appWith();
      for (const written of NEVER[typeof value] ?? []) {
        const response = await app.request('/v1/plans', posted(jobWith(path, written)));
        const { type, detail, errors } = await response.json();
        expect([response.status, type], `${path} ${written}`).toEqual([422, '/problems/bad-field']);
        expect(errors, written).toContainEqual(
          expect.objectContaining({
            path,
            expected: expect.stringMatching(/\w/),
            example: expect.anything(),
          }),
        );
        expect(detail, written).toContain(path);
      }
      expect(app.jobs).toHaveLength(0);
    },
  );

  test.each(['', 'building', 'piece', 'piece.hanging', 'wall', 'wall.datum', 'place.up', 'crew'])(
    'a field of no meaning in the job’s %j is refused by its name, with the names there are',
    async (within) => {
      const app = await appWith();
      const job: object = structuredClone(EXAMPLE_JOB);
      const holder = within === '' ? job : within.split('.').reduce((at, step) => Reflect.get(at, step), job);
      Reflect.set(holder, 'colour', 'gold');
      const response = await app.request('/v1/plans', posted(job));
      const path = within === '' ? 'colour' : `${within}.colour`;
      expect(response.status).toBe(422);
      expect((await response.json()).errors).toContainEqual(
        expect.objectContaining({ path, expected: expect.stringContaining('there are') }),
      );
    },
  );
}
