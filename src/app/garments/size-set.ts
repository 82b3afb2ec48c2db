import type { Adjustment } from '../../knit/garment/adjust.ts';
import { type BodyTable, bodyTables, type SizedBody } from '../../knit/garment/bodies.ts';
import type { DesignForm, Person } from '../drafts/design/form.ts';
import { changeGarment } from './change-garment.ts';

/** The sizes in which a garment is passed on, kept with it. */
export interface SizeSet {
  readonly version: 1;
  readonly table: BodyTable;
  /** of the table */
  readonly sizes: readonly string[];
  /** own measures, as they were when they were chosen */
  readonly people: readonly Person[];
  readonly adjusted: readonly Adjustment[];
}

/** Sizes to either side of her own, to begin with. */
const BESIDE = 2;

export function usualSizes(table: BodyTable, own: string | undefined): readonly string[] {
  const names = bodyTables[table].map(({ size }) => size);
  const middle = Math.max(BESIDE, own === undefined ? BESIDE : names.indexOf(own));
  const last = Math.min(names.length, middle + BESIDE + 1);
  return names.slice(Math.max(0, last - 2 * BESIDE - 1), last);
}

export function usualSet({ person: { table = 'women', size } }: DesignForm): SizeSet {
  return { version: 1, table, sizes: usualSizes(table, size), people: [], adjusted: [] };
}

/** The name of a size in a written list holds neither brackets nor commas, nor the words between two names. */
export const sizeName = (name: string): string =>
  name
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .replace(/(?<!\S)(?:and|only)(?!\S)/giu, '')
    .replace(/ +/g, ' ')
    .trim()
    .slice(0, 16);

/** Every size under a name of its own: a person called as a size of the table, or by signs alone, is told from it by a number. */
export function bodiesOf({ table, sizes, people }: SizeSet): readonly SizedBody[] {
  const all: SizedBody[] = bodyTables[table].filter(({ size }) => sizes.includes(size));
  for (const { name, body } of people) {
    const own = sizeName(name);
    const isFree = (size: string) => size !== '' && all.every((one) => one.size !== size);
    let size = own;
    for (let n = 2; !isFree(size); n += 1) size = `${own} ${n}`.trim();
    all.push({ size, body });
  }
  return all;
}

export const keepSizes = (id: Parameters<typeof changeGarment>[0], sizes: SizeSet): Promise<boolean> =>
  changeGarment(id, (now) => ({ ...now, sizes }));
