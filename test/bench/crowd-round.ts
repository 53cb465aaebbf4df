import type { CrewFace } from '../../src/crew-face.ts';
import { SCRIPT } from './clients.ts';

const AT_ONCE = 8;
const SCRIPTS_A_ROUND = 96;
export const TURNS_A_ROUND = SCRIPTS_A_ROUND * (SCRIPT.length + 1);

/** Opens `size` conversations with a turn each; gives a round, in milliseconds. */
export async function crowd(crew: CrewFace, size: number): Promise<() => Promise<number>> {
  let sent = 0;
  const say = (conversation: string, text: string): Promise<unknown> => {
    sent += 1;
    const author = { id: 'u1', role: 'apprentice' } as const;
    return crew.handle({ door: 'neutral', conversation, id: `m${sent}`, author, text });
  };
  const atOnce = (count: number, each: (k: number) => Promise<unknown>): Promise<unknown> =>
    Promise.all(Array.from({ length: count }, (_, k) => each(k)));

  for (let n = 0; n < size; n += AT_ONCE)
    await atOnce(Math.min(AT_ONCE, size - n), (k) => say(`open${n + k}`, SCRIPT[0] as string));

  let begun = 0;
  let touched = 0;
  return async () => {
    const started = performance.now();
    for (let n = 0; n < SCRIPTS_A_ROUND; n += AT_ONCE) {
      for (const text of SCRIPT) await atOnce(AT_ONCE, (k) => say(`new${begun + k}`, text));
      await atOnce(AT_ONCE, (k) => say(`open${(touched + k) % size}`, 'help'));
      begun += AT_ONCE;
      touched += AT_ONCE;
    }
    return performance.now() - started;
  };
}
