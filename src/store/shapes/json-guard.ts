/** What a document may hold before anyone looks at its meaning. */
export interface JsonLimits {
  readonly depth: number;
  /** values in all: objects, lists and what is in them */
  readonly values: number;
  readonly text: number;
}

const forbidden: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** What is wrong with a value read from JSON, with the path to it; undefined when nothing is. Never recurses. */
export function jsonTrouble(
  value: unknown,
  limits: JsonLimits,
):
  | {
      readonly what: 'too deep' | 'too many values' | 'text too long' | 'bad number' | 'bad key';
      readonly path: string;
    }
  | undefined {
  const open: { value: unknown; depth: number; path: string }[] = [{ value, depth: 0, path: '' }];
  let values = 0;
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { value: it, depth, path } = next;
    values += 1;
    if (values > limits.values) return { what: 'too many values', path };
    if (depth > limits.depth) return { what: 'too deep', path };
    if (typeof it === 'string' && it.length > limits.text) return { what: 'text too long', path };
    if (typeof it === 'number' && !Number.isFinite(it)) return { what: 'bad number', path };
    if (typeof it !== 'object' || it === null) continue;
    for (const key of Object.keys(it)) {
      if (forbidden.has(key)) return { what: 'bad key', path };
      open.push({
        value: (it as Record<string, unknown>)[key],
        depth: depth + 1,
        path: path === '' ? key : `${path}.${key}`,
      });
    }
  }
  return undefined;
}
