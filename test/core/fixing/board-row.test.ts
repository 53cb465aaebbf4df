import { expect, test } from 'vitest';
import { chooseFixing } from '../../../core/fixing/choose.ts';
import type { Job } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';
import { mm } from '../../../core/quantity.ts';
import sanity from '../../fixtures/reference/sanity-jobs.json' with { type: 'json' };

/** SJ-18: 22 kg, 800 wide at 1040 to 1840, studs at 225 and every 450: 1125 and 1575 lie behind the frame. */
const job = sanity.jobs.find(({ id }) => id === 'SJ-18')?.job as unknown as Job;

function fastenerOf(changed: Job): { fastener: string | null; because: string } {
  const layout = setOut(changed);
  if (!layout.ok) throw new Error(layout.text);
  const result = chooseFixing(changed, layout);
  return {
    fastener: result.ok ? result.fixing.fastener : null,
    because: result.rejected.map((each) => each.because).join(' '),
  };
}

const socketAt = (xMm: number): Job => ({
  ...job,
  wall: { ...job.wall, accessories: [{ kind: 'socket', face: 'this', xMm: mm(xMm), yMm: mm(300) }] },
});

test('a board stands on the two studs behind the frame', () => {
  expect(fastenerOf(job).fastener).toBe('board-across-studs');
});

test('no board is screwed to a stud straight above a socket, though no mark is there', () => {
  // A 146 mm plate at 1600 takes in 1527 to 1673, and with it the stud at 1575; the marks are at 1130 and 1750.
  const { fastener, because } = fastenerOf(socketAt(1600));
  expect(fastener).not.toBe('board-across-studs');
  expect(because).toContain('in line with a socket');
});

test('a socket clear of both studs changes nothing', () => {
  expect(fastenerOf(socketAt(1350)).fastener).toBe('board-across-studs');
});

test('studs not found yet are reckoned at the closest usual spacing, and a narrow frame may hide only one', () => {
  const { studs: _studs, ...wall } = job.wall;
  expect(fastenerOf({ ...job, wall }).fastener).toBe('board-across-studs');
  // 520 wide less 50 at each end hides 420, less than the 450 between studs in Australia.
  const narrow = {
    ...job,
    wall,
    piece: {
      ...job.piece,
      widthMm: mm(520),
      hanging: {
        by: 'rings' as const,
        points: [
          { fromLeftMm: mm(60), fromTopMm: mm(220) },
          { fromRightMm: mm(60), fromTopMm: mm(220) },
        ],
      },
    },
  };
  expect(fastenerOf(narrow).because).toContain('may hide only one');
});
