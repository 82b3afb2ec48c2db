import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const imported = /(?:from|import)\s*\(?\s*'(\.[^']+)'/g;

/** Tells of a file a hash that changes when it or any file changes that it imports, near or far. */
export function hashes(): (file: string) => string {
  const found = new Map<string, { hash: string; imports: readonly string[] }>();
  const look = (file: string) => {
    const known = found.get(file);
    if (known !== undefined) return known;
    const text = existsSync(file) ? readFileSync(file, 'utf8') : '';
    const one = {
      hash: createHash('sha1').update(text).digest('hex'),
      imports: [...text.matchAll(imported)].map(([, path = '']) => join(dirname(file), path)),
    };
    found.set(file, one);
    return one;
  };
  return (file) => {
    const all = new Set([file]);
    for (const one of all) for (const other of look(one).imports) all.add(other);
    const hash = createHash('sha1');
    for (const one of [...all].sort()) hash.update(one).update(look(one).hash);
    return hash.digest('hex');
  };
}
