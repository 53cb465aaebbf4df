import { readdirSync } from 'node:fs';
import { expect, onTestFinished, test } from 'vitest';
import { openCrews } from '../../../src/crews.ts';
import { tempFolder } from '../ledger/temp-folder.ts';
import { type Body, message } from './message.ts';
import { tinyFlow } from './tiny-flow.ts';

const openTemp = (folder = tempFolder()) => {
  const crews = openCrews(folder, tinyFlow);
  onTestFinished(() => crews.close());
  return { ...crews, folder };
};

test('each crew has a ledger of its own, and sees nothing of another', async () => {
  const { crewOf, folder } = openTemp();
  await crewOf('north').handle(message('hall', 'm1', 'AU'));
  const planned = await crewOf('north').handle(message('hall', 'm2', 'plan'));
  const other = await crewOf('south').handle(message('hall', 'm1', 'hm'));
  expect(other).toMatchObject({ ok: true, replayed: false });
  expect((JSON.parse(other.ok ? other.body : '') as Body).known).toEqual({});
  const { plan } = JSON.parse(planned.ok ? planned.body : '') as Body;
  expect(await crewOf('north').plan(plan ?? '')).toContain('"verdict":"stop"');
  expect(await crewOf('south').plan(plan ?? '')).toBeNull();
  expect(readdirSync(folder).filter((name) => name.endsWith('.sqlite'))).toEqual([
    'north.sqlite',
    'south.sqlite',
  ]);
});

test.each(['', '../north', 'North', 'a/b', 'x'.repeat(41), 'north.sqlite'])(
  'a crew is never called %j',
  (name) => {
    expect(() => openTemp().crewOf(name)).toThrow(/A crew's name is/);
  },
);

test('two processes never write one ledger: the second is told so in a sentence', () => {
  const { folder, crewOf } = openTemp();
  crewOf('north');
  expect(() => openTemp(folder).crewOf('north')).toThrow(/is in use by another process/);
  expect(() => openTemp(folder).crewOf('south')).not.toThrow();
});

test('the same message sent twice at once is one turn with one answer', async () => {
  const { crewOf } = openTemp();
  const crew = crewOf('north');
  const twice = await Promise.all([
    crew.handle(message('hall', 'm1', '24 kg')),
    crew.handle(message('hall', 'm1', '24 kg')),
  ]);
  expect(twice.map((handled) => handled.ok && handled.body)).toEqual(
    Array(2).fill(twice[0].ok && twice[0].body),
  );
  expect(twice.map((handled) => handled.ok && handled.replayed)).toEqual([false, true]);
});
