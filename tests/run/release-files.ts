import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { type Zippable, zipSync } from 'fflate';
import { hostFiles } from './host-files.ts';

/** What a release has in it, by its path there: the app in `site/`, and beside it what a host is told. */
export function filesOfRelease(root: string): ReadonlyMap<string, Uint8Array> {
  const text = new TextEncoder();
  const files = new Map<string, Uint8Array>();
  for (const path of pathsIn(root)) files.set(`site/${path}`, readFileSync(join(root, path)));
  for (const [path, contents] of Object.entries(hostFiles(root))) files.set(path, text.encode(contents));
  files.set('LICENSE', readFileSync('LICENSE'));
  files.set('LICENCES-OF-WHAT-IS-INSIDE.txt', readFileSync(join(root, 'licences.txt')));
  return files;
}

/** The same bytes whenever it is made: no file has a time of its own. */
export function zipped(files: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const entries: Zippable = Object.fromEntries([...files].sort(([a], [b]) => (a < b ? -1 : 1)));
  return zipSync(entries, { level: 9, mtime: new Date(2000, 0, 1) });
}

const pathsIn = (root: string): string[] =>
  readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((path) => statSync(join(root, path)).isFile())
    // what the build tells itself
    .filter((path) => !path.startsWith('.vite'))
    .map((path) => relative('.', path).split(sep).join('/'));
