import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';

/** What the files of a folder of src may import, beside their own folder. Imports point one way. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  // when things come, and nothing of what they are
  pace: ['preact', '@preact/signals'],
  knit: [],
  progress: ['knit'],
  store: ['knit', 'progress', 'pace', 'idb', 'valibot'],
  words: ['knit', 'progress', '@preact/signals'],
  ui: ['words', 'preact', '@preact/signals'],
  worker: [],
  // it makes the app: nothing of the app may know it
  build: [
    'app',
    'store',
    'pace',
    'worker',
    // the table of languages
    'words',
    'node:crypto',
    'node:fs',
    'node:path',
    'terser',
    'vite',
    'vite-plugin-pwa',
  ],
  app: [
    'knit',
    'progress',
    'pace',
    'store',
    'words',
    '@preact/signals',
    'valibot',
    'workbox-window',
    'jsqr',
    'fflate',
    'pdfjs-dist',
  ],
  screens: ['app', 'ui', 'words', 'knit', 'progress', 'pace', 'preact', '@preact/signals', 'uqr'],
  'main.tsx': ['app', 'pace', 'ui', 'words', 'screens', 'preact', '@preact/signals'],
};

/** Folders whose shapes may be known, and none of whose code: `import type` only. */
const allowedTypes: Readonly<Record<string, readonly string[]>> = {
  ui: ['knit', 'progress'],
  screens: ['store'],
};

interface SourceFile {
  /** below src */
  readonly path: string;
  readonly text: string;
}

const sources: readonly SourceFile[] = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.tsx?$/.test(path))
  .map((path) => ({ path, text: readFileSync(`src/${path}`, 'utf8') }));

const importPattern =
  /(?:^|[;\s])(?:import|export)\s(type\s)?(?:[^'";]*?\sfrom\s)?['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]\s*\)/g;

const withoutComments = (text: string) => text.replace(/\/\*[\s\S]*?\*\/|(^|\s)\/\/.*$/gm, '');

const importsOf = ({ text }: SourceFile): { target: string; typeOnly: boolean }[] =>
  [...withoutComments(text).matchAll(importPattern)].map(([, type, target, lazy]) => ({
    target: target ?? lazy ?? '',
    typeOnly: type !== undefined,
  }));

/** The folder of src, or the package, that an import reaches. */
function reached(from: string, target: string): string {
  if (target.startsWith('.')) return posix.join(posix.dirname(from), target).split('/')[0] ?? '';
  return target
    .split('/')
    .slice(0, target.startsWith('@') ? 2 : 1)
    .join('/');
}

function strays(files: readonly SourceFile[]): string[] {
  return files.flatMap((file) => {
    const own = file.path.split('/')[0] ?? '';
    const code = [own, ...(allowed[own] ?? [])];
    const types = [...code, ...(allowedTypes[own] ?? [])];
    return importsOf(file)
      .filter(({ target, typeOnly }) => !(typeOnly ? types : code).includes(reached(file.path, target)))
      .map(({ target }) => `src/${file.path} imports ${target}`);
  });
}

/** Files that import each other in a circle, each circle once; what is imported as a type counts too. */
function circles(files: readonly SourceFile[]): string[] {
  const targets = new Map(
    files.map((file) => [
      file.path,
      importsOf(file).map(({ target }) => posix.join(posix.dirname(file.path), target)),
    ]),
  );
  const found: string[] = [];
  const open: string[] = [];
  const done = new Set<string>();
  const follow = (path: string): void => {
    const at = open.indexOf(path);
    if (at >= 0) found.push([...open.slice(at), path].join(' > '));
    if (at >= 0 || done.has(path)) return;
    open.push(path);
    for (const target of targets.get(path) ?? []) follow(target);
    open.pop();
    done.add(path);
  };
  for (const path of targets.keys()) follow(path);
  return found;
}

/** Time and chance come into the core as arguments, so that a plan is the same every day. */
const impure = (files: readonly SourceFile[]) =>
  files
    .filter(({ path }) => /^(knit|progress)\//.test(path))
    .filter(({ text }) =>
      /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bperformance\.now\b/.test(withoutComments(text)),
    )
    .map(({ path }) => path);

describe('the source tree', () => {
  it('is seen whole: every folder of the table, with files and imports in it', () => {
    expect(sources.length).toBeGreaterThan(60);
    expect(sources.flatMap(importsOf).length).toBeGreaterThan(150);
    expect([...new Set(sources.map(({ path }) => path.split('/')[0]))].sort()).toEqual(
      Object.keys(allowed).sort(),
    );
  });

  it('imports one way only: knit ← progress ← store ← app ← screens', () => {
    expect(strays(sources)).toEqual([]);
  });

  it('would be caught importing the other way, by any spelling', () => {
    const caught = (path: string, text: string) => strays([{ path, text }]).length;
    expect(caught('knit/row/work.ts', "import type { Door } from '../../store/door.ts';")).toBe(1);
    expect(caught('knit/row/work.ts', "export * from '../../progress/log.ts';")).toBe(1);
    expect(caught('progress/log.ts', "const later = await import('../app/state.ts');")).toBe(1);
    expect(caught('screens/knitting/row.tsx', "import { door } from '../../store/door.ts';")).toBe(1);
    expect(caught('ui/map.tsx', "import { plan } from '../knit/index.ts';")).toBe(1);
    expect(caught('ui/map.tsx', "import type { Plan } from '../knit/index.ts';")).toBe(0);
    expect(caught('store/door.ts', "import {\n  a,\n  b,\n} from 'some-package';")).toBe(1);
    expect(caught('ui/pad.tsx', "import './pad.css';\nimport { useState } from 'preact/hooks';")).toBe(0);
    expect(caught('knit/row/work.ts', "import { ok } from '../fault.ts'; // import 'fs'")).toBe(0);
  });

  it('has no circle, not even of types', () => {
    expect(circles(sources)).toEqual([]);
    const types = (path: string, target: string) => ({ path, text: `import type { A } from '${target}';` });
    expect(circles([types('knit/a.ts', './b.ts'), types('knit/b.ts', './row/c.ts')])).toEqual([]);
    expect(
      circles([
        types('knit/a.ts', './b.ts'),
        types('knit/b.ts', './row/c.ts'),
        types('knit/row/c.ts', '../a.ts'),
      ]),
    ).toEqual(['knit/a.ts > knit/b.ts > knit/row/c.ts > knit/a.ts']);
  });

  it('reads a pattern in three rooms: a room knows the one before it, and follow takes from say nothing but types', () => {
    const room = (path: string) => /^knit\/(pattern\/(?:text|say|follow)|row\/read)\//.exec(path)?.[1];
    const known: Readonly<Record<string, readonly string[]>> = {
      'row/read': ['row/read'],
      'pattern/text': ['pattern/text', 'row/read'],
      'pattern/say': ['pattern/say', 'pattern/text', 'row/read'],
      'pattern/follow': ['pattern/follow', 'row/read'],
    };
    const stray = (file: SourceFile) => {
      const own = room(file.path);
      return importsOf(file)
        .map(({ target, typeOnly }) => ({
          typeOnly,
          to: posix.join(posix.dirname(file.path), target),
        }))
        .filter(({ to }) => own !== undefined && /^knit\/(pattern\/|row\/read\/)/.test(to))
        .filter(({ to, typeOnly }) => {
          const there = room(to) ?? '';
          const asType = own === 'pattern/follow' && there === 'pattern/say' && typeOnly;
          return !asType && !known[own ?? '']?.includes(there);
        })
        .map(({ to }) => `${file.path} imports ${to}`);
    };
    expect(sources.flatMap(stray)).toEqual([]);
    const follow = (text: string) => stray({ path: 'knit/pattern/follow/even.ts', text });
    expect(follow("import type { Until } from '../say/how-far.ts';")).toEqual([]);
    expect(follow("import { readUntil } from '../say/phrase/until.ts';")).toHaveLength(1);
    expect(follow("import { lines } from '../text/lines.ts';")).toHaveLength(1);
    expect(
      stray({ path: 'knit/row/read/row.ts', text: "import { a } from '../../pattern/say/a.ts';" }),
    ).toHaveLength(1);
  });

  it('plans nothing in a screen: rows are planned, mirrored, planned anew and set into another gauge below', () => {
    const plans = (files: readonly SourceFile[]) =>
      files
        .filter(({ path }) => path.startsWith('screens/'))
        .filter((file) =>
          importsOf(file).some(
            ({ target, typeOnly }) =>
              !typeOnly && /\/knit\/piece\/(?:plan|mirror|rework|regauge)(?:\.ts|\/)/.test(target),
          ),
        )
        .map(({ path }) => path);
    expect(plans(sources)).toEqual([]);
    const text = "import { plan } from '../../knit/piece/plan.ts';";
    expect(plans([{ path: 'screens/count/a.ts', text }])).toEqual(['screens/count/a.ts']);
  });

  it('keeps clock and chance out of knit and progress', () => {
    expect(impure(sources)).toEqual([]);
    expect(impure([{ path: 'knit/plan.ts', text: 'const id = Math.random();' }])).toEqual(['knit/plan.ts']);
  });

  it('has no file over 300 lines', () => {
    const long = sources.filter(({ text }) => text.trimEnd().split('\n').length > 300);
    expect(long.map(({ path }) => path)).toEqual([]);
  });
});
