import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { understand } from '../../../flows/understand/understand.ts';
import { listeningOf, type Saying, score } from './score.ts';

const { rows }: { rows: Saying[] } = JSON.parse(readFileSync('test/fixtures/reference/sayings.json', 'utf8'));
const scored = rows.map((row) => ({ row, ...score(row, understand(row.say, listeningOf(row))) }));

/** Rows with a voice were collected after the plain ones; the score over all of them may not sink below this. */
const LEAST_UNDERSTOOD = 168;

describe('reference sayings', () => {
  test('none is misunderstood, nearly all are understood, the rest is asked back', () => {
    const count = (outcome: string) => scored.filter((each) => each.outcome === outcome).length;
    console.log(
      `understood ${count('understood')}, asked back ${count('asked back')}, misunderstood ${count('misunderstood')} of ${rows.length}`,
    );
    for (const { row, outcome, passes, why } of scored) {
      if (outcome === 'misunderstood' || !passes) console.log(`${outcome}: ${row.q}: "${row.say}": ${why}`);
    }
    expect(scored.filter((each) => each.outcome === 'misunderstood').map(({ row }) => row.say)).toEqual([]);
    expect(count('understood')).toBeGreaterThanOrEqual(LEAST_UNDERSTOOD);
  });

  test.each(scored)('"$row.say" to $row.q is taken as the reference says', ({ passes, why }) => {
    expect(passes, why).toBe(true);
  });
});
