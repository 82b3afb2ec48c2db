import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** What a visitor has to fetch, read from a build. All sizes are bytes after gzip. */

interface Chunk {
  readonly file: string;
  /** keys of the chunks that it needs before it can run */
  readonly imports?: readonly string[];
}

type Manifest = Readonly<Record<string, Chunk>>;

/** The scripts that the page names, with all they need before they can run: the row in hand with its words. */
export function initialScripts(dist: string): string[] {
  const manifest = JSON.parse(readFileSync(join(dist, '.vite/manifest.json'), 'utf8')) as Manifest;
  const needed = new Set<string>();
  const take = (chunk: Chunk | undefined, name: string) => {
    if (chunk === undefined) throw new Error(`The build has no chunk for ${name}.`);
    if (needed.has(chunk.file)) return;
    needed.add(chunk.file);
    for (const key of chunk.imports ?? []) take(manifest[key], key);
  };
  for (const file of pageScripts(dist))
    take(
      Object.values(manifest).find((chunk) => chunk.file === file),
      file,
    );
  return [...needed].sort();
}

/** Scripts that are among `kept` but cannot run without one that is not: 'a.js needs b.js'. */
export function cannotRunAlone(dist: string, kept: readonly string[]): string[] {
  const manifest = JSON.parse(readFileSync(join(dist, '.vite/manifest.json'), 'utf8')) as Manifest;
  return Object.values(manifest)
    .filter(({ file }) => kept.includes(file))
    .flatMap(({ file, imports = [] }) =>
      imports
        .map((key) => manifest[key]?.file ?? key)
        .filter((needed) => !kept.includes(needed))
        .map((needed) => `${nameOf(file)} needs ${nameOf(needed)}`),
    );
}

const nameOf = (file: string): string => file.replace(/^assets\/|-[\w-]{8}\.js$/g, '');

function pageScripts(dist: string): string[] {
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  const named = page.matchAll(/<(?:script|link rel="modulepreload")[^>]*(?:src|href)="\.\/([^"]+\.js)"/g);
  return [...named].map((match) => match[1] ?? '');
}

export const totalGzipBytes = (dist: string, files: readonly string[]): number =>
  files.reduce((sum, file) => sum + gzipSync(readFileSync(join(dist, file)), { level: 9 }).length, 0);
