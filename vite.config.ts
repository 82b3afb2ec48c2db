import { defineConfig } from 'vitest/config';
import { beside } from './src/build/beside.ts';
import { chunkGroups, WHEN_WANTED } from './src/build/chunks.ts';
import { counted } from './src/build/counted.ts';
import { head } from './src/build/head.ts';
import { licences, licencesFile } from './src/build/licences.ts';
import { outDir, version } from './src/build/out-dir.ts';
import { parted } from './src/build/parted.ts';
import { smaller } from './src/build/smaller.ts';
import { words } from './src/build/words.ts';
import { worker } from './src/build/worker.ts';
import { FileOrder } from './tests/run/file-order.ts';
import { nodeLoads } from './tests/run/in-node/by-node.ts';

const jsx = { runtime: 'automatic', importSource: 'preact' } as const;

export default defineConfig({
  // Relative, so that the app works in a sub-folder of any static host.
  base: './',
  oxc: { jsx },
  // signals look for tools that nobody has at her place: what they would tell them is left out
  define: { __VERSION__: JSON.stringify(version), 'window.__PREACT_SIGNALS_DEVTOOLS__': 'false' },
  plugins: [smaller, ...head, beside, parted, counted, words, licences, ...worker],
  // what is worked out beside the page: a module like the page's own, so that the same policy holds for it
  worker: {
    format: 'es',
    rolldownOptions: { output: { entryFileNames: `assets/${WHEN_WANTED}[name]-[hash].js` } },
  },
  build: {
    outDir,
    emptyOutDir: true,
    target: 'es2022',
    manifest: true,
    license: { fileName: licencesFile },
    modulePreload: {
      polyfill: false,
      // The names of what a later screen needs would lengthen the first script; the first screen's are worth it.
      resolveDependencies: (_file, needed, { hostType }) =>
        hostType === 'html' ? needed : needed.filter((name) => name.endsWith('.css')),
    },
    // A picture inside a style sheet would need data: in more places than the policy allows.
    assetsInlineLimit: 0,
    reportCompressedSize: false,
    rolldownOptions: { output: { codeSplitting: { groups: chunkGroups() } } },
  },
  test: {
    sequence: { sequencer: FileOrder },
    projects: [
      {
        oxc: { jsx },
        define: { __VERSION__: JSON.stringify(version) },
        test: {
          name: 'unit',
          // told by what is in it: a list of exceptions here would hold in place of the one that a run gives
          include: ['tests/*.test.{ts,tsx}', 'tests/!(browser)/**/*.test.{ts,tsx}'],
          environment: 'node',
          setupFiles: ['tests/setup.ts'],
          // no test measures time; a busy machine is not a fault
          testTimeout: 60_000,
          // Most of a run would be starting afresh for each file; what a test makes, it makes under a name of its own.
          isolate: false,
          pool: 'threads',
          maxWorkers: 2,
          ...nodeLoads,
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/setup.ts'],
          environment: 'node',
          // three at once, since a browser waits half of its time; each has a host and a profile of its own
          isolate: false,
          maxWorkers: 3,
          // a test may build a page, while the tests in Node run beside it
          testTimeout: 180_000,
          hookTimeout: 180_000,
          // as long as a page's own waiting: on a busy machine a frame may take a second
          expect: { poll: { timeout: 10_000, interval: 50 } },
        },
      },
    ],
  },
});
