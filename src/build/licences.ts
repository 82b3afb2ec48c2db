import { appendFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PluginOption } from 'vite';
import { outDir } from './out-dir.ts';

/** The file that says under which licences everything is that the app is made of; Settings leads to it. */
export const licencesFile = 'licences.txt';

/** What Vite does not see come in: the worker's own library, which vite-plugin-pwa puts there, and that of a worker of its own. */
const inTheWorker = ['workbox-core', 'workbox-precaching', 'workbox-routing', 'workbox-strategies'] as const;

/** Vite writes those of the packages in the page; after them come the worker's, the typeface's and our own. */
export const licences: PluginOption = {
  name: 'licences',
  apply: 'build',
  writeBundle: {
    order: 'post',
    sequential: true,
    handler() {
      const version = versionOf(inTheWorker[0]);
      appendFileSync(
        join(outDir, licencesFile),
        [
          section(`${inTheWorker.join(', ')} - ${version} (MIT)`, `node_modules/${inTheWorker[0]}/LICENSE`),
          section(`jsqr - ${versionOf('jsqr')} (Apache-2.0)`, 'node_modules/jsqr/LICENSE'),
          section('Atkinson Hyperlegible Next, the typeface (OFL-1.1)', 'public/fonts/OFL.txt'),
          section('Ridgeline (MIT)', 'LICENSE'),
        ].join(''),
      );
    },
  },
};

const versionOf = (name: string): string =>
  (JSON.parse(readFileSync(`node_modules/${name}/package.json`, 'utf8')) as { version: string }).version;

const section = (title: string, path: string): string =>
  `\n## ${title}\n\n${readFileSync(path, 'utf8').trim()}\n`;
