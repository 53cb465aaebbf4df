import { inches } from '../ordinary-job.ts';
import { bottomAt, type Row } from './row.ts';

const walkway = (country: 'US' | 'UK', depth: number, bottom: number) =>
  ({
    building: { country, kind: 'public' },
    piece: { depthMm: inches(depth) },
    place: { below: 'walkway' },
    at: bottomAt(inches(bottom)),
  }) as const;
const washroom = (
  country: 'US' | 'UK',
  kind: 'public' | 'house',
  below: 'basin' | 'nothing',
  bottom: number,
) =>
  ({
    building: { country, kind },
    wall: { wet: 'bathroom' },
    place: { below },
    at: bottomAt(bottom),
  }) as const;

export const accessRows: readonly Row[] = [
  {
    id: 'C-AC-1',
    from: 'ADA 307.2 (read-secondary)',
    cases: [
      ['4 in deep', null, walkway('US', 4, 40)],
      ['4.1 in deep', 'stop', walkway('US', 4.1, 40)],
      ['bottom at 27 in', null, walkway('US', 5, 27)],
      ['bottom at 27.1 in', 'stop', walkway('US', 5, 27.1)],
      ['bottom at 80 in', 'stop', walkway('US', 5, 80)],
      ['bottom at 80.1 in', null, walkway('US', 5, 80.1)],
      ['4.1 in deep in the UK, by analogy', 'warn', walkway('UK', 4.1, 40)],
      ['in a house', null, { ...walkway('US', 5, 40), building: { country: 'US', kind: 'house' } }],
    ],
  },
  {
    id: 'C-AC-2',
    from: 'ADA 603.3: 40 in or 1015 mm, 35 in or 890 mm (read-secondary)',
    cases: [
      ['over a basin at 1016', null, washroom('US', 'public', 'basin', 1016)],
      ['over a basin at 1017', 'stop', washroom('US', 'public', 'basin', 1017)],
      ['elsewhere at 890', null, washroom('US', 'public', 'nothing', 890)],
      ['elsewhere at 891', 'stop', washroom('US', 'public', 'nothing', 891)],
      ['elsewhere at 891 in the UK, by analogy', 'warn', washroom('UK', 'public', 'nothing', 891)],
    ],
  },
  {
    id: 'C-AC-3',
    from: 'ADA 603.3 (read-secondary), not required',
    cases: [
      ['at home over a basin at 1017', 'note', washroom('US', 'house', 'basin', 1017)],
      ['at home over a basin at 1016', null, washroom('US', 'house', 'basin', 1016)],
    ],
  },
];
