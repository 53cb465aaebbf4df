import type { CrewMessage } from '../../../src/crew-face.ts';

type Body = {
  conversation: string;
  turn: number;
  replies: { kind: string; text: string }[];
  awaiting: string | null;
  known: { piece?: { massKg?: number }; building?: { country?: string } };
  plan: string | null;
};

export type { Body };

/** A message of the neutral door, with what a test doesn't care about filled in. */
export const message = (
  conversation: string,
  id: string,
  text: string,
  more: Partial<CrewMessage> = {},
): CrewMessage => ({
  ...{ door: 'neutral', conversation, id, text, author: { id: 'u7', name: 'Robin', role: 'apprentice' } },
  ...more,
});
