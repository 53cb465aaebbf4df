import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { QuestionName } from '../../../flows/question.ts';
import type { DisplayUnit } from '../../../flows/reading.ts';
import { LENGTH_QUESTIONS } from '../../../flows/understand/lengths/length-value.ts';
import { corrected } from '../../../flows/understand/words/correction.ts';
import { saidBetween, tokens } from '../../../flows/understand/words/token.ts';
import { flat, hear } from './hear.ts';

const QUESTIONS: QuestionName[] = ['piece.massKg', 'piece.size', 'piece.hanging', ...LENGTH_QUESTIONS];
const WORDS =
  `900 1200 24 1/2 3.4 9,5 3,400 3.450 -5 0 ½ in " ' ft foot inches mm cm m kg lb st oz x by and a half three hundred thousand
  point left right both down up from the side top no sorry not wide high long rings cord hook middle wall ceiling , . - / ( ) = + ± # % to or about over`.split(
    /\s+/,
  );
/** Sentences of the trade's own words in any order: where a grammar breaks. */
const salad = fc.array(fc.constantFrom(...WORDS), { maxLength: 24 }).map((words) => words.join(' '));
const glued = fc.array(fc.constantFrom(...WORDS), { maxLength: 16 }).map((words) => words.join(''));
const anything = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.string({ unit: 'grapheme', maxLength: 200 }),
  salad,
  glued,
);

describe('hostile and muddled text', () => {
  it('never throws, and what is recorded is a positive, finite length or mass', () => {
    fc.assert(
      fc.property(
        anything,
        fc.constantFrom(...QUESTIONS),
        fc.constantFrom<QuestionName | null>(...QUESTIONS, null),
        fc.constantFrom<DisplayUnit>('mm', 'cm', 'm', 'in'),
        (say, question, awaiting, unit) => {
          const heard = hear(question, say, { unit }, awaiting);
          if (heard?.kind !== 'facts') return;
          expect(heard.facts.length).toBeGreaterThan(0);
          for (const { value } of heard.facts) {
            const { 'piece.hanging.points': points, ...figures } = flat(value, '');
            const all = [
              ...Object.values(figures),
              ...((points ?? []) as object[]).flatMap((each) => Object.values(each)),
            ];
            for (const figure of all.filter((each) => typeof each === 'number')) {
              expect(Number.isFinite(figure) && figure >= 0).toBe(true);
            }
          }
        },
      ),
      { numRuns: 1500 },
    );
  });

  it.each([
    '<script>alert(x)</script>',
    "'; DROP TABLE answers; --",
    '🖼️🖼️ 🪞',
    'שלום, מראה כבדה',
    '٢٤ كجم',
    'x'.repeat(2000),
    '9'.repeat(2000),
    '1/0',
    '0/0 kg',
    '1e400 m',
    '--5',
    '',
  ])('"%s" records no mass, size, hanger or width', (say) => {
    for (const question of ['piece.massKg', 'piece.hanging', 'wall.widthMm'] as const) {
      expect(hear(question, say)?.kind).not.toBe('facts');
    }
  });

  it('spends on a message eight times as long about eight times the processor time', () => {
    const said = [
      '90 in 260 down no sorry 270 down, ',
      '900 x 1200 not 1300 x ',
      '1/2 and a half of ',
      'left right ',
      '- - 5 ',
    ];
    const timed = (say: string) => {
      const rounds = [1, 2, 3, 4, 5].map(() => {
        const start = process.cpuUsage();
        for (const question of ['piece.massKg', 'piece.hanging', 'wall.widthMm'] as const)
          hear(question, say);
        const spent = process.cpuUsage(start);
        return spent.user + spent.system;
      });
      return Math.min(...rounds);
    };
    for (const each of said) {
      const short = each.repeat(Math.ceil(500 / each.length));
      timed(short);
      const [once, eightfold] = [timed(short), timed(short.repeat(8))];
      // Linear would be 8, square 64; the rest is the machine's noise.
      expect(eightfold / once).toBeLessThan(40);
    }
  }, 30_000);

  it('takes a self-correction once: what is corrected has nothing left to correct', () => {
    fc.assert(
      fc.property(salad, (say) => {
        const once = corrected(tokens(say));
        const text = saidBetween(once, 0, once.length);
        fc.pre(!/\b(no|sorry|not)\b/.test(text));
        expect(corrected(once)).toEqual(once);
      }),
    );
  });
});
