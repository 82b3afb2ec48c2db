import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Which part a run tries of what is tried by turns: said by the sources, so that it is the same for the same tree and another
 * one when something has changed. $RIDGELINE_TURN takes another; RIDGELINE_LOOKS=all tries every part.
 */
export const turn = Number(process.env.RIDGELINE_TURN ?? turnOf(['src', 'tests/browser']));

function turnOf(folders: readonly string[]): number {
  const hash = createHash('sha1');
  for (const folder of folders)
    for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort())
      if (/\.(?:tsx?|css)$/.test(name)) hash.update(name).update(readFileSync(join(folder, name)));
  return hash.digest().readUInt16BE();
}
