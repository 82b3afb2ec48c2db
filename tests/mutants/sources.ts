import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** The folders in which mutants are planted, as the report names them. */
const folders = {
  row: 'src/knit/row',
  piece: 'src/knit/piece',
  shape: 'src/knit/shape',
  garment: 'src/knit/garment',
  pattern: 'src/knit/pattern',
  yarn: 'src/knit/yarn',
  'making-up': 'src/knit/making-up',
  written: 'src/knit/written',
  knit: 'src/knit',
  progress: 'src/progress',
  store: 'src/store',
  app: 'src/app',
} as const;

export type Folder = keyof typeof folders;

/** The part of the report that a source belongs to; the files right under src/knit are 'knit'. */
export function folderOf(file: string): Folder {
  const names = Object.keys(folders) as Folder[];
  const found = names.find((name) => file.startsWith(`${folders[name]}/`));
  if (found === undefined) throw new Error(`${file} is in no folder in which mutants are planted.`);
  return found;
}

/** Whether a source is meant by a wish: a folder by its name in the report, a path, or the beginning of one. */
export const isIn = (file: string, wish: string): boolean =>
  wish in folders ? folderOf(file) === wish : file === wish || file.startsWith(`${wish.replace(/\/$/, '')}/`);

/** The sources under `root` in which mutants are planted, in an order that stays. */
export function sourcesIn(root: string): string[] {
  return ['src/knit', 'src/progress', 'src/store', 'src/app'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name) && !name.endsWith('.d.ts'))
      .map((name) => `${folder}/${name}`)
      .sort(),
  );
}
