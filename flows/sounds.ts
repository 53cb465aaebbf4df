import type { BaseMaterial } from '../core/wall/wall.ts';

/** How a wall sounds and what may sound so: common practice (a knock); it names candidates, it decides none. */
export type Sound = {
  /** As it is offered on a button, and read back. */
  label: string;
  heard: RegExp;
  may: readonly BaseMaterial[];
  so: string;
};

export const SOUNDS: readonly Sound[] = [
  {
    label: 'Drum, firm patches, no pattern',
    heard:
      /\bdrum\w*\b.*\b(?:random|patch\w*|no pattern|blob\w*|dab\w*|spots?)\b|\b(?:random|patchy)\b.*\b(?:firm|solid|hard)\b/,
    may: ['plasterboard-on-dabs', 'plasterboard-on-timber-studs'],
    so: 'A drum with firm patches and no pattern is most often board stuck to masonry.',
  },
  {
    label: 'Drum, firm upright lines',
    heard:
      /\bdrum\w*\b|\bhollow\b.*\b(?:lines?|every|studs?|steady)\b|\b(?:lines?|stripes?) of (?:dots|screws|magnet)/,
    may: ['plasterboard-on-timber-studs', 'plasterboard-on-steel-studs', 'lath-and-plaster'],
    so: 'A drum with firm upright lines is a sheet on studs. A magnet that catches on dots up a line says timber, an unbroken pull says steel, small nails close together say lath.',
  },
  {
    label: 'Dull, with a rattle behind',
    heard: /\b(?:rattl\w*|crumbl\w*)\b.*\b(?:behind|inside)\b/,
    may: ['lath-and-plaster', 'plasterboard-on-timber-studs'],
    so: 'Dull and hollow with a rattle behind is most often lath and plaster.',
  },
  {
    label: 'Dull and hard everywhere',
    heard: /\b(?:dull|dead|thud|solid|hard|rock|stone)\b/,
    may: ['clay-brick', 'concrete-block', 'concrete'],
    so: 'Dull and hard everywhere is masonry; which, the knock does not tell. Look where a box was cut in, in the roof space or outside.',
  },
];
