import type { BaseMaterial } from '../../../core/wall/wall.ts';
import type { AskBack, Listening } from '../../reading.ts';
import { asks, type Found, fact, facts, nothing, settled } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';
import { type Kind, readCoats, value } from './coats.ts';

const KINDS: readonly [Kind, string][] = [
  ['tile', 'tiles?|tiled|tiling|splashback|backsplash'],
  ['render', 'rendered|render|stucco|parge|bagged|cement finish'],
  ['plaster', 'hard plaster|wet plaster|lime plaster|white set|set plaster|plastered|plaster|skimmed|skim'],
  ['board', 'plasterboard|drywall|board'],
  [
    'bare',
    'bare|just paint(?:ed)?|only paint(?:ed)?|paint(?:ed)?|no finish|no plaster|unplastered|fair ?-? ?faced?|face brick|exposed|nothing on it|wallpaper(?:ed)?|raw',
  ],
];

const thick = (words: string): RegExp[] => [
  new RegExp(
    `(?:<(\\d+)>) ?(?:thick |of )*(?:coat of |layer of )?(?:sand and cement |cement |hard |wet |lime |gypsum )?(?:${words})\\b`,
  ),
  new RegExp(
    `\\b(?:${words})\\b(?: (?:on it|on|finish|is|about|coat|,|;|\\(|=|of|thickness|roughly|say|maybe))* (?:<(\\d+)>)(?: thick)?(?! ?x)`,
  ),
];

const FORMS = KINDS.map(([kind, words]) => ({
  kind,
  named: new RegExp(`\\b(?:${words})\\b`),
  thick: thick(words),
}));

const LENGTHS = { expected: 'the thickness of a finish', example: '12 mm plaster' };

const NO_COAT =
  /\b(?:no|without|not|isnt|never) (?:any )?(?:plaster(?:ed)?|render(?:ed)?|coat|finish|skim)\b|\bunplastered\b/;

/**
 * What is on the face, with its thickness when it stands beside it. Coats one over another count together, since the
 * thickness goes through to the base: 8 mm tiles on 5 mm adhesive are 13 mm that carry nothing (core/fixing).
 */
export function readFinish(outline: Outline, listening: Listening): Found {
  const coats = readCoats(outline);
  if (coats !== null) return coats;
  const asked = listening.awaiting === 'wall.finish';
  const bare = NO_COAT.test(outline.text);
  if (bare && (asked || /\b(?:brick|block|concrete|stone|masonry)/.test(outline.text))) {
    return facts(outline, fact('wall.finish', value('bare'), outline.said));
  }
  for (const { kind, named, thick: forms } of FORMS) {
    if (kind === 'board' && !asked) continue;
    if (!named.test(outline.text)) continue;
    if (!asked && !belongsToWall(kind, outline.text)) continue;
    for (const form of forms) {
      const match = form.exec(outline.text);
      const length = match === null ? null : lengthOf(outline, match[1], 'wall.finish');
      if (match === null || length === null || (!asked && length.readings.length === 0)) continue;
      return settled(without(outline, match), 'wall.finish', length, (mm) => value(kind, mm), LENGTHS);
    }
    const only = asked ? /^[^<]*<(\d+)>[^<]*$/.exec(outline.text) : null;
    const length = only === null ? null : lengthOf(outline, only[1], 'wall.finish');
    if (only !== null && length !== null && kind !== 'bare') {
      return settled(without(outline, only), 'wall.finish', length, (mm) => value(kind, mm), LENGTHS);
    }
    if (asked && hidesWhatIsUnder(kind, outline.text, listening))
      return asks(outline, underThePaint(outline));
    return facts(
      outline,
      fact('wall.finish', value(kind), outline.said, kind === 'bare' && PAINTED.test(outline.text)),
    );
  }
  return asked ? alone(outline) : nothing(outline);
}

const PAINTED = /\bpaint(?:ed)?\b|\bwallpaper(?:ed)?\b/;
const PLAINLY_BARE =
  /\b(?:bare|raw|exposed|fair ?-? ?faced?|face brick|no finish|nothing on it)\b|\bjust paint|\bonly paint/;

const SELDOM_PAINTED: ReadonlySet<BaseMaterial | undefined> = new Set<BaseMaterial>([
  'clay-brick',
  'concrete-block',
  'aerated-concrete',
  'natural-stone',
]);

/** Brick and block indoors are seldom painted as they are, and nothing is papered without a coat: the paint hides it. */
function hidesWhatIsUnder(kind: Kind, text: string, { known, offered }: Listening): boolean {
  // Who says it again after being asked what is under it has nothing more to tell: confirmed with the rest.
  if (offered?.question === 'wall.finish') return false;
  if (kind !== 'bare' || !PAINTED.test(text) || PLAINLY_BARE.test(text)) return false;
  return /wallpaper/.test(text) || SELDOM_PAINTED.has(known.wall?.baseMaterial);
}

function underThePaint({ said }: Outline): AskBack {
  const under = (kind: Kind, label: string) => ({ label, fact: fact('wall.finish', value(kind), said) });
  return {
    question: 'wall.finish',
    text: 'And under that: plaster, cement render, or the bare wall itself? Coats carry nothing, so the hole gets deeper by them.',
    readings: [
      under('plaster', 'plaster'),
      under('render', 'cement render'),
      under('bare', 'the bare wall itself'),
    ],
  };
}

/** Plaster, render and tiles are said of a wall of masonry; bare only when it is said of the face. */
function belongsToWall(kind: Kind, text: string): boolean {
  if (kind === 'bare')
    return /\b(?:bare|exposed|unplastered|fair ?-? ?faced?|face|no plaster|painted) (?:brick|block|concrete|stone|masonry)(?:work)?s?\b/.test(
      text,
    );
  if (/\blaths?\b/.test(text)) return false;
  if (kind !== 'plaster') return true;
  const alone = /^\W*(?:its |it is |a |the |just )*(?:wet |hard )?plaster(?:ed)? ?(?:wall|walls)?\W*$/.test(
    text,
  );
  return (
    !alone &&
    (OF_PLASTER.test(text) ||
      (/\b(?:brick|block|concrete|stone|masonry)/.test(text) && !/\bplaster wall\b/.test(text)))
  );
}

const OF_PLASTER =
  /\b(?:plaster on it|plaster(?:ed)? over|hard plaster|plastered|wet plaster|lime plaster|white set)\b|<\d+> (?:of |thick )?plaster|plaster <\d+>/;

function alone(outline: Outline): Found {
  if (/^\W*(?:none|no|nope|nah|nothing|nil)\W*$/.test(outline.text))
    return facts(outline, fact('wall.finish', value('bare'), outline.said));
  if (/\b(?:brick|block)s? only\b|\bjust (?:the )?(?:brick|block|concrete|stone)s?\b/.test(outline.text)) {
    return facts(outline, fact('wall.finish', value('bare'), outline.said));
  }
  return bareFigure(outline);
}

/** "15": a thickness, but of what. */
function bareFigure(outline: Outline): Found {
  const match = /^[^<]*<(\d+)>[^<]*$/.exec(outline.text);
  const length = match === null ? null : lengthOf(outline, match[1], 'wall.finish');
  if (length?.readings.length !== 1 || length.negative) return nothing(outline);
  const kinds: Kind[] = ['plaster', 'render', 'tile'];
  return asks(outline, {
    question: 'wall.finish',
    text: `${length.text} of what: plaster, render or tiles?`,
    readings: kinds.map((kind) => ({
      label: kind,
      fact: fact('wall.finish', value(kind, length.valueMm), outline.said),
    })),
  });
}
