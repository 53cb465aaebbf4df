import type { z } from 'zod';
import { codePoints } from '../http/limits.ts';
import type { FieldError } from '../http/problem.ts';
import { type Described, describedBy, exampleOf, partsAt, wordsFor } from './described.ts';

type Issue = z.core.$ZodIssue;

/** Enough to put right at one go; a body of rubbish should not be answered with a longer one. */
const ERRORS_TOLD = 20;

/** Turns what zod found into what is wrong with each field, where, and what would do. */
export function refusalOf(schema: z.ZodType, issues: readonly Issue[], body: unknown): FieldError[] {
  const root = describedBy(schema);
  return issues
    .flatMap((issue) => leaves(issue))
    .slice(0, ERRORS_TOLD)
    .map((issue) => fieldError(root, issue, body));
}

/** One sentence for the whole refusal. */
export function sentenceOf(errors: readonly FieldError[]): string {
  const [first] = errors;
  if (!first) return 'A field cannot be read.';
  const where = first.path === '' ? 'The body' : first.path;
  const got = first.received === undefined ? '' : `, not ${first.received}`;
  const more = errors.length > 1 ? ` And ${errors.length - 1} more, in errors.` : '';
  return `${where}: ${first.expected}${got}.${more}`;
}

/** An issue of a union speaks for the alternative that came furthest, or for the union when none did. */
function leaves(issue: Issue): Issue[] {
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({ ...issue, keys: [key], path: [...issue.path, key] }));
  if (issue.code !== 'invalid_union') return [issue];
  const reached = issue.errors.filter((alternative) => alternative.every((each) => each.path.length > 0));
  const [closest = ofItsKind(issue.errors)] = reached;
  if (!closest) return [issue];
  return closest.flatMap((each) => leaves({ ...each, path: [...issue.path, ...each.path] }));
}

/** With a field too many in every alternative, the one that has least against what came. */
function ofItsKind(alternatives: readonly Issue[][]): Issue[] | undefined {
  return alternatives
    .filter((own) => own.every((each) => each.path.length > 0 || each.code === 'unrecognized_keys'))
    .sort((one, other) => one.length - other.length)[0];
}

function fieldError(root: Described, issue: Issue, body: unknown): FieldError {
  const path = issue.path.map(String).join('.');
  if (issue.code === 'unrecognized_keys') {
    const around = partsAt(root, issue.path.slice(0, -1));
    return { path, expected: unknownField(issue.keys[0] ?? '', around), example: exampleOf(root, around[0]) };
  }
  const parts = partsAt(root, issue.path);
  const field = String(issue.path.findLast((step) => typeof step === 'string') ?? '');
  const told = wordsFor(parts, field);
  const received = issue.code === 'custom' ? receivedAlone(body, issue.path) : receivedAt(body, issue.path);
  return {
    path,
    expected: issue.code === 'custom' ? issue.message : told || issue.message,
    ...(received !== undefined && { received }),
    example: exampleOf(root, parts[0]),
  };
}

const ONE_OR_SEVERAL = 'either one piece, in `piece`, or several in `pieces` with `arrange`, not both';

function unknownField(key: string, around: readonly Described[]): string {
  if (key === 'pieces' || key === 'arrange') return ONE_OR_SEVERAL;
  const fields = [...new Set(around.flatMap((part) => Object.keys(part.properties ?? {})))];
  return `no field of this name; there are ${fields.join(', ')}`;
}

/** A rule of our own over several fields, or a list of them, is not explained by naming what kind of thing came. */
function receivedAlone(body: unknown, path: readonly PropertyKey[]): string | undefined {
  const received = receivedAt(body, path);
  return received === 'an object' || received?.startsWith('a list of ') ? undefined : received;
}

const SHORT = 40;

/** Short, and never a whole body: what came may be long, or something the sender did not mean to show. */
function receivedAt(body: unknown, path: readonly PropertyKey[]): string | undefined {
  let value = body;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = Reflect.get(value, step);
  }
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return String(value);
  if (typeof value === 'string')
    return value.length <= SHORT ? JSON.stringify(value) : `text of ${codePoints(value)} characters`;
  return Array.isArray(value) ? `a list of ${value.length}` : 'an object';
}
