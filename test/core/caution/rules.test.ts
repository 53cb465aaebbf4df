import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cautionsOf, RULES, standingCautions, stopsSoFar } from '../../../core/caution/rules.ts';
import type { NothingHolds } from '../../../core/fixing/choice.ts';
import type { Job } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';
import type { DoesNotFit } from '../../../core/layout/set-out.ts';
import type { Caution } from '../../../core/plan-shape.ts';
import { kg, mm, newtons } from '../../../core/quantity.ts';
import { answered } from './answered.ts';
import { anyJob } from './any-job.ts';
import { allIds } from './cases.ts';
import { heldAt, jobWith, saidOf, severityOf } from './ordinary-job.ts';

type Sanity = { id: string; title: string; job: Job; accept: { verdicts: string[]; cautions?: string[] } };
const SANITY: Sanity[] = JSON.parse(
  readFileSync(new URL('../../fixtures/reference/sanity-jobs.json', import.meta.url), 'utf8'),
).jobs;

const verdict = (cautions: readonly Caution[]): string =>
  cautions.some(({ severity }) => severity === 'stop')
    ? 'stop'
    : cautions.some(({ severity }) => severity === 'warn')
      ? 'care'
      : 'go';

/** Words of a sanity job that a caution (and not the fixing or the set-out) has to say, and how it says them. */
const WORDS: Record<string, RegExp> = {
  'depth over 50 mm': /depth is over 50 mm/,
  'two people': /two people/i,
  dust: /dust/i,
  'silica dust': /silica/i,
  'old wiring': /old wiring/i,
  'lead paint': /lead paint/i,
  'tensioned concrete': /tensioned concrete/i,
  'team lift': /team lift/i,
  heritage: /heritage/i,
  'no hammer': /no hammer/i,
  'gap behind the board': /gap behind the board/i,
  'wet area': /wet area/i,
  tile: /tile/i,
  'flat cord': /flat cord/i,
  'one hook and wide': /one hook and wide/i,
};

const saidOfSanity = (job: Job): Caution[] => {
  const layout = setOut(job);
  return cautionsOf({ job, setOut: layout, fixing: layout.ok ? heldAt(72) : null });
};

describe('the cautions of a job', () => {
  it.each(SANITY)(
    '$id, $title: cautions alone come to an accepted verdict (common practice)',
    ({ job, accept }) => {
      const said = saidOfSanity(job);
      const stopped = verdict(said) === 'stop';
      expect(
        stopped ? accept.verdicts.includes('stop') : accept.verdicts.some((each) => each !== 'stop'),
      ).toBe(true);
    },
  );

  it.each(
    SANITY.flatMap(({ id, job, accept }) =>
      (accept.cautions ?? []).filter((words) => WORDS[words]).map((words) => ({ id, job, words })),
    ),
  )('$id is told of "$words" (common practice)', ({ job, words }) => {
    const spoken = [standingCautions, ...saidOfSanity(job).map(({ text }) => text)].join(' ');
    expect(spoken).toMatch(WORDS[words] ?? /^never$/);
  });

  it('an ordinary job is not stopped, and goes without a warning where nothing is out of the ordinary', () => {
    expect(verdict(saidOf(jobWith()))).toBe('care');
    const light = jobWith({
      building: { country: 'UK' },
      piece: { kind: 'canvas', massKg: kg(4), glass: 'none', widthMm: mm(600) },
    });
    expect(verdict(saidOf(light))).toBe('go');
  });

  it('stops come first, then warns, then notes, and no id comes twice', () => {
    const said = saidOf(
      jobWith({ building: { yearBuilt: 1960, heritage: true }, piece: { massKg: kg(60), lit: true } }),
    );
    const order = said.map(({ severity }) => ['stop', 'warn', 'note'].indexOf(severity));
    expect(order).toEqual([...order].sort());
    expect(new Set(said.map(({ id }) => id)).size).toBe(said.length);
  });

  it('while anything stops, nothing tells how to drill', () => {
    const said = saidOf(
      jobWith({ building: { yearBuilt: 1960, heritage: true }, crew: { dustExtraction: false } }),
      undefined,
      heldAt(72),
    );
    expect(said.map(({ id }) => id)).not.toEqual(expect.arrayContaining(['C-SI-1']));
    expect(said.some(({ id }) => ['C-PB-1', 'C-SI-4', 'C-PP-1', 'C-SV-3'].includes(id))).toBe(false);
  });

  it('a piece that does not fit stops with its own id, number and way out', () => {
    const misfit: DoesNotFit = {
      ok: false,
      id: 'C-FT-4',
      text: '100 mm through the ceiling.',
      overByMm: mm(100),
      clears: 'Lower it.',
    };
    const [first] = cautionsOf({ job: jobWith(), setOut: misfit, fixing: null });
    expect(first).toMatchObject({ id: 'C-FT-4', severity: 'stop', text: misfit.text, clears: misfit.clears });
  });

  it('a fastener that nothing supports stops with what choosing it found', () => {
    const layout = setOut(jobWith());
    const nothing: NothingHolds = {
      ok: false,
      actions: { weightN: newtons(235), perMark: [] },
      because: 'Nothing on the list holds here.',
      clears: 'A packet rating.',
      rejected: [],
      assumptions: [],
      basis: [],
    };
    const said = cautionsOf({ job: jobWith(), setOut: layout, fixing: nothing });
    expect(said.find(({ id }) => id === 'C-GT-9')).toMatchObject({
      severity: 'stop',
      text: nothing.because,
      clears: nothing.clears,
    });
  });

  it('a finding on the fixing is a warn, and is not said twice', () => {
    const findings = [
      { id: 'C-WL-2', text: 'Part of that plug sits in plaster.' },
      { id: 'C-HG-4', text: 'Soft frame.' },
    ];
    const soft = { frame: { material: 'mdf', widthMm: mm(40), thicknessMm: mm(18) } } as const;
    const said = saidOf(jobWith({ piece: { build: soft } }), undefined, heldAt(40, {}, findings));
    expect(severityOf(said, 'C-WL-2')).toBe('warn');
    expect(said.find(({ id }) => id === 'C-HG-4')?.text).not.toContain('Soft frame.');
  });

  it('unknown stops the wall, its accessories, and nothing else of an ordinary job', () => {
    const unknown = {
      building: {
        country: 'unknown',
        yearBuilt: 'unknown',
        rewiredYear: 'unknown',
        kind: 'unknown',
        tenure: 'unknown',
        consent: 'unknown',
        heritage: 'unknown',
        seismic: 'unknown',
      },
      piece: { glass: 'unknown', lit: 'unknown' },
      wall: {
        cores: 'unknown',
        wet: 'unknown',
        coating: 'unknown',
        asbestos: 'unknown',
        tensioned: 'unknown',
        separating: 'unknown',
        condition: 'unknown',
      },
      place: { below: 'unknown' },
      crew: { people: 'unknown', dustExtraction: 'unknown', lifter: 'unknown' },
    } as const;
    const stops = (job: Job): string[] =>
      saidOf(job)
        .filter(({ severity }) => severity === 'stop')
        .map(({ id }) => id);
    expect(stops(jobWith(unknown))).toEqual([]);
    expect(
      stops(
        jobWith({ ...unknown, wall: { ...unknown.wall, baseMaterial: 'unknown', accessories: 'unknown' } }),
      ),
    ).toEqual(['C-SV-4', 'C-WL-1']);
    expect(stops(jobWith({ ...unknown, building: { ...unknown.building, tenure: 'tenant' } }))).toEqual([
      'C-GT-2',
    ]);
    const flat = { ...unknown.building, kind: 'flat' } as const;
    expect(
      stops(jobWith({ ...unknown, building: flat, wall: { ...unknown.wall, baseMaterial: 'concrete' } })),
    ).toEqual(['C-GT-1']);
    expect(
      stops(jobWith({ ...unknown, wall: { ...unknown.wall, baseMaterial: 'fibre-cement-on-studs' } })),
    ).toEqual(['C-AB-1']);
    expect(stops(jobWith({ ...unknown, wall: { ...unknown.wall, coating: 'textured' } }))).toEqual([
      'C-AB-1',
    ]);
  });

  it('every rule cites what it stands on, and each stop has what clears it', () => {
    for (const rule of RULES) {
      expect(rule.basis.length, rule.id).toBeGreaterThan(0);
      if (rule.severity === 'stop') expect(rule.clears, rule.id).toBeDefined();
    }
  });

  it('no job throws, no words say that a wall is safe, and what stops so far stops the whole job', () => {
    fc.assert(
      fc.property(anyJob, fc.option(fc.integer({ min: 0, max: 120 })), (job, depth) => {
        const layout = setOut(job);
        const fixing = layout.ok && depth !== null ? heldAt(depth) : null;
        const said = cautionsOf({ job, setOut: layout, fixing });
        const stops = said.filter(({ severity }) => severity === 'stop').map(({ id }) => id);
        for (const { id, text, basis } of said) {
          expect(text).not.toMatch(/\b(wall|it) is safe\b/);
          // What does not fit is set-out's sentence, and some of these jobs have no length at all in them.
          if (!id.startsWith('C-FT-')) expect(text).not.toMatch(/undefined|NaN|null|Infinity/);
          expect(basis.length).toBeGreaterThan(0);
        }
        for (const { id } of stopsSoFar(job)) expect(stops).toContain(id);
      }),
      { numRuns: 300 },
    );
  });

  it('each id answered here is a published case', () => {
    expect(answered.filter((id) => !allIds.includes(id))).toEqual([]);
    expect(new Set(answered).size).toBe(answered.length);
  });
});
