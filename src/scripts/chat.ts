import { createInterface } from 'node:readline/promises';
import { setTimeout as wait } from 'node:timers/promises';
import { begin, resume, step } from '../../flows/step.ts';
import { type Config, LOCAL_CREW, readConfig } from '../config.ts';
import { openCrews } from '../crews.ts';
import { choiceTyped, openQuestion, printed, type Question } from './chat-print.ts';
import { newId, type Outcome, type Said, type Say, sayIn, sayTo } from './chat-say.ts';

/** Seconds between attempts at a message that could not be sent. */
const AGAIN_AFTER_S = [1, 2, 4, 8, 15] as const;

/** Long enough for a server on this machine to say that it is there. */
const ANSWERS_WITHIN_MS = 1500;

const read = await readConfig(process.env);
if (!read.ok) refuse(read.refused);
const { say, close } = await whoAnswers(read.config);
await talk(say, process.argv[2] ?? `terminal-${newId()}`);
close();

/** A running server where there is one, for a ledger has one writer; else the ledger itself. */
async function whoAnswers(config: Config): Promise<{ say: Say; close: () => void }> {
  const url = process.env.WALLHAND_URL ?? `http://127.0.0.1:${config.port}`;
  if (process.env.WALLHAND_URL !== undefined || (await isServed(url))) {
    console.log(`Talking to the server at ${url}.`);
    return { say: sayTo(url, process.env.WALLHAND_KEY), close: () => {} };
  }
  console.log(`No server runs at ${url}; the ledger in ${config.data} is opened here.`);
  const crews = openCrews(config.data, { begin, resume, step });
  try {
    return { say: sayIn(crews.crewOf(config.keys[0]?.crew ?? LOCAL_CREW)), close: crews.close };
  } catch (error) {
    refuse([error instanceof Error ? error.message : String(error)]);
  }
}

function refuse(sentences: readonly string[]): never {
  for (const sentence of sentences) console.error(sentence);
  process.exit(1);
}

async function isServed(url: string): Promise<boolean> {
  try {
    const signal = AbortSignal.timeout(ANSWERS_WITHIN_MS);
    return (await fetch(new URL('/healthz', url), { signal })).ok;
  } catch {
    return false;
  }
}

/** One line in, its answer out, until the lines end. */
async function talk(sayOnce: Say, conversation: string): Promise<void> {
  console.log(`Conversation ${conversation}. Say what you are hanging, and on what. End with Ctrl-D.\n`);
  const lines = createInterface({ input: process.stdin, output: process.stdout, prompt: '> ' });
  const author: Said['author'] = { id: 'terminal', role: 'apprentice' };
  let question: Question | null = null;
  // Piped lines may end before the first is answered, and a closed prompt throws.
  let open = true;
  lines.once('close', () => {
    open = false;
  });
  lines.prompt();
  for await (const line of lines) {
    if (line.trim() !== '') {
      const choice = choiceTyped(question, line);
      const words = choice === null || !question ? { text: line } : { choice, question: question.question };
      const outcome = await sayUntilTaken(sayOnce, { id: newId(), conversation, author, ...words });
      if ('answer' in outcome)
        question = openQuestion(outcome.answer) ?? (outcome.answer.awaiting ? question : null);
      console.log(`\n${'answer' in outcome ? printed(outcome.answer) : outcome.refused}\n`);
    }
    if (open) lines.prompt();
  }
}

/** The same message with the same id again, until it is answered or refused for good. */
async function sayUntilTaken(sayOnce: Say, said: Said): Promise<Outcome> {
  for (let attempt = 0; ; attempt += 1) {
    const outcome = await sayOnce(said);
    const seconds = AGAIN_AFTER_S[attempt];
    if ('answer' in outcome || !outcome.again || seconds === undefined) return outcome;
    console.log(`Not sent yet: ${outcome.refused} Trying again in ${seconds} s.`);
    await wait(seconds * 1000);
  }
}
