import { readFileSync, writeFileSync } from 'node:fs';
import { begin, step } from '../../flows/step.ts';

/** What is typed in README's conversation, in order. Invented. */
export const TYPED = [
  'hanging a 24 kg mirror on a plastered brick wall',
  'australia, built 2010, its our own house',
  'none of these',
  'a fireplace thats never used',
  'none on either side',
  '840 x 1120',
  'two rings 95 in and 240 down',
  '12 mil plaster',
  'wall is 2690 wide... no 2700',
  'in the middle',
  '140 above the mantel',
  'mantels 1100 off the floor',
  'solid',
  'two of us',
  'yep',
];

/** README's conversation as text: `>` before what is typed, what is answered below it. */
export function readmeConversation(): string {
  let conversation = begin({});
  const lines: string[] = [];
  for (const text of TYPED) {
    const turn = step(conversation, {
      text,
      author: { id: 'u7', name: 'Robin', role: 'apprentice' },
      at: '2026-11-25T09:00:00Z',
      planId: 'a-plan',
    });
    conversation = turn.next;
    lines.push(`> ${text}`, ...turn.replies.map((reply) => reply.text), '');
  }
  return lines.join('\n').trimEnd();
}

/** `node test/house/readme.ts` puts the conversation into the page. */
if (import.meta.main) {
  const page = readFileSync('README.md', 'utf8');
  const block = `<!-- conversation -->\n\`\`\`text\n${readmeConversation()}\n\`\`\``;
  writeFileSync(
    'README.md',
    page.replace(/<!-- conversation -->\n```text\n[\s\S]*?```/, () => block),
  );
}
