import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const copied = [
  'src',
  'tests',
  'public',
  'index.html',
  'vite.config.ts',
  'package.json',
  'tsconfig.json',
  // goes into the build, with those of the packages
  'LICENSE',
];

/** A copy of the project to plant faults in: the tree itself is never changed. */
export function copyProject(to: string): void {
  rmSync(to, { recursive: true, force: true });
  mkdirSync(to, { recursive: true });
  for (const name of copied) cpSync(name, join(to, name), { recursive: true });
  symlinkSync(resolve('node_modules'), join(to, 'node_modules'));
}

/** A copy whose tests are only written down as they are read, to be worked by live/all.live.ts. */
export function copyForWork(to: string): void {
  copyProject(to);
  const standIn = `from '${resolve(to, 'tests/mutants/live/stand-in.ts')}'`;
  for (const name of readdirSync(join(to, 'tests'), { recursive: true, encoding: 'utf8' })) {
    if (!/\.tsx?$/.test(name) || name.startsWith('mutants')) continue;
    const path = join(to, 'tests', name);
    writeFileSync(path, readFileSync(path, 'utf8').replaceAll("from 'vitest'", standIn));
  }
}
