import { createHash } from 'node:crypto';
import { cpSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import { allowAnew, signAnew } from '../browser/changed-words.ts';

const md5 = (text: string) => createHash('md5').update(text).digest('hex');

/** A file's name without its end: what the files that need it call it by, too. */
const stemOf = (path: string) => basename(path, extname(path));

/** Another name of the same length, as a file of other contents has it. */
const renamed = (stem: string, version: string) =>
  stem.replace(/.{8}$/, (was) =>
    createHash('sha256').update(`${was} ${version}`).digest('base64url').slice(0, 8),
  );

/**
 * A copy of a build as its sources give it under another version: what says the version says the other, and a file whose
 * contents change by that has another name, so has what names it, and so on. To build it anew would take as long again.
 */
export function withVersion(root: string, into: string, from: string, to: string): string {
  rmSync(into, { recursive: true, force: true });
  cpSync(root, into, { recursive: true });
  const texts = readdirSync(into, { recursive: true, encoding: 'utf8' }).filter((path) =>
    /\.(?:css|html|js|json)$/.test(path),
  );
  const contents = new Map(texts.map((path) => [path, readFileSync(join(into, path), 'utf8')]));
  const says = (text: string) => text.includes(`\`${from}\``) || text.includes(`"${from}"`);
  const assets = texts.filter((path) => path.startsWith('assets/'));
  const changed = new Set(assets.filter((path) => says(contents.get(path) ?? '')));
  if (changed.size === 0) throw new Error(`No file of ${root} says that it is ${from}.`);
  // a set that is added to while it is gone through is gone through to its new end
  for (const one of changed)
    for (const path of assets) if (contents.get(path)?.includes(stemOf(one))) changed.add(path);
  const pageWas = contents.get('index.html') ?? '';
  for (const [path, text] of contents) {
    let now = changed.has(path)
      ? text.replaceAll(`\`${from}\``, `\`${to}\``).replaceAll(`"${from}"`, `"${to}"`)
      : text;
    for (const one of changed) now = now.replaceAll(stemOf(one), renamed(stemOf(one), to));
    if (now !== text) writeFileSync(join(into, path), now);
  }
  for (const one of changed)
    renameSync(join(into, one), join(into, one.replace(stemOf(one), renamed(stemOf(one), to))));
  allowAnew(into);
  const worker = join(into, 'sw.js');
  const page = readFileSync(join(into, 'index.html'), 'utf8');
  writeFileSync(worker, readFileSync(worker, 'utf8').replaceAll(md5(pageWas), md5(page)));
  signAnew(into);
  return into;
}
