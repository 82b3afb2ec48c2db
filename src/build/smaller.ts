import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { minify } from 'terser';
import type { Plugin } from 'vite';
import { kindWanted } from './chunks.ts';

/** What was gone over before, by what it was: most of a build would be to do again what the last one did. */
const done = '.cache/smaller';

const WEEK_MS = 7 * 24 * 60 * 60 * 1000;

const options = {
  module: true,
  ecma: 2020,
  mangle: false,
  compress: { passes: 3, keep_fargs: false, unsafe_arrows: true },
} as const;

/** Another release of the minifier begins anew, as other options do. */
const rules = readFileSync('node_modules/terser/package.json', 'utf8') + JSON.stringify(options);

/**
 * Each script is gone over once more before the bundler's own minifier renames what is in it: what is kept offline has a
 * limit, and this wins a hundredth of it.
 */
export const smaller: Plugin = {
  name: 'smaller',
  apply: 'build',
  buildStart: forgetUnused,
  renderChunk: {
    order: 'post',
    // a library that comes as small as it gets takes longer than all the rest
    handler: async (code, { fileName }) =>
      kindWanted(fileName) === undefined ? { code: await goneOver(code), map: null } : null,
  },
};

async function goneOver(code: string): Promise<string> {
  const path = join(done, createHash('sha256').update(rules).update(code).digest('hex'));
  if (existsSync(path)) {
    utimesSync(path, new Date(), new Date());
    return readFileSync(path, 'utf8');
  }
  const { code: shorter = code } = await minify(code, options);
  // never half a file: another build may be reading
  const beside = `${path}.${process.pid}`;
  writeFileSync(beside, shorter);
  renameSync(beside, path);
  return shorter;
}

/** What no build has asked for in a week. */
function forgetUnused(): void {
  mkdirSync(done, { recursive: true });
  for (const name of readdirSync(done)) {
    const path = join(done, name);
    if ((statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0) < Date.now() - WEEK_MS)
      rmSync(path, { force: true });
  }
}
