import { createReadStream, readFileSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { createGzip } from 'node:zlib';

/** A static host for a built app, with the headers that DEVELOPERS.md asks of any host. */

export interface ServeOptions {
  /** the folder with index.html */
  readonly root: string;
  /** 0: any free port */
  readonly port?: number;
  /** the sub-folder it is served under, from '/' to '/' */
  readonly base?: string;
  /** texts are sent smaller where the browser takes that, as hosts do */
  readonly compress?: boolean;
  /** Answers a request in another way (a broken host); returns whether it did. */
  readonly instead?: (path: string, response: ServerResponse) => boolean;
}

export interface Served {
  readonly port: number;
  readonly url: string;
  /** paths asked for, in order */
  readonly asked: string[];
  /** Ends it at once, open connections too: what a lost network looks like. */
  close(): Promise<void>;
}

/** For a file that has its contents in its name. */
export const CACHED_FOR_EVER = 'public, max-age=31536000, immutable';

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

/** Serves a built app on both addresses that 'localhost' may stand for. Rejects with EADDRINUSE where the port is taken. */
export async function serve({
  root,
  port = 0,
  base = '/',
  compress = false,
  instead,
}: ServeOptions): Promise<Served> {
  const asked: string[] = [];
  const answer = (request: IncomingMessage, response: ServerResponse) => {
    const path = decodePath(request.url ?? '/');
    asked.push(path);
    if (instead?.(path, response)) return;
    const smaller = compress && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
    if (path.startsWith(base)) send(root, path.slice(base.length), response, smaller);
    else refuse(response);
  };
  const first = await listen(createServer(answer), port, '127.0.0.1');
  const taken = addressPort(first);
  const servers = [first];
  try {
    servers.push(await listen(createServer(answer), taken, '::1'));
  } catch (error) {
    if (isTaken(error)) {
      first.close();
      throw error;
    }
    // No IPv6 on this machine: the first address will do.
  }
  const url = `http://localhost:${taken}${base}`;
  return { port: taken, url, asked, close: async () => void (await Promise.all(servers.map(end))) };
}

/** Serves on the first free port from `port` on. */
export async function serveNear(options: ServeOptions & { port: number }, tries = 50): Promise<Served> {
  try {
    return await serve(options);
  } catch (error) {
    if (!isTaken(error) || tries === 1) throw error;
    return serveNear({ ...options, port: options.port + 1 }, tries - 1);
  }
}

function send(root: string, path: string, response: ServerResponse, smaller: boolean): void {
  const file = normalize(join(root, path === '' ? 'index.html' : path));
  if (file.startsWith(normalize(root) + sep) && isFile(file)) {
    const headers = { ...securityHeaders(root), ...fileHeaders(file, path) };
    if (smaller && /\.(?:css|html|js|json|svg|txt|webmanifest)$/.test(file)) {
      response.writeHead(200, { ...headers, 'Content-Encoding': 'gzip', Vary: 'Accept-Encoding' });
      createReadStream(file).pipe(createGzip()).pipe(response);
      return;
    }
    response.writeHead(200, headers);
    createReadStream(file).pipe(response);
  } else refuse(response);
}

function fileHeaders(file: string, path: string): Record<string, string> {
  return {
    'Content-Type': types[extname(file)] ?? 'application/octet-stream',
    // A file in assets/ has its contents in its name; everything else is asked for again.
    'Cache-Control': path.startsWith('assets/') ? CACHED_FOR_EVER : 'no-cache',
  };
}

/** The page's own policy, which a worker does not inherit, and what a meta element cannot say. */
export function securityHeaders(root: string): Record<string, string> {
  const page = readFileSync(join(root, 'index.html'), 'utf8');
  const policy = /http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(page)?.[1];
  if (policy === undefined) throw new Error(`${root}/index.html states no Content-Security-Policy.`);
  return {
    'Content-Security-Policy': `${policy}; frame-ancestors 'none'`,
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Referrer-Policy': 'no-referrer',
    'X-Content-Type-Options': 'nosniff',
  };
}

function refuse(response: ServerResponse): void {
  response.writeHead(404, { 'Content-Type': 'text/plain', 'X-Content-Type-Options': 'nosniff' });
  response.end('There is no such file here.\n');
}

function listen(server: Server, port: number, host: string): Promise<Server> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => resolve(server));
  });
}

function end(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}

function addressPort(server: Server): number {
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('The server has no port.');
  return address.port;
}

function decodePath(url: string): string {
  try {
    return decodeURIComponent(new URL(url, 'http://localhost').pathname);
  } catch {
    return '/';
  }
}

const isTaken = (error: unknown) => (error as NodeJS.ErrnoException).code === 'EADDRINUSE';

const isFile = (path: string) => statSync(path, { throwIfNoEntry: false })?.isFile() === true;
