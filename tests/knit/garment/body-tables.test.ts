import { describe, expect, it } from 'vitest';
import { type BodyTable, bodyOfSize, bodyTableNames, bodyTables } from '../../../src/knit/garment/bodies.ts';
import type { Body } from '../../../src/knit/garment/design.ts';
import { MM_PER_INCH } from '../../../src/knit/gauge.ts';

type Inches = Exclude<keyof Body, 'head'>;

const column = (table: BodyTable, name: Inches): readonly number[] =>
  bodyTables[table].map(({ body }) => body[name] / MM_PER_INCH);

/** How far each figure but the first and the last lies beside the middle of its two neighbours. */
const bends = (figures: readonly number[]): readonly number[] =>
  figures.slice(1, -1).map((figure, i) => Math.abs(figure - ((figures[i] ?? 0) + (figures[i + 2] ?? 0)) / 2));

/* What tests/outside/bodies.test.ts checks by published figures is a part of the tables; these are laws of the whole. */
describe('a table of bodies', () => {
  it('has its sizes from the smallest to the largest', () => {
    const sizes = Object.fromEntries(
      bodyTableNames.map((table) => [table, bodyTables[table].map(({ size }) => size).join()]),
    );
    expect(sizes).toEqual({
      women: 'XS,S,M,L,XL,2X,3X,4X,5X',
      men: 'S,M,L,XL,2X',
      children: '2,4,6,8,10,12,14,16',
      babies: '3 months,6 months,12 months,18 months,24 months',
    });
    expect(bodyOfSize('men', 'XS')).toBeUndefined();
  });

  it('no measure of a larger size is smaller than that of the size before', () => {
    for (const table of bodyTableNames)
      bodyTables[table].slice(1).forEach(({ size, body }, i) => {
        for (const name of Object.keys(body) as (keyof Body)[])
          expect(body[name], `${table} ${size} ${name}`).toBeGreaterThanOrEqual(
            bodyTables[table][i]?.body[name] ?? 0,
          );
      });
  });

  // grading goes by even steps, common practice: a figure that was mistyped by an inch would stand out
  it('a measure lies near the middle between those of the sizes beside it, in inches', () => {
    const most: Readonly<Record<Inches, number>> = {
      chest: 0.26,
      napeToWrist: 0.51,
      napeToWaist: 0.51,
      crossBack: 0.51,
      arm: 0.51,
      upperArm: 0.51,
      armholeDepth: 0.14,
      waist: 0.51,
      hip: 0.51,
      wrist: 0.14,
    };
    // the standard's women's hips go up by 5½ inches once where they else do by 2 to 4 (from memory); a child of two
    // years has long sleeves in both tables
    const known = ['women hip', 'women waist 5', 'babies napeToWrist 3'];
    for (const table of bodyTableNames)
      for (const [name, by] of Object.entries(most) as [Inches, number][])
        bends(column(table, name)).forEach((bend, i) => {
          if (known.some((one) => `${table} ${name} ${i + 1}`.startsWith(one))) return;
          expect(bend, `${table} ${bodyTables[table][i + 1]?.size} ${name}`).toBeLessThan(by);
        });
  });

  // the Craft Yarn Council's body sizing standards, the middle of each range; from memory, so no check from outside
  const remembered: Readonly<Record<string, readonly number[]>> = {
    'women chest': [29, 33, 37, 41, 45, 49, 53, 57, 61],
    'women upperArm': [9.75, 10.25, 11, 12, 13.5, 15.5, 17, 18.5, 19.5],
    'women armholeDepth': [6.25, 6.75, 7.25, 7.75, 8.25, 8.75, 9.25, 9.75, 10.25],
    'women hip': [33.5, 35.5, 39, 43, 47, 52.5, 54.5, 56.5, 61.5],
    'women crossBack': [14.25, 14.75, 16.25, 17.25, 17.5, 18, 18, 18.5, 18.5],
    'men chest': [35, 39, 43, 47, 51],
    'men waist': [29, 33, 37, 41, 45],
    'men hip': [36, 40, 44, 48, 52],
    'children chest': [21, 23, 25, 26.5, 28, 30, 31.5, 32.5],
    'children waist': [20.5, 21.5, 22.5, 23.5, 24.5, 25.5, 26.5, 27.5],
    'babies chest': [16, 17, 18, 19, 20],
    'babies napeToWrist': [10.5, 11.5, 12.5, 14, 18],
    'babies waist': [18, 19, 20, 20.5, 21],
  };
  it.each(Object.entries(remembered))('%s is the standard’s, as remembered', (name, inches) => {
    const [table, measure] = name.split(' ') as [BodyTable, Inches];
    column(table, measure).forEach((figure, i) => {
      expect(figure, bodyTables[table][i]?.size).toBeCloseTo(inches[i] ?? Number.NaN, 2);
    });
  });

  it('its smallest and largest bodies are the standard’s, as remembered, in inches', () => {
    const ends: readonly (readonly [BodyTable, string, Partial<Record<Inches, number>>])[] = [
      ['women', 'XS', { napeToWrist: 27.25, napeToWaist: 16.5, arm: 16.5, waist: 23.5, wrist: 5.75 }],
      ['women', '5X', { napeToWrist: 33.25, napeToWaist: 18.5, arm: 18.5, waist: 53, wrist: 7.75 }],
      ['men', 'S', { napeToWrist: 32.25, napeToWaist: 17.25, crossBack: 15.75, arm: 18, upperArm: 12 }],
      ['men', '2X', { napeToWrist: 36.25, napeToWaist: 19.25, crossBack: 18.75, arm: 20.5, upperArm: 17 }],
      ['men', 'S', { armholeDepth: 8.75, wrist: 6.75 }],
      ['men', '2X', { armholeDepth: 10.75, wrist: 7.75 }],
      ['children', '2', { napeToWrist: 18, napeToWaist: 8.5, crossBack: 9.25, arm: 8.5, upperArm: 7 }],
      ['children', '16', { napeToWrist: 28, napeToWaist: 16, crossBack: 13, arm: 16.5, upperArm: 9.5 }],
      ['children', '2', { armholeDepth: 4.25, hip: 21.5, wrist: 5 }],
      ['children', '16', { armholeDepth: 7.5, hip: 34.5, wrist: 5.75 }],
      ['babies', '3 months', { napeToWaist: 6, crossBack: 7.25, arm: 6, upperArm: 5.5, armholeDepth: 3.25 }],
      ['babies', '24 months', { napeToWaist: 8.5, crossBack: 8.75, arm: 8.5, upperArm: 7.5 }],
      ['babies', '3 months', { hip: 19, wrist: 4.25 }],
      ['babies', '24 months', { armholeDepth: 4.25, hip: 22, wrist: 5 }],
    ];
    for (const [table, size, inches] of ends)
      for (const [name, figure] of Object.entries(inches))
        expect(
          (bodyOfSize(table, size)?.[name as Inches] ?? Number.NaN) / MM_PER_INCH,
          `${size} ${name}`,
        ).toBeCloseTo(figure, 2);
  });

  it('heads grow by 5 mm a size at most, those of children by 15, of babies by 28', () => {
    const most = { women: 5, men: 5, children: 15, babies: 28 };
    for (const table of bodyTableNames)
      bodyTables[table].slice(1).forEach(({ body }, i) => {
        expect(body.head - (bodyTables[table][i]?.body.head ?? 0), table).toBeLessThanOrEqual(most[table]);
        expect(body.head % (table === 'babies' ? 1 : 5)).toBe(0);
      });
  });
});
