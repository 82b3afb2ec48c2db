import { readdirSync, readFileSync } from 'node:fs';

/** All style sheets of the app, without their comments; paths from src. */
export const sheets: readonly { readonly path: string; readonly text: string }[] = readdirSync('src', {
  recursive: true,
  encoding: 'utf8',
})
  .filter((path) => path.endsWith('.css'))
  .map((path) => ({ path, text: readFileSync(`src/${path}`, 'utf8').replace(/\/\*[\s\S]*?\*\//g, '') }));
