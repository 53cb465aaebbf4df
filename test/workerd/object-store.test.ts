import { env, evictDurableObject, runInDurableObject } from 'cloudflare:test';
import { expect, test } from 'vitest';
import { objectStore } from '../../src/ledger/object-store.ts';
import type { Store } from '../../src/ledger/store.ts';
import { crewContract } from '../src/crew/crew-contract.ts';
import { keepingContract } from '../src/crew/keeping-contract.ts';
import { storeContract } from '../src/ledger/store-contract.ts';

/** A fresh object for each claim, named by it. */
const inObject = (name: string, holds: (store: Store) => void): Promise<void> =>
  runInDurableObject(env.LEDGER.getByName(name), (_, state) => holds(objectStore(state.storage)));

test.each(storeContract)('in a Durable Object a store $claim', ({ claim, holds }) => inObject(claim, holds));
test.each([...crewContract, ...keepingContract])('in a Durable Object a crew $claim', ({ claim, holds }) =>
  inObject(claim, holds),
);

test('what a Durable Object holds is there when it comes back', async () => {
  const named = env.LEDGER.getByName('comes back');
  await inObject('comes back', (store) => {
    store.run('CREATE TABLE note (words TEXT) STRICT');
    store.transaction(() => store.run("INSERT INTO note VALUES ('kept')"));
  });
  await evictDurableObject(named);
  await inObject('comes back', (store) => {
    expect(store.all('SELECT words FROM note')).toEqual([{ words: 'kept' }]);
  });
});
