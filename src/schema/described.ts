import { z } from 'zod';

/** A JSON Schema as zod writes it; only what is read here. */
export type Described = {
  $ref?: string;
  $defs?: Record<string, Described>;
  type?: string;
  const?: unknown;
  enum?: unknown[];
  minimum?: number;
  maximum?: number;
  minLength?: number;
  maxLength?: number;
  minItems?: number;
  maxItems?: number;
  properties?: Record<string, Described>;
  required?: string[];
  items?: Described;
  anyOf?: Described[];
  oneOf?: Described[];
  examples?: unknown[];
};

const described = new WeakMap<z.ZodType, Described>();

/** The JSON Schema of what a zod schema takes in; made once a schema, when the first refusal needs it. */
export function describedBy(schema: z.ZodType): Described {
  const known = described.get(schema) ?? (z.toJSONSchema(schema, { io: 'input' }) as Described);
  described.set(schema, known);
  return known;
}

/** The parts of a description that a path leads to; several where alternatives have a field of that name. */
export function partsAt(root: Described, path: readonly PropertyKey[]): Described[] {
  let parts = [root];
  for (const step of path)
    parts = parts.flatMap((part) => alternatives(root, part)).flatMap((part) => below(part, step));
  return parts.flatMap((part) => alternatives(root, part));
}

function below(part: Described, step: PropertyKey): Described[] {
  const next =
    typeof step === 'number'
      ? part.items
      : Object.entries(part.properties ?? {}).find(([name]) => name === step)?.[1];
  return next ? [next] : [];
}

function alternatives(root: Described, part: Described): Described[] {
  const options = part.anyOf ?? part.oneOf;
  if (options && !part.properties) return options.flatMap((option) => alternatives(root, option));
  if (part.$ref === undefined) return [part];
  const named = root.$defs?.[part.$ref.split('/').at(-1) ?? ''];
  return named ? alternatives(root, named) : [];
}

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/Mm$|^mm$/, ' millimetres'],
  [/Kg$/, ' kilograms'],
  [/N$/, ' newtons'],
];

/** What a part takes, in words a person can act on: "a number from 1 to 20000 millimetres". */
export function wordsFor(part: Described, field: string): string {
  if (part.const !== undefined) return JSON.stringify(part.const);
  if (part.enum) return `one of ${part.enum.join(', ')}`;
  switch (part.type) {
    case 'number':
    case 'integer': {
      const kind = part.type === 'integer' ? 'a whole number' : 'a number';
      const unit = UNITS.find(([ending]) => ending.test(field))?.[1] ?? '';
      return `${kind} from ${part.minimum} to ${part.maximum}${unit}`;
    }
    case 'string':
      return part.maxLength ? `text of ${part.minLength ?? 0} to ${part.maxLength} characters` : 'text';
    case 'boolean':
      return 'true or false';
    case 'array':
      return part.maxItems === undefined
        ? 'a list'
        : `a list of ${part.minItems ?? 0} to ${part.maxItems} entries`;
    default:
      return 'an object';
  }
}

/** Something that would do in that place. */
export function exampleOf(part: Described | undefined): unknown {
  if (!part) return null;
  if (part.examples) return part.examples[0];
  if (part.const !== undefined) return part.const;
  if (part.enum) return part.enum[0];
  if (part.type === 'boolean') return true;
  if (part.type === 'array') return [exampleOf(part.items)];
  if (part.type === 'number' || part.type === 'integer') return part.minimum ?? 0;
  if (part.type === 'string') return '…';
  const needed = Object.entries(part.properties ?? {}).filter(([name]) => part.required?.includes(name));
  return Object.fromEntries(needed.map(([name, value]) => [name, exampleOf(value)]));
}
