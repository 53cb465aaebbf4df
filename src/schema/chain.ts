import { z } from 'zod';
import { basis } from './explained.ts';

const n = z.number();

/** One link from the piece to the wall. */
export const chainLink = z
  .strictObject({
    link: z.enum(['wall-fixing', 'hook', 'hanger', 'hanger-screw', 'cord', 'batten']),
    name: z.string(),
    actionN: n,
    resistanceN: n.optional().describe('What it may bear for good; absent where nobody has said.'),
    utilisation: n.optional(),
    needs: z.string().optional().describe('What it must be rated for.'),
    basis: z.array(basis),
  })
  .meta({ id: 'ChainLink' });

export const weakest = z.strictObject({ link: chainLink.shape.link, name: z.string(), utilisation: n });
