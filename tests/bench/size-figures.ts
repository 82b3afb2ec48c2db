import { initialScripts, totalGzipBytes } from '../run/sizes.ts';
import { built } from './build.ts';
import type { Figure } from './figure.ts';

const KB = 1024;

/** What has to be fetched before the row in hand can be shown, words included. */
export function sizeFigures(): Figure[] {
  const ours = totalGzipBytes(built.app, initialScripts(built.app)) / KB;
  const theirs = totalGzipBytes(built.bare, initialScripts(built.bare)) / KB;
  return [
    {
      what: 'first script of the knitting screen, gzip',
      against: 'bare page',
      unit: 'KB',
      ours,
      theirs,
      times: 3,
      bound: { value: ours, most: 35 },
    },
  ];
}
