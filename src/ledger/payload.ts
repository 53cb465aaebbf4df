import type { CrewMessage } from '../crew-face.ts';

/**
 * What makes a message the same message: words, button, question and author. It is kept as it stands and
 * compared as it stands, so no digest is needed. The name is kept but not compared: people rename themselves
 * between a platform's retries.
 */
type Payload = Pick<CrewMessage, 'text' | 'choice' | 'question' | 'author'>;

export const keptMessage = ({ text, choice, question, author }: Payload): string =>
  JSON.stringify({ text, choice, question, author: { id: author.id, name: author.name, role: author.role } });

export const isSamePayload = (kept: string, message: Payload): boolean => {
  const then = JSON.parse(kept) as Payload;
  return (
    then.text === message.text &&
    then.choice === message.choice &&
    then.question === message.question &&
    then.author.id === message.author.id &&
    then.author.role === message.author.role
  );
};
