import fc from 'fast-check';
import { letter } from './typed-fields.ts';

type Json = unknown;

const oddValues: readonly Json[] = [
  null,
  true,
  '',
  '__proto__',
  0,
  -1,
  1.5,
  1e308,
  99_999_999,
  [],
  {},
  [[[[[[]]]]]],
  'x'.repeat(300),
  '../..',
  'scarf/long/0/1',
  '\u0000',
  '💥',
];
const oddKeys = ['__proto__', 'constructor', 'prototype', 'toString', 'more', 'id', 'kind', 'plan'] as const;

/** A whole document with one to four things in it changed, put in, taken out, doubled or moved. */
export const mutated = (document: Json): fc.Arbitrary<string> =>
  fc
    .array(fc.tuple(fc.nat(), fc.nat(), fc.nat(), fc.nat()), { minLength: 1, maxLength: 4 })
    .map((changes) => {
      const copy = JSON.parse(JSON.stringify(document)) as Json;
      for (const change of changes) mutate(copy, ...change);
      return JSON.stringify(copy).replaceAll('"protokey":', '"__proto__":');
    });

/** Walks down at random and changes what it comes to. */
function mutate(root: Json, way: number, what: number, which: number, stop: number): void {
  let holder = root as Record<string, Json>;
  let turn = way;
  for (let depth = 0; depth <= stop % 9; depth += 1) {
    const keys = Object.keys(holder);
    if (keys.length === 0) break;
    const next = holder[keys[turn % keys.length] as string];
    turn = Math.floor(turn / keys.length) + way + depth * 7;
    if (typeof next !== 'object' || next === null) break;
    holder = next as Record<string, Json>;
  }
  change(holder, what, which);
}

function change(holder: Record<string, Json>, what: number, which: number): void {
  const keys = Object.keys(holder);
  const key = keys[which % Math.max(1, keys.length)] ?? 'more';
  const odd = oddValues[which % oddValues.length];
  const oddKey = String(oddKeys[which % oddKeys.length]);
  const set = (name: string, value: Json) => {
    // a copy: what stands in two places must not be one thing, nor lie within itself
    holder[name] = structuredClone(value);
  };
  const list = Array.isArray(holder) ? (holder as Json[]) : [];
  const deeds: (() => unknown)[] = [
    () => set(key, odd),
    () => delete holder[key],
    // written as '__proto__' only in the text: as a key of ours it would not be one
    () => set(oddKey === '__proto__' ? 'protokey' : oddKey, odd),
    () => list.push(structuredClone(list[0])),
    () => list.reverse(),
    () => typeof holder[key] === 'number' && set(key, holder[key] + ((which % 5) - 2)),
    () => typeof holder[key] === 'string' && set(key, `${holder[key]}!`),
    () => set(key, holder[keys[(which + 1) % Math.max(1, keys.length)] ?? 'more']),
  ];
  deeds[what % deeds.length]?.();
}

/** The text of a document with some of its characters cut, doubled or exchanged. */
export const garbled = (document: Json): fc.Arbitrary<string> => {
  const text = JSON.stringify(document);
  return fc
    .tuple(fc.nat(text.length), fc.nat(40), fc.string({ unit: letter, maxLength: 12 }))
    .map(([at, cut, put]) => text.slice(0, at) + put + text.slice(at + cut));
};

/** Any file at all, from noise to JSON with our name on it. */
export const anyFile = (): fc.Arbitrary<string> =>
  fc.oneof(
    fc.string({ unit: letter, maxLength: 200 }),
    fc.json({ maxDepth: 6 }),
    fc.json().map((json) => `{"format":"ridgeline-backup","version":1,"madeAt":1,"garments":${json}}`),
    fc.nat(5000).map((depth) => `${'['.repeat(depth)}${']'.repeat(depth)}`),
    fc
      .nat(3000)
      .map(
        (depth) =>
          `{"format":"ridgeline-backup","version":1,"garments":${'{"a":'.repeat(depth)}1${'}'.repeat(depth)}}`,
      ),
  );
