import type { Wall } from '../../../core/wall/wall.ts';
import type { QuestionName } from '../../question.ts';
import type { Listening } from '../../reading.ts';
import { type Found, fact, facts, nothing, type Reader } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';

type Form = [Partial<Wall>, RegExp];

/** In answer to their own question only: the words are too common to be taken elsewhere. */
const ANSWERS: Partial<Record<QuestionName, Form[]>> = {
  'wall.condition': [
    [
      { condition: 'poor' },
      /\b(?:not (?:very |too |that |so )?(?:good|great|sound|solid)|bad|poor|rough|ropey|terrible|soft|loose|dodgy|some cracks?)\b/,
    ],
    [
      { condition: 'sound' },
      /\b(?:sound|solid|good|fine|ok|okay|perfect|great|firm|hard|new|dry|no (?:cracks?|damp|crumbling|problems?|issues?)|nothing wrong)\b/,
    ],
  ],
  'wall.asbestos': [
    [
      { asbestos: 'not-tested' },
      /\b(?:not (?:been |yet )?tested|never (?:been )?tested|no test|untested|hasnt been|havent|waiting|positive|contains|has asbestos|found asbestos)\b/,
    ],
    [
      { asbestos: 'tested-clear' },
      /\b(?:clear|negative|no asbestos|none found|asbestos free|free of|came back (?:clean|fine|ok|good)|clean)\b/,
    ],
  ],
  'wall.tensioned': [
    [
      { tensioned: 'scanned' },
      /^(?!.*\b(?:not|never|hasnt|havent|isnt|no|un)\b).*\b(?:scanned|scan done|scan was done|marked out|x ?rayed)\b/,
    ],
    [{ tensioned: 'possible' }, /\b(?:possibl[ey]|maybe|might|could be|probably|likely|perhaps)\b/],
    [
      { tensioned: 'no' },
      /^(?!.*\b(?:sure|know|think|idea)\b).*\b(?:managers?|management|engineers?|drawings?|plans?|builders?|strata|architect)\b.*\b(?:none|no|isnt (?:any|tensioned)|not)\b/,
    ],
    [{ tensioned: 'no' }, /\b(?:ordinary|normal|plain|just reinforced|not tensioned|no tension)\b/],
  ],
  'wall.coating': [
    [
      { coating: 'none' },
      /\b(?:smooth|flat|plain|none|no texture|just paint(?:ed)?|not textured|wallpaper)\b/,
    ],
  ],
  'wall.farSide': [
    [{ farSide: 'unknown' }, /\b(?:not (?:looked|yet|checked)|havent|cant|didnt|no access|no way)\b/],
    [{ farSide: 'seen' }, /\b(?:looked|checked|seen|been round|walked round|clear|nothing there|outside)\b/],
  ],
  'wall.wet': [
    [
      { wet: 'no' },
      /\b(?:lounge|living|bedroom|hall|hallway|dining|kitchen|study|office|dry|foyer|stairs|stairwell|landing|sitting room|front room)\b/,
    ],
  ],
};

/** The state of the wall, in answer to the question about it. */
export const readWallState: Reader = (outline: Outline, listening: Listening): Found => {
  const question = listening.awaiting;
  const forms = question === null ? undefined : ANSWERS[question];
  if (question === null || forms === undefined) return nothing(outline);
  const hit = forms.find(([, words]) => words.test(outline.words));
  return hit === undefined
    ? nothing(outline)
    : facts(outline, fact(question, { wall: hit[0] }, outline.said));
};
