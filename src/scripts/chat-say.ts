import { randomUUID } from 'node:crypto';
import { z } from 'zod';
import type { CrewFace, CrewMessage } from '../crew-face.ts';
import { crewMessage } from '../platforms/neutral/message.ts';
import { messageSchema } from '../schema/message.ts';
import { refusalOf, sentenceOf } from '../schema/refusal.ts';

/** The part of an answer that a terminal shows; what a newer server adds is passed over. */
const answerRead = z.object({
  awaiting: z.string().nullable(),
  replies: z.array(
    z.object({
      kind: z.string(),
      text: z.string(),
      question: z.string().optional(),
      expects: z.string().optional(),
      choices: z.array(z.object({ value: z.string(), label: z.string() })).optional(),
    }),
  ),
});

export type Answer = z.output<typeof answerRead>;

/** One message as the terminal sends it; the id is kept over every attempt, so that it counts once. */
export type Said = Pick<CrewMessage, 'id' | 'conversation' | 'author'> & {
  text?: string;
  choice?: string;
  question?: string;
};

/** An answer, or a sentence for the person; `again` when the same message is worth sending once more. */
export type Outcome = { answer: Answer } | { refused: string; again: boolean };

export type Say = (said: Said) => Promise<Outcome>;

export function newId(): string {
  return randomUUID();
}

/** Speaks to a running server, as any client would. */
export function sayTo(url: string, key: string | undefined): Say {
  return async (said) => {
    try {
      const response = await fetch(new URL('/v1/messages', url), {
        method: 'POST',
        headers: { 'content-type': 'application/json', ...(key && { authorization: `Bearer ${key}` }) },
        body: JSON.stringify(said),
      });
      const body: unknown = await response.json();
      if (response.ok) return { answer: answerRead.parse(body) };
      return { refused: detailOf(body), again: response.status >= 500 };
    } catch (error) {
      if (error instanceof TypeError || error instanceof SyntaxError)
        return { refused: 'The server can’t be reached.', again: true };
      throw error;
    }
  };
}

/** Speaks to a crew whose ledger this process holds itself; what the server's door refuses is refused here too. */
export function sayIn(crew: CrewFace): Say {
  return async (said) => {
    const read = messageSchema.safeParse(said);
    if (!read.success)
      return { refused: sentenceOf(refusalOf(messageSchema, read.error.issues, said)), again: false };
    const handled = await crew.handle(crewMessage(said.id, read.data));
    if (handled.ok) return { answer: answerRead.parse(JSON.parse(handled.body)) };
    return { refused: handled.detail, again: false };
  };
}

function detailOf(body: unknown): string {
  const detail = typeof body === 'object' && body !== null && 'detail' in body ? body.detail : undefined;
  return typeof detail === 'string' ? detail : 'The server gave no reason.';
}
