import { z } from 'zod';
import { FURTHER_QUESTION_NAMES, QUESTION_NAMES } from '../../flows/question.ts';
import { identifier, personName, typed } from './words.ts';

/** Contract, section 3: the most an id may hold. */
const ID_LIMIT = 200;

export const messageId = identifier(ID_LIMIT, 'evt-0193');

const author = z
  .strictObject({
    id: identifier(200, 'u7'),
    name: personName.exactOptional(),
    role: z.enum(['apprentice', 'homeowner', 'boss']).default('apprentice'),
  })
  .meta({ examples: [{ id: 'u7', name: 'Robin', role: 'apprentice' }] });

const questionName = z.enum([...QUESTION_NAMES, ...FURTHER_QUESTION_NAMES]);

/** A message to the neutral chat webhook: typed text, or the value of a button. */
export const messageSchema = z
  .strictObject({
    id: messageId.exactOptional().describe('Idempotent within the conversation; else Idempotency-Key.'),
    conversation: identifier(200, 'harbour-st-12/hall'),
    author,
    text: typed.exactOptional(),
    choice: identifier(200, 'clay-brick').exactOptional().describe('The value of a button, instead of text.'),
    question: questionName.exactOptional().describe('The question the button belongs to.'),
  })
  .superRefine((message, context) => {
    const says = message.text !== undefined;
    const picks = message.choice !== undefined;
    if (says && picks)
      context.addIssue({ code: 'custom', path: ['choice'], message: 'text or choice, not both' });
    if (!says && !picks) context.addIssue({ code: 'custom', path: ['text'], message: 'text, or a choice' });
    if (message.question !== undefined && !picks)
      context.addIssue({ code: 'custom', path: ['question'], message: 'a question only beside a choice' });
  })
  .meta({ id: 'Message' });
