import { MM_PER_INCH } from '../gauge.ts';
import type { Body } from './design.ts';

/**
 * Body tables, in inches. Chest, cross back, nape to wrist, nape to waist, arm, upper arm and armhole depth follow the
 * Craft Yarn Council's standard, the middle where a range is given: from memory, but for the women's chests and the
 * children's to 10 years, which yarn makers print. That standard has waist and hip too: the women's and babies' hips are
 * its own to half an inch, the women's waists to XL, larger ones 2 to 3½ inches more than its own (all from memory).
 * Men's nape to waist, which it gives to the hip, and all wrists are common practice, no published source. Heads: babies
 * between the medians of girls and boys in the WHO's growth standards of 2007, others common practice.
 */
type Row = readonly [
  size: string,
  chest: number,
  napeToWrist: number,
  napeToWaist: number,
  crossBack: number,
  arm: number,
  upperArm: number,
  armholeDepth: number,
  waist: number,
  hip: number,
  wrist: number,
  headMm: number,
];

const women: readonly Row[] = [
  ['XS', 29, 27.25, 16.5, 14.25, 16.5, 9.75, 6.25, 23.5, 33.5, 5.75, 550],
  ['S', 33, 28.25, 17, 14.75, 17, 10.25, 6.75, 26, 35.5, 6, 555],
  ['M', 37, 29.25, 17.25, 16.25, 17, 11, 7.25, 29, 39, 6.25, 560],
  ['L', 41, 30.25, 17.5, 17.25, 17.5, 12, 7.75, 33, 43, 6.5, 560],
  ['XL', 45, 31.25, 17.75, 17.5, 17.5, 13.5, 8.25, 37, 47, 6.75, 565],
  ['2X', 49, 31.75, 18, 18, 18, 15.5, 8.75, 42, 52.5, 7, 570],
  ['3X', 53, 32.75, 18, 18, 18, 17, 9.25, 45, 54.5, 7.25, 570],
  ['4X', 57, 32.75, 18.5, 18.5, 18.5, 18.5, 9.75, 49, 56.5, 7.5, 575],
  ['5X', 61, 33.25, 18.5, 18.5, 18.5, 19.5, 10.25, 53, 61.5, 7.75, 575],
];

const men: readonly Row[] = [
  ['S', 35, 32.25, 17.25, 15.75, 18, 12, 8.75, 29, 36, 6.75, 570],
  ['M', 39, 33.25, 17.75, 16.75, 18.5, 13, 9.25, 33, 40, 7, 575],
  ['L', 43, 34.25, 18.25, 17.75, 19.5, 15, 9.75, 37, 44, 7.25, 580],
  ['XL', 47, 35.25, 18.75, 18.25, 20, 16, 10.25, 41, 48, 7.5, 585],
  ['2X', 51, 36.25, 19.25, 18.75, 20.5, 17, 10.75, 45, 52, 7.75, 590],
];

const children: readonly Row[] = [
  ['2', 21, 18, 8.5, 9.25, 8.5, 7, 4.25, 20.5, 21.5, 5, 485],
  ['4', 23, 19.5, 9.5, 9.75, 10.5, 7.5, 4.75, 21.5, 23.5, 5, 500],
  ['6', 25, 20.5, 10.5, 10.25, 11.5, 8, 5, 22.5, 25, 5.25, 510],
  ['8', 26.5, 22, 12.5, 10.75, 12.5, 8.5, 5.5, 23.5, 27.5, 5.25, 520],
  ['10', 28, 24, 14, 11.25, 13.5, 8.75, 6, 24.5, 29.5, 5.5, 530],
  ['12', 30, 26, 15, 12, 15, 9, 6.5, 25.5, 31.5, 5.5, 535],
  ['14', 31.5, 27, 15.5, 12.25, 16, 9.25, 7, 26.5, 33, 5.75, 540],
  ['16', 32.5, 28, 16, 13, 16.5, 9.5, 7.5, 27.5, 34.5, 5.75, 550],
];

const babies: readonly Row[] = [
  ['3 months', 16, 10.5, 6, 7.25, 6, 5.5, 3.25, 18, 19, 4.25, 400],
  ['6 months', 17, 11.5, 7, 7.75, 6.5, 6, 3.5, 19, 20, 4.5, 428],
  ['12 months', 18, 12.5, 7.5, 8.25, 7.5, 6.5, 3.75, 20, 20, 4.75, 455],
  ['18 months', 19, 14, 8, 8.5, 8, 7, 4, 20.5, 21, 4.75, 468],
  ['24 months', 20, 18, 8.5, 8.75, 8.5, 7.5, 4.25, 21, 22, 5, 477],
];

const mm = (inches: number): number => Math.round(inches * MM_PER_INCH * 10) / 10;

const bodyOf = (row: Row): Body => ({
  chest: mm(row[1]),
  napeToWrist: mm(row[2]),
  napeToWaist: mm(row[3]),
  crossBack: mm(row[4]),
  arm: mm(row[5]),
  upperArm: mm(row[6]),
  armholeDepth: mm(row[7]),
  waist: mm(row[8]),
  hip: mm(row[9]),
  wrist: mm(row[10]),
  head: row[11],
});

export interface SizedBody {
  readonly size: string;
  readonly body: Body;
}

const tableOf = (rows: readonly Row[]): readonly SizedBody[] =>
  rows.map((row) => ({ size: row[0], body: bodyOf(row) }));

export const bodyTables = {
  women: tableOf(women),
  men: tableOf(men),
  children: tableOf(children),
  babies: tableOf(babies),
} as const;
export type BodyTable = keyof typeof bodyTables;
export const bodyTableNames = Object.keys(bodyTables) as readonly BodyTable[];

/** A body of a table; undefined where the table has no such size. */
export const bodyOfSize = (table: BodyTable, size: string): Body | undefined =>
  bodyTables[table].find((sized) => sized.size === size)?.body;
