/** Whys are the explanations themselves, and a basis is a citation: their figures are not the plan's. */
const NOT_NUMBERS_OF_THE_PLAN = new Set(['why', 'basis']);

/** The path of every number of a plan, by place in its lists. */
export function numbersIn(node: unknown, path = ''): string[] {
  if (typeof node === 'number') return [path];
  if (node === null || typeof node !== 'object') return [];
  return Object.entries(node).flatMap(([key, child]) => {
    if (NOT_NUMBERS_OF_THE_PLAN.has(key)) return [];
    const step = Array.isArray(node) ? `[${key}]` : path === '' ? key : `.${key}`;
    return numbersIn(child, path + step);
  });
}

/** What is at a dotted path; undefined where it leads nowhere. */
export function at(node: unknown, path: string): unknown {
  return (path.match(/[^.[\]]+/g) ?? []).reduce<unknown>(
    (here, step) => (here as Record<string, unknown> | undefined)?.[step],
    node,
  );
}
