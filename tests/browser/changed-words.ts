import { createHash } from 'node:crypto';
import { cpSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * A version of the app that says one thing otherwise in one of its languages: a copy of a build, with that file under
 * another name, since a build of the same sources has the same files of words.
 */
export function withOtherWords(root: string, into: string, said: string, instead: string): string {
  rmSync(into, { recursive: true, force: true });
  cpSync(root, into, { recursive: true });
  const texts = readdirSync(into, { recursive: true, encoding: 'utf8' }).filter((path) =>
    /\.(js|html)$/.test(path),
  );
  const read = (path: string) => readFileSync(join(into, path), 'utf8');
  const [words, ...more] = texts.filter((path) => path.startsWith('assets/') && read(path).includes(said));
  if (words === undefined || more.length > 0) throw new Error(`'${said}' is not in one file of ${root}.`);
  const name = words.slice('assets/'.length);
  const renamed = name.replace(/.{8}\.js$/, 'Otherwis.js');
  writeFileSync(join(into, words), read(words).replaceAll(said, instead));
  for (const path of texts) writeFileSync(join(into, path), read(path).replaceAll(name, renamed));
  renameSync(join(into, words), join(into, 'assets', renamed));
  allowAnew(into);
  signAnew(into);
  return into;
}

/** The script in the page's head names files, and is allowed by its hash alone. */
export function allowAnew(root: string): void {
  const path = join(root, 'index.html');
  const page = readFileSync(path, 'utf8');
  const [, script = ''] = /<script>([\s\S]*?)<\/script>/.exec(page) ?? [];
  const hash = createHash('sha256').update(script).digest('base64');
  writeFileSync(path, page.replace(/'sha256-[^']+'/, `'sha256-${hash}'`));
}

/** The worker's list says what each file is, byte for byte. */
export function signAnew(root: string): void {
  const worker = join(root, 'sw.js');
  const signed = (url: string) =>
    `sha384-${createHash('sha384')
      .update(readFileSync(join(root, url)))
      .digest('base64')}`;
  writeFileSync(
    worker,
    readFileSync(worker, 'utf8').replace(
      /("?url"?:"([^"]+)"[^{}]*?"?integrity"?:")sha384-[^"]+/g,
      (_, before: string, url: string) => before + signed(url),
    ),
  );
}
