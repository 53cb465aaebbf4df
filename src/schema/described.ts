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

/** How zod's schemas are described: by what they take in. It drops examples of what it transforms; ours are of input. */
export const AS_TAKEN_IN: Parameters<typeof z.toJSONSchema>[1] = {
  io: 'input',
  override: ({ zodSchema, jsonSchema }) => {
    const examples = z.globalRegistry.get(zodSchema)?.examples;
    if (Array.isArray(examples)) jsonSchema.examples ??= examples;
  },
};

const described = new WeakMap<z.ZodType, Described>();

/** The JSON Schema of what a zod schema takes in; made once a schema, when the first refusal needs it. */
export function describedBy(schema: z.ZodType): Described {
  const known = described.get(schema) ?? (z.toJSONSchema(schema, AS_TAKEN_IN) as Described);
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

/** What parts take, in words a person can act on: "a number from 1 to 20000 millimetres". */
export function wordsFor(parts: readonly Described[], field: string): string {
  const values = parts.flatMap((part) => part.enum ?? (part.const === undefined ? [] : [part.const]));
  const shapes = parts.filter((part) => part.enum === undefined && part.const === undefined);
  const words = shapes.map((part) => shapeWords(part, field));
  if (values.length === 1) words.push(JSON.stringify(values[0]));
  if (values.length > 1) words.push(`one of ${values.join(', ')}`);
  return [...new Set(words)].join(', or ');
}

function shapeWords(part: Described, field: string): string {
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
      return part.required ? `an object with ${part.required.join(', ')}` : 'an object';
  }
}

/** Something that would do in that place. */
export function exampleOf(root: Described, part: Described | undefined): unknown {
  const [first] = part && !part.examples ? alternatives(root, part) : [part];
  if (!first) return null;
  if (first.examples) return first.examples[0];
  if (first.const !== undefined) return first.const;
  if (first.enum) return first.enum[0];
  if (first.type === 'boolean') return true;
  if (first.type === 'array') return [exampleOf(root, first.items)];
  if (first.type === 'number' || first.type === 'integer') return first.minimum ?? 0;
  if (first.type === 'string') return '…';
  const needed = Object.entries(first.properties ?? {}).filter(([name]) => first.required?.includes(name));
  return Object.fromEntries(needed.map(([name, value]) => [name, exampleOf(root, value)]));
}
