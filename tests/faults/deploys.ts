import { readdirSync, readFileSync } from 'node:fs';
import type { ServerResponse } from 'node:http';
import type { Page } from 'playwright-core';
import { version } from '../../src/build/out-dir.ts';
import { buildIfNeeded, dist } from '../run/built.ts';
import { type Served, type ServeOptions, serve } from '../run/serve.ts';
import { withVersion } from './next-version.ts';

/** Two versions of the app, and what a host can do wrong with them. */

export interface Version {
  readonly root: string;
  readonly name: string;
}

const nextRoot = dist === 'dist' ? '.cache/next' : `${dist}-next`;
const nextName = '0.0.0-next';

/** The version that stands, and a newer one of the same sources. */
export function twoVersions(): { readonly old: string; readonly next: Version } {
  buildIfNeeded(dist);
  const next = { root: nextRoot, name: nextName };
  buildIfNeeded(next.root, next.name);
  return { old: dist, next };
}

/** The newer one as a copy in which the names are other ones; a folder for each process, since tests run side by side. */
export const copiedNext = (): Version => ({
  root: withVersion(dist, `${nextRoot}-${process.env.VITEST_POOL_ID ?? 'alone'}`, version, nextName),
  name: nextName,
});

/** Another folder at the same address. */
export async function deploy(host: Served, root: string, instead?: ServeOptions['instead']): Promise<Served> {
  await host.close();
  return serve({ root, port: host.port, ...(instead && { instead }) });
}

/** Files of a build whose name bears their contents. */
export const assetsOf = (root: string): ReadonlySet<string> => new Set(readdirSync(`${root}/assets`));

/** Every such file that a window has fetched since it was loaded. */
export const assetsUsed = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    performance
      .getEntriesByType('resource')
      .map(({ name }) => /\/assets\/([^/?#]+)$/.exec(name)?.[1])
      .filter((name) => name !== undefined),
  );

type Instead = NonNullable<ServeOptions['instead']>;
type Answer = (response: ServerResponse, path: string) => boolean;

const page: Answer = (response) => {
  response.writeHead(200, { 'Content-Type': 'text/html' });
  response.end('<!doctype html><title>Down for maintenance</title>');
  return true;
};

const gone: Answer = (response) => {
  response.writeHead(404);
  response.end();
  return true;
};

const cut: Answer = (response) => {
  response.writeHead(200, { 'Content-Type': 'text/javascript', 'Content-Length': '100000' });
  response.write('export const half = ');
  setTimeout(() => response.destroy(), 50);
  return true;
};

const empty: Answer = (response) => {
  response.writeHead(200, { 'Content-Type': 'text/javascript' });
  response.end();
  return true;
};

const isScript = (path: string) => path.startsWith('/assets/') && path.endsWith('.js');

/** One broken answer of the host of a build to every script, or to one alone: hosts fail both ways. */
export const brokenDeploys = (root: string): readonly (readonly [string, Instead])[] => [
  ['every script is missing', (path, response) => isScript(path) && gone(response, path)],
  ['one script is missing', onlyOne(gone)],
  ['one script is a page', onlyOne(page)],
  ['one script has the type of a text', onlyOne(asText(root))],
  ['one script is empty', onlyOne(empty)],
  ['one script is cut off', onlyOne(cut)],
  ['the worker is a page', (path, response) => path === '/sw.js' && page(response, path)],
  ['everything is a page', (path, response) => page(response, path)],
];

/** Breaks the first script asked for from now on, and always the same one. */
function onlyOne(answer: Answer): Instead {
  let broken: string | undefined;
  return (path, response) => {
    if (!isScript(path)) return false;
    broken ??= path;
    return path === broken && answer(response, path);
  };
}

/** A script as it is, under a type that no browser runs. */
const asText =
  (root: string): Answer =>
  (response, path) => {
    response.writeHead(200, { 'Content-Type': 'text/plain' });
    response.end(readFileSync(`${root}${path}`));
    return true;
  };
