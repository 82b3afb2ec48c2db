import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { dist } from '../run/built.ts';

let copy: string | undefined;

/** The built app as it stood when it was first asked for: what is built anew beside a long run changes nothing under it. */
export function builtCopy(): string {
  if (copy !== undefined) return copy;
  const folder = mkdtempSync(join(tmpdir(), 'ridgeline-built-'));
  cpSync(dist, folder, { recursive: true });
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  copy = folder;
  return folder;
}
