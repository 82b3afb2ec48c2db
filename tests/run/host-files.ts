import { CACHED_FOR_EVER, securityHeaders } from './serve.ts';

/** The headers that a host should send, in the words of several hosts. Where a host knows none of them the page's own policy holds. */

const NEVER_STALE = 'no-cache';
const ONLY_SECURE = 'max-age=31536000';

/** Where the app lies: below a folder of the host's, at a path from '/' to '/'. */
export interface Place {
  readonly folder: string;
  readonly base: string;
}

const usual: Place = { folder: '/srv/ridgeline', base: '/' };

/** By its path in a release. `root`: a built app; `name`: of the host, or an address without HTTPS to try it. */
export function hostFiles(
  root: string,
  place = usual,
  name = 'ridgeline.example',
): Readonly<Record<string, string>> {
  const headers = headersOf(root);
  return {
    'site/_headers': headersFile(headers),
    'hosting/nginx.conf': nginx(headers, place),
    'hosting/Caddyfile': caddy(headers, place, name),
    'hosting/README.md': readme,
  };
}

/** Those of every answer. */
export const headersOf = (root: string): Headers =>
  Object.entries({ ...securityHeaders(root), 'Strict-Transport-Security': ONLY_SECURE });

type Headers = readonly (readonly [name: string, value: string])[];

/** Read by several hosts of static pages that take a folder. */
const headersFile = (headers: Headers): string =>
  [
    '/*',
    ...headers.map(([name, value]) => `  ${name}: ${value}`),
    `  Cache-Control: ${NEVER_STALE}`,
    '/assets/*',
    '  ! Cache-Control',
    `  Cache-Control: ${CACHED_FOR_EVER}`,
    '',
  ].join('\n');

/** nginx takes no header over from outside a location that adds one. */
function nginx(headers: Headers, { folder, base }: Place): string {
  const all = headers.map(([name, value]) => `    add_header ${name} "${value}" always;`).join('\n');
  return `# Inside server { }. The app lies in ${folder}${base}; for a sub-folder put its name before both paths.
location ${base}assets/ {
    root ${folder};
${all}
    add_header Cache-Control "${CACHED_FOR_EVER}" always;
}
location ${base} {
    root ${folder};
    index index.html;
${all}
    add_header Cache-Control "${NEVER_STALE}" always;
}
types {
    text/html html;
    text/css css;
    text/javascript js;
    text/plain txt;
    application/json json;
    application/manifest+json webmanifest;
    image/jpeg jpg;
    image/png png;
    image/svg+xml svg;
    font/woff2 woff2;
}
charset utf-8;
gzip on;
gzip_types text/css text/javascript application/json application/manifest+json image/svg+xml;
`;
}

/** Caddy gets its certificate by itself. */
const caddy = (headers: Headers, { folder, base }: Place, name: string): string => `${name} {
	root * ${folder}
	encode gzip
	file_server
	header {
${headers.map(([header, value]) => `\t\t${header} "${value}"`).join('\n')}
	}
	@named path ${base}assets/*
	@asked not path ${base}assets/*
	header @named Cache-Control "${CACHED_FOR_EVER}"
	header @asked Cache-Control "${NEVER_STALE}"
}
`;

const readme = `# To host Ridgeline

Copy the folder \`site\` to any static host with HTTPS. It needs no server of its own, stores nothing there and asks for nothing elsewhere. A domain of its own is best: apps under one domain share what a browser stores.

Where a host lets you say which headers it sends, take those of \`site/_headers\` (hosts that read such a file take them by themselves), \`hosting/nginx.conf\` or \`hosting/Caddyfile\` (put your own name for the first line). A host may not change a page: a line that it puts into \`index.html\` keeps the app from being installed. An address without its last slash must lead to the one with it.
`;
