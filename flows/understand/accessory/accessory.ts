import type { JobSoFar } from '../../../core/job.ts';
import type { Fact, Listening } from '../../reading.ts';
import { saysNotKnown } from '../steering/dont-know.ts';
import { soundsReplacing } from '../steering/replacing.ts';
import { asks, type Found, fact, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { inWhichUnit, toBeFound, whatIsThere, whichOne } from './ask.ts';
import { type Faces, facesTold } from './empty.ts';
import { knownOf, listWith } from './list.ts';
import { type Mention, mentionsIn } from './mentions.ts';
import { saysClear } from './none.ts';
import { nothingInPassing, nothingNamed, standingBeside } from './nothing.ts';
import { ownWords } from './own-words.ts';
import { plainWords, tellsOnlyAPlace } from './plain.ts';
import { inEachUnit, type Told } from './told.ts';
import { lessDenied, twoFaced } from './two-faced.ts';
import { figuresIn, withFiguresApart } from './units.ts';
import { UNASKED } from './words.ts';

/** Told as something that is there, though no figure says where. */
const THERE_IS =
  /\b(?:theres|there is|there are|also|forgot|just (?:seen|noticed|found|spotted)|found|spotted|noticed|another|got an?|has an?)\b/;

/** What is on the wall, on which face, and where. */
export function readAccessories(said: Outline, listening: Listening): Found {
  const asked = listening.awaiting === 'wall.accessories' || listening.awaiting === 'wall.farSide';
  const isKnown = Array.isArray(listening.known.wall?.accessories);
  if (!asked && !speaksOfFittings(said.text, isKnown)) return nothing(said);
  const outline = withFiguresApart(said);
  const own = ownWords(outline, asked);
  // "The socket's low down" lost its apostrophe: it is one.
  const single = own.text.replace(
    /\b(socket|switch|radiator|light|outlet|powerpoint|thermostat|boiler|basin|heater)(?:e?s)\b/g,
    (word, one: string) => (new RegExp(`${one}['’]s`, 'i').test(said.said) ? `${one} is` : word),
  );
  const figures = figuresIn(outline, listening);
  const faces = facesTold(plainWords(single, figures.small, figures.in('mm')));
  const mentions = mentionsIn(faces.text);
  const text = lessDenied(faces.text, mentions);
  const heads = twoFaced(headsOf(mentions, text, listening), text);
  if (heads.length === 0 && !asked) return nothingInPassing(said, listening);
  if (heads.length === 0) return nothingNamed(outline, faces, mentions, listening);
  const told = inEachUnit(text, heads, figures, listening);
  const [first, second] = told;
  if (first === undefined) return nothing(said);
  if (asked) first.told.unplaced.push(...standingBeside(mentions, heads));
  const meant = isKnown && (THERE_IS.test(said.text) || soundsReplacing(said.words));
  if (!asked && first.told.placed.length === 0 && !meant) return nothing(said);
  const read = told.map((each) => ({
    unit: each.unit,
    fact: factOf(each.told, outline, faces, listening, asked),
  }));
  const taken = read[0]?.fact ?? null;
  if (taken === null) return asks(own.rest, whichOne(first.told.placed[0], listening.known, said.said));
  if (second !== undefined) return asks(own.rest, inWhichUnit(read));
  if (saysNotKnown(said.text) && addsNothing(taken, listening)) return nothing(own.rest);
  const found = { ...nothing(own.rest), facts: [taken] };
  return faces.passedOver && asked ? { ...found, asks: [whatIsThere(said.said)] } : found;
}

/** Said unasked: with figures, as nothing on either face, or as one that was left out before. */
function speaksOfFittings(text: string, isKnown: boolean): boolean {
  return UNASKED.test(text) && (/<\d+>/.test(text) || saysClear(text) || (isKnown && THERE_IS.test(text)));
}

/** Those that are there; in answer to "where is the switch", figures alone are the switch's. */
function headsOf(mentions: readonly Mention[], text: string, { known, awaiting }: Listening): Mention[] {
  const heads = mentions.filter(({ landmark, denied }) => !landmark && !denied);
  const [pending] = knownOf(known.wall).unplaced;
  const isAnswer = awaiting === 'wall.accessories' && pending !== undefined && heads.length === 0;
  if (!isAnswer || !tellsOnlyAPlace(text) || mentions.some(({ denied }) => denied)) return heads;
  return [{ kind: pending.kind, at: 0, end: 0, count: 1, as: 'named', landmark: false, denied: false }];
}

function factOf(
  told: Told,
  outline: Outline,
  faces: Faces,
  { known }: Listening,
  asked: boolean,
): Fact | null {
  const before = knownOf(known.wall);
  const list = listWith(told, before, outline.words);
  if (list === null) return null;
  const { accessories, unplaced } = list;
  const wall: JobSoFar['wall'] = {
    ...((accessories.length > 0 || Array.isArray(known.wall?.accessories)) && { accessories }),
    ...((unplaced.length > 0 || before.unplaced.length > 0) && { unplaced }),
    ...farSideOf(told, faces, known, asked),
  };
  const read = fact('wall.accessories', { wall }, outline.said, told.inferred);
  return unplaced.length === 0 ? read : { ...read, partial: toBeFound(unplaced) };
}

/** Told in passing, a list says nothing of the face that was not named. */
function farSideOf(
  told: Told,
  { empty, unseen, passedOver }: Faces,
  known: JobSoFar,
  asked: boolean,
): { farSide?: 'seen' | 'unknown' } {
  const far = empty.has('far') || [...told.placed, ...told.unplaced].some(({ face }) => face === 'far');
  if (unseen || (passedOver && !far)) return { farSide: 'unknown' };
  if (far) return { farSide: 'seen' };
  return asked || known.wall?.accessories !== undefined ? {} : { farSide: 'unknown' };
}

/** "No idea where the switch is", of a switch that was told of before. */
function addsNothing({ value }: Fact, { known }: Listening): boolean {
  const [now, before] = [knownOf(value.wall), knownOf(known.wall)];
  return (
    before.unplaced.length > 0 &&
    now.accessories.length === before.accessories.length &&
    now.unplaced.length === before.unplaced.length
  );
}
