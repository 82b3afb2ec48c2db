import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const documents = [
  'README.md',
  'DEVELOPERS.md',
  // what applies to one room stands in it
  'src/build/README.md',
  'src/ui/README.md',
  'src/ui/icon/README.md',
  'tests/bench/README.md',
  'tests/faults/README.md',
  'tests/model/README.md',
  'tests/mutants/README.md',
];

const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> };

/** Paths of this project in a text: in code marks, below one of the folders or a file of the top level. */
function pathsIn(text: string): string[] {
  const marked = [...text.matchAll(/`([^`\n]+)`/g)].map((match) => match[1] ?? '');
  const linked = [...text.matchAll(/\]\(([^)#:\s]+)\)/g)].map((match) => match[1] ?? '');
  const ours = /^(?:\.ci|src|tests|public)\/[^\s<>*…]*$|^[\w.-]+\.(?:md|json|ts|html)$/;
  return [...marked, ...linked].filter((path) => ours.test(path));
}

const commandsIn = (text: string): string[] =>
  [...text.matchAll(/npm (?:run )?([a-z:]+)/g)]
    .map((match) => match[1] ?? '')
    .filter((name) => !['ci', 'i', 'install'].includes(name));

const missing = (text: string) => pathsIn(text).filter((path) => !existsSync(path));

describe.each(documents)('%s', (name) => {
  const text = readFileSync(name, 'utf8');

  it('names only files and folders that exist', () => {
    expect(pathsIn(text).length).toBeGreaterThan(1);
    expect(missing(text)).toEqual([]);
  });

  it('names only commands that exist', () => {
    expect(commandsIn(text).filter((command) => !(command in scripts))).toEqual([]);
  });
});

describe('the guide', () => {
  const guide = readFileSync('DEVELOPERS.md', 'utf8');

  it('is read in three screens', () => {
    expect(guide.split('\n').length).toBeLessThanOrEqual(180);
  });

  it('names every document that stands in a room', () => {
    const rooms = ['src', 'tests'].flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: 'utf8' })
        .filter((path) => path.endsWith('README.md'))
        .map((path) => `${folder}/${path}`),
    );
    expect(rooms.filter((path) => !documents.includes(path))).toEqual([]);
    expect(rooms.filter((path) => !pathsIn(guide).includes(path))).toEqual([]);
  });
});

describe('the check of the documents', () => {
  it('notices a path and a command that are not there', () => {
    expect(missing('See `src/knit/no-such-file.ts` and [that](tests/none.ts), not `k2tog`.')).toEqual([
      'src/knit/no-such-file.ts',
      'tests/none.ts',
    ]);
    expect(commandsIn('`npm run nothing` after `npm ci && npm start`')).toEqual(['nothing', 'start']);
  });
});

describe('the top level', () => {
  it('holds nothing but the two documents, the settings, three folders and what tools demand', () => {
    const ignored = readFileSync('.gitignore', 'utf8')
      .split('\n')
      .map((line) => line.replaceAll('/', ''));
    const demanded = ['LICENSE', 'index.html', 'package-lock.json', ...ignored];
    const own = [
      'README.md',
      'DEVELOPERS.md',
      'package.json',
      'tsconfig.json',
      'vite.config.ts',
      'src',
      'tests',
      'public',
    ];
    const others = readdirSync('.').filter(
      (name) => ![...demanded, ...own].includes(name) && !name.startsWith('.'),
    );
    expect(others).toEqual([]);
  });
});
