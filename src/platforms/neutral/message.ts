import type { z } from 'zod';
import type { CrewMessage } from '../../crew-face.ts';
import type { messageSchema } from '../../schema/message.ts';

/** A neutral message as a crew sees it: the wire's fields under the door's own name space. */
export function crewMessage(id: string, said: z.output<typeof messageSchema>): CrewMessage {
  const { conversation, author, text, choice, question } = said;
  return {
    door: 'neutral',
    conversation,
    id,
    author,
    ...(text !== undefined && { text }),
    ...(choice !== undefined && { choice }),
    ...(question !== undefined && { question }),
  };
}
