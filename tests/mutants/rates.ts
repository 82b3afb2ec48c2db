import type { Fate } from './live/orders.ts';
import type { Mutant } from './plant.ts';
import { type Folder, folderOf } from './sources.ts';

export interface Tried {
  readonly mutant: Mutant;
  readonly fate: Fate;
}

/** The share of mutants that must be found. What the app does on a phone is tried in browsers, which no mutant is. */
const barOf = (folder: Folder): number => (folder === 'app' ? 0.8 : 0.9);

/** A table of what was killed in each folder, below it what was not, and whether a bar was missed. */
export function printRates(tried: readonly Tried[]): { text: string; missed: boolean } {
  const folders = [...new Set(tried.map(({ mutant }) => folderOf(mutant.file)))];
  const rows = folders.map((folder) => {
    const here = tried.filter(({ mutant }) => folderOf(mutant.file) === folder);
    const killed = here.filter(({ fate }) => fate.killed).length;
    return { folder, killed, of: here.length, met: killed / here.length >= barOf(folder) };
  });
  const lines = rows.map(
    ({ folder, killed, of, met }) =>
      `${met ? 'ok    ' : 'MISSED'} ${folder.padEnd(10)} ${killed} of ${of}, ${((100 * killed) / of).toFixed(0)} % (bar ${100 * barOf(folder)} %)`,
  );
  const survivors = tried.filter(({ fate }) => !fate.killed && !fate.unknown).map(nameOf);
  const unknown = tried.filter(({ fate }) => !fate.killed && fate.unknown).map(nameOf);
  const listed = ['Survivors:', ...survivors, `Unknown, and not counted as killed: ${unknown.length}`];
  return { text: [...lines, ...listed, ...unknown].join('\n'), missed: rows.some(({ met }) => !met) };
}

const nameOf = ({ mutant: { file, line, before, after } }: Tried): string =>
  `  ${file}:${line}  ${before}  ->  ${after}`;
