import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Rolldown } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig, type Plugin } from 'vitest/config';
import { boxName } from './src/app/box-name.ts';
import { type FirstFiles, headScript } from './src/app/head-script.ts';
import { type KeptFile, keepWhole } from './src/worker/keep-whole.ts';
import { refuseWrongTypes } from './src/worker/refuse-wrong-types.ts';
import { takeShared } from './src/worker/take-shared.ts';

const { version: packageVersion } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };

/** A build can be given another version, and another folder, so that a test can have two of them. */
const version = process.env.RIDGELINE_VERSION ?? packageVersion;
const outDir = process.env.RIDGELINE_OUT ?? 'dist';

/** The page is built without eval and inline code; the development server needs both. */
const openPolicyInDevelopment: Plugin = {
  name: 'open-policy-in-development',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
};

const jsx = { runtime: 'automatic', importSource: 'preact' } as const;

/** Where the row in hand begins, and where a first visit does: what each needs is fetched in one file, not in twenty. */
const rowInHand = /\/src\/(main|screens\/knitting\/knitting-screen)\.tsx$/;
const workbasket = /\/src\/screens\/workbasket\/workbasket-screen\.tsx$/;

interface ModuleGraph {
  getModuleInfo(id: string): { readonly importers: readonly string[] } | null;
}

/** Whether a screen needs a file before it can be shown (files fetched later, on demand, are not). */
function needs(screen: RegExp, id: string, graph: ModuleGraph, seen = new Set<string>()): boolean {
  if (screen.test(id)) return true;
  seen.add(id);
  const importers = graph.getModuleInfo(id)?.importers ?? [];
  return importers.some((importer) => !seen.has(importer) && needs(screen, importer, graph, seen));
}

/** The browser takes a file for offline use only when it is this one, byte for byte, whatever a host answers. */
const integrityOf = (path: string): string =>
  `sha384-${createHash('sha384')
    .update(readFileSync(join(outDir, path)))
    .digest('base64')}`;

/** What the worker keeps, as its own list says it. */
const kept: KeptFile[] = [];

const guardedWorker: Plugin = {
  name: 'guarded-worker',
  apply: 'build',
  closeBundle: {
    order: 'post',
    sequential: true,
    handler() {
      const path = join(outDir, 'sw.js');
      const worker = readFileSync(path, 'utf8');
      const later = readdirSync(join(outDir, 'assets'))
        .map((name) => `assets/${name}`)
        .filter((url) => laterFile.test(url))
        .map((url) => ({ url, integrity: integrityOf(url), revision: null, later: true }));
      const ours = [
        `(${refuseWrongTypes.toString()})(self);\n`,
        `(${takeShared.toString()})(self);\n`,
        `(${keepWhole.toString()})(self, ${JSON.stringify([...kept, ...later])});\n`,
      ];
      writeFileSync(path, ours.join('') + worker);
    },
  },
};

/**
 * A browser may keep a script compiled, and take that at the next start instead of compiling it anew. Chromium does so
 * for a module only where it was asked for as any script before; otherwise it compiles it while it comes, at every
 * start. So the first script is named twice. And nearly all of its functions run before the first row stands: a line
 * at its top has the browser compile them together, not one by one as they are called.
 */
const keptCompiled: Plugin = {
  name: 'kept-compiled',
  apply: 'build',
  generateBundle: {
    order: 'post',
    handler(_options, bundle) {
      for (const file of Object.values(bundle))
        if (file.type === 'chunk' && file.name === 'row-in-hand')
          file.code = `//# allFunctionsCalledOnLoad\n${file.code}`;
    },
  },
  transformIndexHtml: {
    order: 'post',
    handler(html) {
      const [, script] = /<script type="module"[^>]* src="([^"]+)"/.exec(html) ?? [];
      if (script === undefined) throw new Error('The page has no first script.');
      const asked = `<link rel="preload" as="script" crossorigin href="${script}">`;
      return html.replace('</title>', () => `</title>\n    ${asked}`);
    },
  },
};

/** A small script in the page itself, allowed by its hash alone: it asks for what the first screen will need. */
const startInHead: Plugin = {
  name: 'start-in-head',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler(html, { bundle = {} }) {
      const files = JSON.stringify(firstFiles(Object.values(bundle)));
      const box = `(${boxName.toString()})(()=>localStorage,new URL('./',location.href).pathname)`;
      const script = `document.documentElement.dataset.box=${box};(${headScript.toString()})(${files})`;
      const hash = createHash('sha256').update(script).digest('base64');
      return (
        html
          .replace("script-src 'self'", `script-src 'self' 'sha256-${hash}'`)
          // no frame without anything in it is painted before the app is there: that frame holds up the app
          .replace('<script type="module"', '<script type="module" blocking="render"')
          .replace('</title>', () => `</title>\n    <script>${script}</script>`)
      );
    },
  },
};

function firstFiles(bundle: readonly Rolldown.OutputBundle[string][]): FirstFiles {
  const chunks = bundle.filter((file) => file.type === 'chunk');
  const chunkOf = (is: (chunk: (typeof chunks)[number]) => boolean, what: string) => {
    const found = chunks.find(is);
    if (found === undefined) throw new Error(`The build has no chunk for ${what}.`);
    return found;
  };
  const screen = chunkOf((chunk) => chunk.moduleIds.some((id) => workbasket.test(id)), 'the workbasket');
  const words = (language: string) =>
    chunkOf(
      (chunk) => chunk.moduleIds.some((id) => id.endsWith(`/words/${language}/workbasket.ts`)),
      `its words, ${language}`,
    ).fileName;
  return {
    scripts: [screen.fileName, ...screen.imports].filter((file) => !file.includes('row-in-hand')),
    styles: [...(screen.viteMetadata?.importedCss ?? [])],
    words: { en: words('en'), de: words('de') },
    font: 'fonts/atkinson-hyperlegible-next.woff2',
  };
}

const partOfReader = /\/src\/knit\/(pattern\/(?!stretch-at)|row\/read\/)/;

const laterFile = /assets\/(?:words-de|reader)-[\w-]+\.js$/;

const linen = '#f1eadb';

const pwa = VitePWA({
  // The page registers the worker itself (src/app/service-worker.ts) and asks before it updates.
  registerType: 'prompt',
  injectRegister: null,
  // The patterns below find the icons already; twice in the list would be twice in the install.
  includeManifestIcons: false,
  strategies: 'generateSW',
  manifest: {
    name: 'Ridgeline',
    short_name: 'Ridgeline',
    description: 'Keeps your place in a hand-knitted garment, row by row, with no network.',
    lang: 'en',
    dir: 'ltr',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: linen,
    theme_color: linen,
    categories: ['lifestyle', 'utilities'],
    icons: [
      { src: 'icons/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
      { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
      { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
      { src: 'icons/maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
    // A backup opens with a double click; a backup or a link of ours can be shared to the app. The worker takes them.
    file_handlers: [{ action: './#/backup', accept: { 'application/json': ['.json'] } }],
    share_target: {
      action: './',
      method: 'POST',
      enctype: 'multipart/form-data',
      params: {
        title: 'title',
        text: 'text',
        url: 'url',
        files: [{ name: 'file', accept: ['application/json', '.json', 'text/plain', '.txt'] }],
      },
    },
    shortcuts: [
      {
        name: 'Continue knitting',
        short_name: 'Continue',
        description: 'Straight to the row in hand',
        url: './#/continue',
        icons: [{ src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png' }],
      },
    ],
  },
  workbox: {
    globPatterns: ['**/*.{js,css,html,woff2,json,svg,png}'],
    // Asked for by the browser when the app is put on the home screen, and by readers of a backup. The one icon that
    // it draws at every start is no SVG: that would be laid out on the page's own thread.
    globIgnores: ['icons/!(icon-192).png', '*.schema.json', 'assets/words-de-*.js', 'assets/reader-*.js'],
    // The start page is asked for with a query too (share_target, head-script.ts). A page below another folder may be
    // another copy of the app, and its caches are its own.
    navigateFallback: null,
    ignoreURLParametersMatching: [/./],
    cleanupOutdatedCaches: false,
    manifestTransforms: [
      (entries) => {
        const manifest = entries.map((entry) => ({ ...entry, integrity: integrityOf(entry.url) }));
        kept.push(
          ...manifest.map(({ url, integrity, revision }) => ({ url, integrity, revision, later: false })),
        );
        return { manifest };
      },
    ],
    // Where Trusted Types are enforced, importScripts() fails without a word and nothing is cached.
    inlineWorkboxRuntime: true,
    sourcemap: false,
  },
});

export default defineConfig({
  // Relative, so that the app works in a sub-folder of any static host.
  base: './',
  oxc: { jsx },
  define: { __VERSION__: JSON.stringify(version) },
  plugins: [openPolicyInDevelopment, keptCompiled, startInHead, pwa, guardedWorker],
  // what is worked out beside the page: a module like the page's own, so that the same policy holds for it
  worker: { format: 'es' },
  build: {
    outDir,
    emptyOutDir: true,
    target: 'es2022',
    manifest: true,
    modulePreload: {
      polyfill: false,
      // The names of what a later screen needs would lengthen the first script; the first screen's are worth it.
      resolveDependencies: (file, needed, { hostType }) =>
        hostType === 'html' || file.includes('workbasket-screen')
          ? needed
          : needed.filter((name) => name.endsWith('.css')),
    },
    // A picture inside a style sheet would need data: in more places than the policy allows.
    assetsInlineLimit: 0,
    reportCompressedSize: false,
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: (id, graph) => (needs(rowInHand, id, graph) ? 'row-in-hand' : null) },
            { name: (id, graph) => (needs(workbasket, id, graph) ? 'workbasket' : null) },
            // The reader of written patterns: large, and wanted only where one is copied. A group takes with it all
            // that it needs, so what others need of that is taken out before.
            {
              name: 'plan',
              test: (id) => id.includes('/src/knit/') && !partOfReader.test(id),
              minShareCount: 2,
            },
            { name: 'stretch', test: /\/src\/knit\/pattern\/stretch-at/ },
            { name: 'reader', test: partOfReader },
            { name: 'words-en', test: /\/src\/words\/en\/(?!workbasket)/ },
            {
              name: 'first-words-de',
              test: /\/src\/words\/de\/(knitting|craft|notices|row|ui|workbasket)\./,
            },
            { name: 'words-de', test: /\/src\/words\/de\// },
            // What other screens share is fetched once, with the first of them, instead of in crumbs.
            { name: 'parts', test: /\/src\/(ui|app|words\/[a-z-]+\.ts)/, minShareCount: 2 },
          ],
        },
      },
    },
  },
  test: {
    projects: [
      {
        oxc: { jsx },
        define: { __VERSION__: JSON.stringify(version) },
        test: {
          name: 'unit',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**'],
          environment: 'node',
          setupFiles: ['tests/setup.ts'],
          // no test measures time; a busy machine is not a fault
          testTimeout: 60_000,
          // Most of a run would be starting afresh for each file; what a test makes, it makes under a name of its own.
          isolate: false,
          pool: 'threads',
          maxWorkers: 2,
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/setup.ts'],
          environment: 'node',
          // two at once, since a browser waits half of its time; each has a host and a profile of its own
          isolate: false,
          maxWorkers: 2,
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
