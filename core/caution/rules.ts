import type { JobSoFar } from '../job.ts';
import type { Caution, Severity } from '../plan-shape.ts';
import { basisOf, sourced } from '../sources.ts';
import { type Context, type Facts, factsOf, factsSoFar } from './facts.ts';
import { builtInRules } from './gates/built-in.ts';
import { gatesRules } from './gates/gates.ts';
import { separatingRules } from './gates/separating.ts';
import { tenancyRules } from './gates/tenancy.ts';
import { hangingRules } from './hanging/hanging.ts';
import { levelRules } from './hanging/level.ts';
import { asbestosRules } from './health/asbestos.ts';
import { dustRules } from './health/dust.ts';
import { leadRules } from './health/lead.ts';
import { liftingRules } from './lifting/lifting.ts';
import { accessRules } from './place/access.ts';
import { bathroomRules } from './place/bathroom.ts';
import { fireRules } from './place/fire.ts';
import { glassRules } from './place/glass.ts';
import { peopleBelowRules } from './place/people-below.ts';
import { applied, type Rule } from './rule.ts';
import { servicesRules } from './services/services.ts';
import { wiringRules } from './services/wiring.ts';
import { wallKindRules } from './wall/wall-kind.ts';

/** Every rule, families in the order in which they are spoken. */
export const RULES: readonly Rule[] = [
  ...asbestosRules,
  ...servicesRules,
  ...wallKindRules,
  ...gatesRules,
  ...separatingRules,
  ...builtInRules,
  ...tenancyRules,
  ...bathroomRules,
  ...peopleBelowRules,
  ...liftingRules,
  ...glassRules,
  ...accessRules,
  ...wiringRules,
  ...leadRules,
  ...dustRules,
  ...fireRules,
  ...hangingRules,
  ...levelRules,
];

/** The one line that every reply with marks carries. */
export const standingCautions =
  'Scan before drilling and switch off the circuits in this wall; glasses on; keep the dust down at the hole; lift with enough hands; local codes and licensed trades decide where they apply.';

const STOPS = RULES.filter((rule) => rule.severity === 'stop');
const OTHERS = RULES.filter((rule) => rule.severity !== 'stop');
const NOT_DRILLING = OTHERS.filter((rule) => !rule.whileDrilling);

const FITS = basisOf(sourced(0, 'statics', 'what does not fit, by arithmetic', 'derived'));
const FOUND = basisOf(sourced(0, 'our-choice', 'a finding on the fixing; severity is ours', 'our-choice'));

/** Every caution of a whole job, stops first, then warns, then notes; each id once, at its worst. Never throws. */
export function cautionsOf(context: Context): Caution[] {
  const facts = factsOf(context);
  const stops = [...notFitting(context), ...applied(STOPS, facts)];
  const others = stops.length > 0 || context.stopped ? NOT_DRILLING : OTHERS;
  const own = [...stops, ...applied(others, facts)];
  // While anything stops no fixing is given, and what was found on it would tell how to drill.
  return ordered(stops.length > 0 ? own : [...own, ...findings(context, own)]);
}

/**
 * The stops of an unfinished job that are certain from what was said, wherever the piece goes. What was
 * not asked yet stops nothing; what was asked and is not known stops as the contract says. Never throws.
 */
export function stopsSoFar(job: JobSoFar): Caution[] {
  const facts: Facts = factsSoFar(job);
  return ordered(applied(STOPS, facts));
}

function notFitting({ setOut }: Context): Caution[] {
  if (setOut.ok) return [];
  return [{ id: setOut.id, severity: 'stop', text: setOut.text, clears: setOut.clears, basis: [FITS] }];
}

/** What choosing a fastener found, as a warn or a stop; what a rule here says already is not said twice. */
function findings({ fixing }: Context, own: readonly Caution[]): Caution[] {
  if (!fixing?.ok) return [];
  const said = new Set(own.filter((each) => each.severity !== 'note').map((each) => each.id));
  return fixing.findings
    .filter(({ id }) => !said.has(id))
    .map(({ id, text, stops }) =>
      stops === undefined
        ? { id, severity: 'warn', text, basis: [FOUND] }
        : { id, severity: 'stop', text, clears: stops, basis: [FOUND] },
    );
}

const ORDER: readonly Severity[] = ['stop', 'warn', 'note'];

/** Each id once, at its worst; where several rules say it at that severity, their words are joined. */
function ordered(cautions: readonly Caution[]): Caution[] {
  const byId = new Map<string, Caution>();
  for (const severity of ORDER) {
    for (const caution of cautions.filter((each) => each.severity === severity)) {
      const first = byId.get(caution.id);
      if (!first) byId.set(caution.id, caution);
      else if (first.severity === severity) byId.set(caution.id, joined(first, caution));
    }
  }
  return [...byId.values()];
}

function joined(first: Caution, second: Caution): Caution {
  if (first.text === second.text) return first;
  const clears = [first.clears, second.clears].filter((each) => each !== undefined);
  return {
    ...first,
    text: `${first.text} ${second.text}`,
    ...(clears.length > 0 && { clears: [...new Set(clears)].join(' ') }),
    basis: [...first.basis, ...second.basis],
  };
}
