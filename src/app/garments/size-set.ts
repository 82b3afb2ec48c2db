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

/** The name of a size in a written list holds neither brackets nor commas. */
export const sizeName = (name: string): string =>
  name
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .slice(0, 16);

export const bodiesOf = ({ table, sizes, people }: SizeSet): readonly SizedBody[] => [
  ...bodyTables[table].filter(({ size }) => sizes.includes(size)),
  ...people.map(({ name, body }) => ({ size: sizeName(name), body })),
];

export const keepSizes = (id: Parameters<typeof changeGarment>[0], sizes: SizeSet): Promise<boolean> =>
  changeGarment(id, (now) => ({ ...now, sizes }));
