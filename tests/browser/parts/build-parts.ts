import { readFileSync } from 'node:fs';
import { build } from 'vite';

/** Where the page with all parts is built to; ignored by git. */
export const partsRoot = '.cache/parts';

/** The app's own policy for its page: the parts must live under it. */
function policy(): string {
  const found = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(
    readFileSync('index.html', 'utf8'),
  );
  if (!found?.[1]) throw new Error('index.html has no Content-Security-Policy');
  return found[1];
}

/** Builds the page with the app's JSX, targets and policy. */
export async function buildParts(): Promise<void> {
  await build({
    configFile: false,
    root: 'tests/browser/parts',
    publicDir: `${process.cwd()}/public`,
    base: './',
    logLevel: 'error',
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    build: {
      outDir: `${process.cwd()}/${partsRoot}`,
      emptyOutDir: true,
      target: 'es2022',
      modulePreload: { polyfill: false },
    },
    plugins: [
      {
        name: 'policy',
        transformIndexHtml: (html) =>
          html.replace('<head>', `<head><meta http-equiv="Content-Security-Policy" content="${policy()}" />`),
      },
    ],
  });
}
