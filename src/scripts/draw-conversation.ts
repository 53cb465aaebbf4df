import { conversation } from '../../flows/machine.ts';

/** The conversation as a Mermaid flowchart, from the machine itself: the order in which states are tried. */
export function drawConversation(): string {
  const tries = conversation.root.config.states?.deciding?.always;
  if (!Array.isArray(tries)) throw new Error('the machine has no order of questions');
  const steps = tries as { guard?: string; target: string }[];
  const lines = steps.map(({ guard, target }, at) => {
    const to = `q${at}["${target}"]`;
    if (guard === undefined) return `  d${at} --> ${to}`;
    const next = steps[at + 1]?.guard;
    const after = next === undefined ? `d${at + 1}((else))` : `d${at + 1}{"${inWords(next)}?"}`;
    return `  d${at} -- yes --> ${to}\n  d${at} -- no --> ${after}`;
  });
  return ['flowchart TD', `  heard([heard]) --> d0{"${inWords(steps[0]?.guard ?? '')}?"}`, ...lines].join(
    '\n',
  );
}

const inWords = (guard: string): string => guard.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

if (import.meta.main) console.log(drawConversation());
