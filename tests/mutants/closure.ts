import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const imported = /(?:(?:import|export)\s([^';]*?)from|import)\s*\(?\s*'(\.[^']+)'/g;

/** What is imported as a type alone is gone when the program runs. */
const isOfTypes = (names: string): boolean =>
  /^\s*type\b/.test(names) || /^\s*\{(\s*type\b[^,}]*,?)+\s*\}\s*$/.test(names);

interface Read {
  readonly text: string;
  readonly imports: readonly string[];
}

/** Tells of a file all that it imports, near or far, itself as well; paths are from `root`. */
export function imports(root = '.'): (file: string) => readonly string[] {
  const read = reading(root);
  return (file) => {
    const all = new Set([file]);
    for (const one of all) for (const other of read(one).imports) all.add(other);
    return [...all];
  };
}

/** Tells of a file a hash that changes when it or any file changes that it imports, near or far. */
export function hashes(): (file: string) => string {
  const read = reading('.');
  const importedBy = imports();
  return (file) => {
    const hash = createHash('sha1');
    for (const one of [...importedBy(file)].sort()) hash.update(one).update(read(one).text);
    return hash.digest('hex');
  };
}

/** Reads each file once. */
function reading(root: string): (file: string) => Read {
  const found = new Map<string, Read>();
  return (file) => {
    const known = found.get(file);
    if (known !== undefined) return known;
    const path = join(root, file);
    const text = existsSync(path) ? readFileSync(path, 'utf8') : '';
    const one = {
      text,
      imports: [...text.matchAll(imported)].flatMap(([, names = '', other = '']) =>
        isOfTypes(names) ? [] : [join(dirname(file), other)],
      ),
    };
    found.set(file, one);
    return one;
  };
}
