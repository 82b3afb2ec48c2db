import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { until } from '../browser/until.ts';
import { dist } from '../run/built.ts';
import { headersOf, hostFiles, type Place } from '../run/host-files.ts';
import { filesOfRelease } from '../run/release-files.ts';
import { startOfflineFrom } from './cold-starts.ts';
import { pathOf } from './debian.ts';
import { chromiumEngine } from './engine.ts';
import type { Figure } from './figure.ts';

/** The release as it is handed on, put on servers that others wrote, with the settings that lie beside it. */

type Program = 'nginx' | 'caddy';

const bases = ['/', '/wool/ridgeline/'] as const;

/** At the root of a host and in a sub-folder: the headers are sent, and the app starts with no network afterwards. */
export async function onHost(program: Program, times: number): Promise<Figure[]> {
  const figures: Figure[] = [];
  for (const base of bases) {
    const host = await started(program, base);
    try {
      const missing = await notSent(host.url);
      const offline = await startOfflineFrom(chromiumEngine, times, host);
      const name = `${program}, at ${base}`;
      const sent = { measured: missing || 'all', bar: 'all', met: missing === '' };
      figures.push({ name: `${name}: headers as the release has them`, ...sent });
      figures.push({ ...offline, name: `${name}: starts with no network` });
    } finally {
      await host.close();
    }
  }
  return figures;
}

/** What a page, a script and the worker lack of the headers. */
async function notSent(url: string): Promise<string> {
  const page = await fetch(url);
  const script = /src="\.\/(assets\/[^"]+\.js)"/.exec(await page.text())?.[1] ?? 'no script';
  const asked = [page, await fetch(url + script), await fetch(`${url}sw.js`)];
  const lacks = asked.flatMap(({ url: from, headers, status }) =>
    headersOf(dist)
      .filter(([name, value]) => headers.get(name) !== value)
      .map(([name]) => `${from} (${status}) without ${name}`),
  );
  const kept = asked.map(({ headers }) => headers.get('Cache-Control') ?? 'nothing');
  const keeps = kept[0] === 'no-cache' && kept[1]?.includes('immutable') && kept[2] === 'no-cache';
  return [...lacks, ...(keeps ? [] : [`Cache-Control: ${kept.join(' | ')}`])].join(', ');
}

interface Host {
  readonly url: string;
  close(): Promise<void>;
}

async function started(program: Program, base: string): Promise<Host> {
  const folder = mkdtempSync(join(tmpdir(), 'ridgeline-host-'));
  // a server may read it as a user of its own
  chmodSync(folder, 0o755);
  unpack(join(folder, base));
  const port = await freePort();
  const { text, args } = configs[program]({ folder, base }, port);
  const path = join(folder, 'config');
  writeFileSync(path, text);
  const child = spawn(pathOf(program), args(path), { stdio: 'ignore' });
  const url = `http://localhost:${port}${base}`;
  const answers = () =>
    fetch(url).then(
      ({ ok }) => ok,
      () => false,
    );
  await until(answers, (ok) => ok);
  const close = async () => {
    await ended(child);
    rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  };
  return { url, close };
}

function unpack(to: string): void {
  for (const [path, bytes] of filesOfRelease(dist)) {
    if (!path.startsWith('site/')) continue;
    const file = join(to, path.slice('site/'.length));
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, bytes);
  }
}

interface Config {
  readonly text: string;
  readonly args: (path: string) => string[];
}

const configs: Readonly<Record<Program, (place: Place, port: number) => Config>> = {
  nginx: (place, port) => ({
    text: `daemon off;
pid ${place.folder}/pid;
error_log ${place.folder}/error.log;
events { }
http {
  access_log off;
  server {
    listen ${port};
    listen [::]:${port};
    ${hostFiles(dist, place)['hosting/nginx.conf']}
  }
}
`,
    args: (path) => ['-c', path],
  }),
  caddy: (place, port) => ({
    text: `{
\tadmin off
}
${hostFiles(dist, place, `http://localhost:${port}`)['hosting/Caddyfile']}`,
    args: (path) => ['run', '--adapter', 'caddyfile', '--config', path],
  }),
};

async function ended(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  child.kill('SIGTERM');
  await once(child, 'exit');
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  await new Promise((done) => server.close(done));
  if (address === null || typeof address === 'string') throw new Error('The server has no port.');
  return address.port;
}
