import { readdirSync } from 'node:fs';
import { extname } from 'node:path';
import { expect, it } from 'vitest';
import { hostFiles } from './host-files.ts';

/** What a build writes beside what lies in public. */
const built = ['.html', '.js', '.css', '.webmanifest'];

it('nginx knows a type for every file of the app: its list stands in place of that which nginx has', () => {
  // the page as it is written states the policy of the built one
  const conf = hostFiles('.')['hosting/nginx.conf'] ?? '';
  // nginx, module ngx_http_core_module, 'types': one inside a server replaces the one outside it
  const types = /types \{([^}]*)\}/.exec(conf)?.[1] ?? '';
  const known = [...types.matchAll(/^\s+\S+ (.+);$/gm)].flatMap(([, endings = '']) => endings.split(' '));
  const endings = readdirSync('public', { recursive: true, encoding: 'utf8', withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => extname(name));
  const asked = new Set([...built, ...endings].map((ending) => ending.slice(1)));
  expect([...asked].filter((ending) => !known.includes(ending))).toEqual([]);
});
