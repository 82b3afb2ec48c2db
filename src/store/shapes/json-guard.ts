/** What a document may hold before anyone looks at its meaning. */
export interface JsonLimits {
  readonly depth: number;
  /** values in all: objects, lists and what is in them */
  readonly values: number;
  readonly text: number;
}

const forbidden: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

type Wrong = 'too deep' | 'too many values' | 'text too long' | 'bad number' | 'bad key';

interface Open {
  readonly value: object;
  readonly depth: number;
  readonly path: string;
}

/** What is wrong with a value read from JSON, with the path to it; undefined when nothing is. Never recurses. */
export function jsonTrouble(
  value: unknown,
  limits: JsonLimits,
): { readonly what: Wrong; readonly path: string } | undefined {
  const wrong = plainTrouble(value, limits);
  if (wrong !== undefined) return { what: wrong, path: '' };
  const open: Open[] = isObject(value) ? [{ value, depth: 0, path: '' }] : [];
  let values = 1;
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { value: it, depth, path } = next;
    // counted before it is listed: a long list would fill the memory with what is refused anyway
    values += Array.isArray(it) ? it.length : 0;
    if (values > limits.values) return { what: 'too many values', path };
    const keys = Object.keys(it);
    values += Array.isArray(it) ? 0 : keys.length;
    if (values > limits.values) return { what: 'too many values', path };
    if (keys.length > 0 && depth >= limits.depth) return { what: 'too deep', path };
    for (const key of keys) {
      if (forbidden.has(key)) return { what: 'bad key', path };
      const inner = (it as Record<string, unknown>)[key];
      const trouble = plainTrouble(inner, limits);
      if (trouble !== undefined) return { what: trouble, path: under(path, key) };
      if (isObject(inner)) open.push({ value: inner, depth: depth + 1, path: under(path, key) });
    }
  }
  return undefined;
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;

const under = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

function plainTrouble(value: unknown, limits: JsonLimits): Wrong | undefined {
  if (typeof value === 'string' && value.length > limits.text) return 'text too long';
  return typeof value === 'number' && !Number.isFinite(value) ? 'bad number' : undefined;
}
