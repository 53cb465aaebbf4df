import type { Input } from '../../../core/explain/explained.ts';

type Step = { value: number; rest: string };
const FUNCTIONS: Record<string, (...args: number[]) => number> = {
  up: (value) => Math.ceil(value - 1e-9),
  max: Math.max,
  min: Math.min,
  root: Math.sqrt,
  size: Math.abs,
  sin: (degrees) => Math.sin((degrees * Math.PI) / 180),
  cos: (degrees) => Math.cos((degrees * Math.PI) / 180),
  tan: (degrees) => Math.tan((degrees * Math.PI) / 180),
};

/**
 * Works a formula out again from its inputs, by its own reading of it: names longest first, `x` for times, `^` for a
 * power, and the words up, max, min, root, size, sin, cos, tan. Null where it is no arithmetic of its inputs.
 */
export function workedOut(formula: string, inputs: readonly Input[]): number | null {
  if ((formula === 'as said' || formula === 'as given') && inputs.length === 1)
    return Number(inputs[0]?.value);
  const names = inputs.filter(({ value }) => typeof value === 'number');
  let text = formula;
  for (const { name, value } of [...names].sort((a, b) => b.name.length - a.name.length))
    text = text.replaceAll(name, `{${value}}`);
  text = text.replace(/ x /g, '*').replaceAll(' ', '');
  try {
    const { value, rest } = sumOf(text);
    return rest === '' ? value : null;
  } catch {
    return null;
  }
}

function sumOf(text: string): Step {
  let { value, rest } = productOf(text);
  while (/^[+-]/.test(rest)) {
    const next = productOf(rest.slice(1));
    value += rest.startsWith('+') ? next.value : -next.value;
    rest = next.rest;
  }
  return { value, rest };
}

function productOf(text: string): Step {
  let { value, rest } = powerOf(text);
  while (/^[*/]/.test(rest)) {
    const next = powerOf(rest.slice(1));
    value = rest.startsWith('*') ? value * next.value : value / next.value;
    rest = next.rest;
  }
  return { value, rest };
}

function powerOf(text: string): Step {
  const base = atomOf(text);
  if (!base.rest.startsWith('^')) return base;
  const power = atomOf(base.rest.slice(1));
  return { value: base.value ** power.value, rest: power.rest };
}

function atomOf(text: string): Step {
  const [whole, figure] = /^\{([^}]*)\}/.exec(text) ?? /^(\d+(?:\.\d+)?)/.exec(text) ?? [];
  if (whole !== undefined) return { value: Number(figure), rest: text.slice(whole.length) };
  const [called, name = ''] = /^([a-z]*)\(/.exec(text) ?? [];
  if (called === undefined) throw new Error(`no number at ${text}`);
  const args: number[] = [];
  let rest = `,${text.slice(called.length)}`;
  while (rest.startsWith(',')) {
    const next = sumOf(rest.slice(1));
    args.push(next.value);
    rest = next.rest;
  }
  const works = name === '' ? (value: number): number => value : FUNCTIONS[name];
  if (!rest.startsWith(')') || !works) throw new Error(`${name} is no function of this arithmetic`);
  return { value: works(...(args as [number])), rest: rest.slice(1) };
}
