// @ts-check
import { offer } from './choices.js';
import { found } from './elements.js';
import { outbox } from './outbox.js';
import { fetchPlan, postMessage } from './post.js';
import { openQuestion } from './replies.js';
import { fromOtherTabs, takeIn } from './tabs.js';
import { begun, keep, newId, restored } from './transcript.js';
import { turnNode } from './turn.js';

/** @typedef {import('./transcript.js').Turn} Turn */

const log = found('log', HTMLDivElement);
const choices = found('choices', HTMLDivElement);
const status = found('status', HTMLParagraphElement);
const form = found('say', HTMLFormElement);
const words = found('words', HTMLTextAreaElement);

let transcript = restored();
/** @type {Map<string, HTMLElement>} */
const shown = new Map();

const sending = outbox({
  post: (turn) => postMessage(transcript, turn),
  settled,
  waits: (turn) => {
    status.textContent = turn ? 'Not sent yet. Trying again; you can go on typing.' : '';
    const node = turn && shown.get(turn.id);
    if (node?.classList.contains('late')) return;
    for (const late of log.querySelectorAll('.late')) late.classList.remove('late');
    node?.classList.add('late');
    node?.scrollIntoView({ block: 'nearest' });
  },
});

for (const turn of transcript.turns) {
  show(turn);
  if (turn.state === 'waiting') sending.add(turn);
}
offerChoices();
endOfLog()?.scrollIntoView({ block: 'end' });

form.addEventListener('submit', (event) => {
  event.preventDefault();
  const text = words.value.trim();
  if (text === '') return;
  words.value = '';
  fitWords();
  say(text, { text });
});
words.addEventListener('input', fitWords);
words.addEventListener('keydown', (event) => {
  if (event.key !== 'Enter' || event.shiftKey || event.isComposing) return;
  event.preventDefault();
  form.requestSubmit();
});
found('anew', HTMLButtonElement).addEventListener('click', () => {
  if (
    transcript.turns.length > 0 &&
    !confirm('Begin a new conversation? This one leaves the page; it stays in the ledger.')
  )
    return;
  transcript = begun(transcript.author);
  keep(transcript);
  location.reload();
});
// Until now a press on Send would have loaded the page anew, and lost the words.
found('send', HTMLButtonElement).disabled = false;
fromOtherTabs((theirs) => {
  if (theirs.conversation !== transcript.conversation) return location.reload();
  for (const turn of takeIn(transcript, theirs)) show(turn);
  offerChoices();
});
addEventListener('online', sending.now);
document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && sending.now());

/**
 * @param {string} shownAs
 * @param {import('./transcript.js').Words} said
 */
function say(shownAs, said) {
  /** @type {Turn} */
  const turn = { id: newId(), shown: shownAs, words: said, state: 'waiting' };
  transcript.turns.push(turn);
  keep(transcript);
  show(turn);
  offerChoices();
  endOfLog()?.scrollIntoView({ block: 'end' });
  sending.add(turn);
}

/**
 * @param {Turn} turn
 * @param {import('./post.js').Outcome} outcome
 */
function settled(turn, outcome) {
  if (outcome.kind === 'key') return location.reload();
  if (outcome.kind === 'answered') Object.assign(turn, { state: 'answered', answer: outcome.answer });
  if (outcome.kind === 'refused') Object.assign(turn, { state: 'refused', refused: outcome.why });
  keep(transcript);
  show(turn);
  offerChoices();
  bringIntoView(turn);
}

/** Puts a turn on the page, or what it has become in its place. */
function show(/** @type {Turn} */ turn) {
  const node = turnNode(turn, shown.get(turn.id));
  if (!shown.has(turn.id)) log.append(node);
  shown.set(turn.id, node);
  const named = turn.answer?.replies.find((reply) => reply.kind === 'plan');
  if (named && !turn.plan) void addCard(turn, named.id);
}

/** The card comes after the words, when it has been fetched; without it the words are enough to drill by. */
async function addCard(/** @type {Turn} */ turn, /** @type {string} */ id) {
  const plan = await fetchPlan(id);
  if (!plan || turn.plan) return;
  turn.plan = plan;
  keep(transcript);
  // Its words were read out already, as they came.
  shown.get(turn.id)?.setAttribute('aria-live', 'off');
  show(turn);
  if (turn === transcript.turns.at(-1)) bringIntoView(turn);
}

function offerChoices() {
  const last = transcript.turns.at(-1);
  offer(choices, last?.state === 'answered' ? openQuestion(last.answer) : null, (label, said, byKey) => {
    say(label, said);
    if (byKey) words.focus();
  });
}

/** A long answer is read from its beginning, a short one with the choices under it. */
function bringIntoView(/** @type {Turn} */ turn) {
  const node = shown.get(turn.id);
  if (!node) return;
  const fits = node.offsetHeight + choices.offsetHeight < innerHeight - form.offsetHeight;
  if (fits) endOfLog()?.scrollIntoView({ block: 'end' });
  else node.scrollIntoView({ block: 'start' });
}

function endOfLog() {
  return choices.hidden ? log.lastElementChild : choices;
}

function fitWords() {
  words.rows = Math.min(5, words.value.split('\n').length);
}
