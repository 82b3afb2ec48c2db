// What Node asks when it loads a module: TypeScript is put into JavaScript, one file for one. Bound by Node itself, a call
// from one file into another costs no more than within one; by a runner of modules it goes through a getter each time. The
// lines of the sources are not told along: where that is so, each error that is made is looked up in them, and tests of
// what goes wrong took ten times as long. What fails is told once more by the runner, which knows them (`test.ts`).
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { transformWithOxc } from 'vite';

const jsx = { runtime: 'automatic', importSource: 'preact' };

const asModule = (source) => ({ format: 'module', source, shortCircuit: true });

export async function load(url, context, next) {
  const { pathname, search } = new URL(url);
  // the address of a file that a page runs beside itself: no test in Node runs one by its address
  if (search.startsWith('?worker')) return asModule(`export default ${JSON.stringify(pathname)};`);
  if (pathname.endsWith('.css')) return asModule('');
  if (!/\.tsx?$/.test(pathname)) return next(url, context);
  const path = fileURLToPath(url);
  const { code } = await transformWithOxc(await readFile(path, 'utf8'), path, { jsx, sourcemap: false });
  return asModule(code);
}
