// What Node asks when it loads a module: TypeScript is put into JavaScript, one file for one, its lines told as they stand
// in the source. Bound by Node itself, a call from one file into another costs no more than within one; by a runner of
// modules it goes through a getter each time, which was a third of the work of the tests in Node.
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
  const { code, map } = await transformWithOxc(await readFile(path, 'utf8'), path, { jsx });
  return asModule(`${code}\n${mapComment({ ...map, sourcesContent: undefined })}`);
}

const mapComment = (map) =>
  `//# sourceMappingURL=data:application/json;base64,${Buffer.from(JSON.stringify(map)).toString('base64')}`;
