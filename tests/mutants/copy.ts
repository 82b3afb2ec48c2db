import { cpSync, mkdirSync, rmSync, symlinkSync } from 'node:fs';
import { join, resolve } from 'node:path';

const copied = ['src', 'tests', 'public', 'index.html', 'vite.config.ts', 'package.json', 'tsconfig.json'];

/** A copy of the project to plant faults in: the tree itself is never changed. */
export function copyProject(to: string): void {
  rmSync(to, { recursive: true, force: true });
  mkdirSync(to, { recursive: true });
  for (const name of copied) cpSync(name, join(to, name), { recursive: true });
  symlinkSync(resolve('node_modules'), join(to, 'node_modules'));
}
