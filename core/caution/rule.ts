import type { Caution, Severity } from '../plan-shape.ts';
import { type Basis, basisOf, type Sourced, sourced } from '../sources.ts';
import type { Facts } from './facts.ts';

/** Text that is fixed, or that takes its numbers from the job. */
type Told = string | ((facts: Facts) => string);

/**
 * One rule: when it applies, how severe it is, what is said, what clears a stop, and why it is believed.
 * The same id may stand in several rules of different severity; the worst that applies is spoken.
 */
export type Rule = {
  readonly id: string;
  readonly severity: Severity;
  readonly applies: (facts: Facts) => boolean;
  readonly text: Told;
  readonly clears?: Told;
  /** Tells how to drill, or where a hole is: not said while anything stops, so that neither leaves with a stop. */
  readonly whileDrilling?: true;
  readonly basis: readonly Basis[];
};

/** The documents set thresholds; almost none says "stop". */
const SEVERITY_IS_OURS = basisOf(sourced(0, 'our-choice', 'severity of a caution', 'our-choice'));

/** Bases of sourced records, for a rule. */
export function from(...records: readonly Omit<Sourced<unknown>, 'value'>[]): Basis[] {
  return records.map(basisOf);
}

const told = (text: Told, facts: Facts): string => (typeof text === 'string' ? text : text(facts));

/** The caution a rule speaks for these facts. */
function spoken(rule: Rule, facts: Facts): Caution {
  const caution: Caution = {
    id: rule.id,
    severity: rule.severity,
    text: told(rule.text, facts),
    basis: [...rule.basis, SEVERITY_IS_OURS],
  };
  return rule.severity === 'stop' && rule.clears ? { ...caution, clears: told(rule.clears, facts) } : caution;
}

/** The cautions of rules that apply, in the rules' order. */
export function applied(rules: readonly Rule[], facts: Facts): Caution[] {
  return rules.filter((rule) => rule.applies(facts)).map((rule) => spoken(rule, facts));
}
