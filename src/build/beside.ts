import type { Plugin } from 'vite';

/** The worker of the page (src/app/off-thread/). */
export const offThread = 'src/app/off-thread/worker.ts';

const asked = `${offThread.split('/').at(-1)}?worker&url`;
const made = '\0address of the worker';

/**
 * Vite builds a worker by itself, with a copy of all that the page has too: planning, checking and unfolding would lie
 * on the device twice. Here it is one more file of the page's own build, which shares theirs. Only the build: elsewhere
 * Vite's way is as good.
 */
export const beside: Plugin = {
  name: 'worker-beside-the-page',
  apply: 'build',
  enforce: 'pre',
  resolveId: (id) => (id.endsWith(asked) ? made : null),
  load(id) {
    if (id !== made) return null;
    const file = this.emitFile({ type: 'chunk', id: offThread, name: 'worker' });
    return `export default import.meta.ROLLUP_FILE_URL_${file};`;
  },
};
