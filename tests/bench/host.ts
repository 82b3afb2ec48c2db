import { existsSync, readFileSync } from 'node:fs';
import type { ServerResponse } from 'node:http';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { type Served, serve } from '../run/serve.ts';

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
};

/** A host that sends texts compressed, as hosts on the network do; what is measured over a slow line needs that. */
export const compressingHost = (root: string): Promise<Served> =>
  serve({ root, instead: (path, response) => sendCompressed(root, path, response) });

function sendCompressed(root: string, path: string, response: ServerResponse): boolean {
  const name = path === '/' ? 'index.html' : path.slice(1);
  const type = types[extname(name)];
  const file = join(root, name);
  if (type === undefined || name.includes('..') || !existsSync(file)) return false;
  const cached = name.startsWith('assets/') ? 'public, max-age=31536000, immutable' : 'no-cache';
  response.writeHead(200, { 'Content-Type': type, 'Content-Encoding': 'gzip', 'Cache-Control': cached });
  response.end(gzipSync(readFileSync(file)));
  return true;
}
