import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import fixingCases from '../../fixtures/reference/fixing-cases.json' with { type: 'json' };
import safetyCases from '../../fixtures/reference/safety-cases.json' with { type: 'json' };
import { answered as cautions } from '../caution/answered.ts';
import { ANSWERED as fixing } from '../fixing/answered.ts';
import { ANSWERED as layout } from '../layout/answered.ts';

/** Cases of the reference that nothing here answers yet, by id, with the reason. It must stay empty or shrink. */
const NOT_ANSWERED: Record<string, string> = {};

const published = [...fixingCases, ...safetyCases].map(({ id }) => id);
const answers = new Set<string>([...cautions, ...fixing, ...layout]);

test(`every one of the ${published.length} published cases is answered, or listed here with the reason`, () => {
  expect(published.filter((id) => !answers.has(id) && !(id in NOT_ANSWERED))).toEqual([]);
});

test('no case is listed as answered that is not published, and none as unanswered that is answered', () => {
  expect([...answers].filter((id) => !published.includes(id))).toEqual([]);
  expect(Object.keys(NOT_ANSWERED).filter((id) => answers.has(id))).toEqual([]);
});

test('each case of the cautions is named by a test that runs it', () => {
  const folder = new URL('../', import.meta.url);
  const texts = ['caution', 'wall', 'layout'].flatMap((room) =>
    readdirSync(new URL(`${room}/`, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.test.ts'))
      .map((name) => readFileSync(new URL(`${room}/${name}`, folder), 'utf8')),
  );
  expect(cautions.filter((id) => !texts.some((text) => text.includes(`'${id}'`)))).toEqual([]);
});
