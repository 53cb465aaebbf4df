import type { Listening } from '../reading.ts';
import { readAccessories } from './accessory/accessory.ts';
import { readBuilding } from './building/building.ts';
import { readCrew } from './building/crew.ts';
import { readHazards } from './building/hazards.ts';
import { readDepth } from './piece/depth.ts';
import { readGlass } from './piece/glass.ts';
import { likened } from './piece/likened.ts';
import { readPieceKind } from './piece/piece-kind.ts';
import { readProof } from './piece/proof.ts';
import { readAcross } from './place/across.ts';
import { readBelow } from './place/below.ts';
import { readDatum } from './place/datum.ts';
import { readStairs } from './place/stairs.ts';
import { readUp } from './place/up.ts';
import { askedLength, hanging, mass, size } from './quantities.ts';
import { readBoard } from './wall/board.ts';
import { readFinish } from './wall/finish.ts';
import { readLoneMetres } from './wall/lone-metres.ts';
import { readStuds } from './wall/studs.ts';
import { readUnlisted } from './wall/unlisted.ts';
import { readWall } from './wall/wall.ts';
import { readNamedWallPair, readWallPair } from './wall/wall-pair.ts';
import { readWallSize } from './wall/wall-size.ts';
import { readWallState } from './wall/wall-state.ts';
import { type Found, nothing, type Reader } from './words/found.ts';
import type { Outline } from './words/outline.ts';

/** Runs readers one after another; each sees only what the ones before it left. */
function inTurn(outline: Outline, listening: Listening, readers: readonly Reader[]): Found {
  return readers.reduce<Found>((found, reader) => {
    const one = reader(found.rest, listening);
    return {
      facts: [...found.facts, ...one.facts],
      asks: [...found.asks, ...one.asks],
      refused: [...found.refused, ...one.refused],
      rest: one.rest,
    };
  }, nothing(outline));
}

const when =
  (question: Listening['awaiting'], reader: Reader): Reader =>
  (outline, listening) =>
    listening.awaiting === question ? reader(outline, listening) : nothing(outline);

const unless =
  (questions: readonly Listening['awaiting'][], reader: Reader): Reader =>
  (outline, listening) =>
    questions.includes(listening.awaiting) ? nothing(outline) : reader(outline, listening);

/** A pair of figures answers the wall's width. */
const asWallPair: Reader = (outline, listening) =>
  listening.awaiting === 'wall.widthMm' ? readWallPair(outline) : nothing(outline);

/** Battens under plasterboard are the wall's, not the piece's. */
const hangerSaid: Reader = (outline, listening) =>
  /\bbatten/.test(outline.text) && /\b(?:plasterboard|drywall|over|masonry|brick|block)\b/.test(outline.text)
    ? nothing(outline)
    : hanging(outline, listening);

/** What needs words only; it reads the message without its masses, for "2 stone" is no wall. */
const WORDS: readonly Reader[] = [
  readWall,
  readWallState,
  readPieceKind,
  readGlass,
  readBelow,
  unless(['hazards'], readHazards),
  readBuilding,
  readCrew,
];

/** The open question has first claim on bare figures; then what names itself; then the rest. */
const FIGURES: readonly Reader[] = [
  readStairs,
  readAccessories,
  when('piece.hanging', hanging),
  when('piece.size', size),
  when('wall.studs', readStuds),
  when('wall.finish', readFinish),
  when('place.across', readAcross),
  readDatum,
  unless(['piece.hanging'], readUp),
  unless(['place.across', 'piece.hanging'], readAcross),
  unless(['wall.studs'], readStuds),
  readBoard,
  unless(['wall.finish'], readFinish),
  readNamedWallPair,
  asWallPair,
  readWallSize,
  readDepth,
  unless(['piece.size'], size),
  unless(['piece.hanging'], hangerSaid),
  askedLength,
  readLoneMetres,
];

/** Every fact of a message, for the open question and for any other. */
export function readAll(outline: Outline, listening: Listening): Found {
  const proof = readProof(outline, listening);
  if (proof.facts.length + proof.refused.length > 0) return proof;
  const compared = likened(outline, listening.awaiting === 'piece.massKg');
  if (compared === null) return readFacts(outline, listening);
  const found = readFacts(compared.rest, { ...listening, awaiting: null });
  return { ...found, refused: [compared.refusal, ...found.refused] };
}

function readFacts(outline: Outline, listening: Listening): Found {
  const weighed = mass(outline, listening);
  const unlisted = readUnlisted(weighed.rest, listening);
  const words = inTurn(unlisted.rest, listening, WORDS);
  const figures = inTurn(unlisted.rest, listening, FIGURES);
  return {
    facts: [...weighed.facts, ...words.facts, ...figures.facts],
    asks: [...weighed.asks, ...words.asks, ...figures.asks],
    refused: [...weighed.refused, ...unlisted.refused, ...words.refused, ...figures.refused],
    rest: figures.rest,
  };
}
