import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PluginOption } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { languages } from '../words/languages.ts';
import { fileKeeper, type KeptFile } from '../worker/keep-file.ts';
import { keepWanted } from '../worker/keep-wanted.ts';
import { keepWhole } from '../worker/keep-whole.ts';
import { refuseWrongTypes } from '../worker/refuse-wrong-types.ts';
import { takeShared } from '../worker/take-shared.ts';
import { kindWanted } from './chunks.ts';
import { install } from './install.ts';
import { integrityOf, outDir } from './out-dir.ts';

/**
 * The service worker: made by the plugin, which has it keep every file for offline use when it is installed, with what
 * is ours (src/worker/) put before it as text. The traps: where Trusted Types are enforced the worker's address must
 * come from a policy (src/app/start/script-url.ts), and its library must be inlined; a policy sent with the worker needs
 * `connect-src 'self'`, or it stores nothing.
 */

/** What the worker keeps, as its own list says it. */
const kept: KeptFile[] = [];

/** What is kept only when it is wanted, by what the page calls it (src/app/start/keep-wanted.ts). */
const keptWhenWanted: Record<string, KeptFile[]> = {};

function keptFor(wanted: string): KeptFile[] {
  const list = keptWhenWanted[wanted] ?? [];
  keptWhenWanted[wanted] = list;
  return list;
}

/** What a built file is wanted for: a language but English, a kind of file; undefined where it is kept with the rest. */
const wantedFor = (url: string): string | undefined =>
  kindWanted(url) ?? languages.find((language) => language !== 'en' && url.includes(`words-${language}-`));

const ours: PluginOption = {
  name: 'guarded-worker',
  apply: 'build',
  closeBundle: {
    order: 'post',
    sequential: true,
    handler() {
      const path = join(outDir, 'sw.js');
      const parts = [
        `(${refuseWrongTypes.toString()})(self);\n`,
        `(${takeShared.toString()})(self);\n`,
        `((keepFile) => {\n`,
        `(${keepWhole.toString()})(self, ${JSON.stringify(kept)}, keepFile);\n`,
        `(${keepWanted.toString()})(self, ${JSON.stringify(keptWhenWanted)}, keepFile);\n`,
        `})((${fileKeeper.toString()})(self));\n`,
      ];
      writeFileSync(path, parts.join('') + readFileSync(path, 'utf8'));
    },
  },
};

const pwa = VitePWA({
  // The page registers the worker itself (src/app/start/service-worker.ts) and asks before it updates.
  registerType: 'prompt',
  injectRegister: null,
  // The patterns below find the icons already; twice in the list would be twice in the install.
  includeManifestIcons: false,
  strategies: 'generateSW',
  manifest: install,
  workbox: {
    globPatterns: ['**/*.{js,css,html,woff2,json,svg,png}'],
    // Asked for by the browser when the app is put on the home screen, offers that, and by readers of a backup. The one icon that
    // it draws at every start is no SVG: that would be laid out on the page's own thread.
    globIgnores: ['icons/!(icon-192).png', 'pictures/*', '*.schema.json'],
    // The start page is asked for with a query too (share_target, src/app/start/not-started.ts). A page below another folder may be
    // another copy of the app, and its caches are its own.
    navigateFallback: null,
    ignoreURLParametersMatching: [/./],
    cleanupOutdatedCaches: false,
    manifestTransforms: [
      (entries) => {
        const all = entries.map((entry) => ({ ...entry, integrity: integrityOf(entry.url) }));
        for (const { url, integrity, revision } of all) {
          const wanted = wantedFor(url);
          const list = wanted === undefined ? kept : keptFor(wanted);
          list.push({ url, integrity, revision });
        }
        return { manifest: all.filter(({ url }) => wantedFor(url) === undefined) };
      },
    ],
    // Where Trusted Types are enforced, importScripts() fails without a word and nothing is cached.
    inlineWorkboxRuntime: true,
    sourcemap: false,
  },
});

export const worker: readonly PluginOption[] = [pwa, ours];
