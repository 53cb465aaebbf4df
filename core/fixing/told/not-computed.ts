import type { BaseMaterial, Wall } from '../../wall/wall.ts';

/** Walls whose fixings this program does not work out yet: said plainly, nothing faked. */
const NAMES: Partial<Record<BaseMaterial, string>> = {
  'lath-and-plaster': 'lath and plaster',
  'fibre-cement-on-studs': 'fibre cement on studs',
  timber: 'timber',
};

/** Why there is no fixing for a wall, and what would get the piece up. */
export function notComputed({ baseMaterial }: Wall): { because: string; clears: string } {
  const name = NAMES[baseMaterial];
  if (name === undefined) {
    return {
      because: 'What this wall is made of is not known, so no fixing can be worked out.',
      clears:
        'Find out what the wall is: knock on it, look at the dust of an old hole, tell me how old it is.',
    };
  }
  return {
    because: `Fixings in ${name} are not worked out by this program yet, so it gives none.`,
    clears:
      'Hang it from a picture rail, choose another wall, or ask someone who can design and sign for it.',
  };
}
