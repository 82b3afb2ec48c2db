import { minify } from 'terser';
import type { Plugin } from 'vite';
import { kindWanted } from './chunks.ts';

/**
 * Each script is gone over once more before the bundler's own minifier renames what is in it: what is kept offline has a
 * limit, and this wins a hundredth of it.
 */
export const smaller: Plugin = {
  name: 'smaller',
  apply: 'build',
  renderChunk: {
    order: 'post',
    async handler(code, { fileName }) {
      // a library that comes as small as it gets, and takes longer than all the rest
      if (kindWanted(fileName) !== undefined) return null;
      const { code: shorter } = await minify(code, {
        module: true,
        ecma: 2020,
        mangle: false,
        compress: { passes: 2 },
      });
      return shorter === undefined ? null : { code: shorter, map: null };
    },
  },
};
