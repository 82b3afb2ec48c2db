import { describe, expect, it } from 'vitest';
import type { Finished } from '../../../src/knit/making-up/finished.ts';
import { englishWritten } from '../../../src/knit/written/english.ts';
import {
  tellsAmounts,
  tellsFit,
  tellsMeasures,
  tellsNeedles,
  tellsSections,
} from '../../../src/knit/written/look-figures.ts';
import type { WorkedSize } from '../../../src/knit/written/work-size.ts';
import { partOf, type Rows } from './rows-by-hand.ts';

/* Figures of a pattern beside those of the garment, reckoned by hand: a centimetre is told to a half, an inch to a quarter. */
const words = englishWritten('US');
const size = (more: object): WorkedSize => more as unknown as WorkedSize;

describe('measures', () => {
  const finished = (more: Partial<Finished>): WorkedSize => size({ finished: more });
  const tells = (lines: readonly string[], ...sizes: readonly Partial<Finished>[]) =>
    tellsMeasures(lines, sizes.map(finished), words);

  it.each([
    [['Chest: 100 cm'], 1000, true],
    // half of the step of a half centimetre, and a tenth of a mm
    [['Chest: 100 cm'], 1002.5, true],
    [['Chest: 100 cm'], 997.5, true],
    [['Chest: 100 cm'], 1002.7, false],
    [['Chest: 100 cm'], 997.3, false],
    // half of a quarter inch, 3.175 mm
    [['Chest: 40 in'], 1016, true],
    [['Chest: 40 in'], 1019, true],
    [['Chest: 40 in'], 1013, true],
    [['Chest: 40 in'], 1019.15, true],
    [['Chest: 40 in'], 1012.85, true],
    [['Chest: 40 in'], 1019.4, false],
    [['Chest: 40 in'], 1012.6, false],
    [['Chest: 40 in'], 900, false],
    [['Chest: 39.5 in / 100.5 cm'], 1005, true],
    [['Chest: 1 m'], 1000, false],
    [['Length: 100 cm'], 1000, false],
    [['Length: 60 cm', 'Chest: 100 cm'], 1000, false],
    [[], 1000, false],
  ])('%j of a chest of %d mm: %s', (lines, chest, is) => {
    expect(tells(lines, { chest })).toBe(is);
  });

  it('are of each size its own', () => {
    const line = ['Chest: 100 (110, 120.5) cm'];
    expect(tells(line, { chest: 1000 }, { chest: 1100 }, { chest: 1205 })).toBe(true);
    expect(tells(line, { chest: 1000 }, { chest: 1205 }, { chest: 1100 })).toBe(false);
    expect(tells(line, { chest: 1100 }, { chest: 1000 }, { chest: 1205 })).toBe(false);
    expect(tells(['Chest: 100 cm'], { chest: 1000 }, { chest: 1000 }, { chest: 1001 })).toBe(true);
    // a list of as many as there are not sizes is none of theirs: each of its figures is said to each
    expect(tells(line, { chest: 1205 }, { chest: 1000 })).toBe(true);
    expect(tells(line, { chest: 1205 }, { chest: 1010 })).toBe(false);
  });

  it('may be of some sizes only, which say nothing to the others', () => {
    expect(tells(['Chest: 100 (–) cm'], { chest: 1000 }, {})).toBe(true);
    expect(tells(['Chest: – (100) cm'], { chest: 1000 }, {})).toBe(false);
    // nor does an empty place
    expect(tells(['Chest: 100 () cm'], { chest: 1000 }, {})).toBe(true);
    expect(tells(['Chest: 100 () cm'], { chest: 1000 }, { chest: 1000 })).toBe(false);
  });

  it('are not told of what nobody knows', () => {
    expect(tells(['Wrist: 20 cm'], {})).toBe(false);
    expect(tells(['Wrist: 20 cm'], {}, { wrist: 200 })).toBe(true);
    expect(tells(['Washed: 20 cm'], {})).toBe(true);
  });

  it('each has its own line', () => {
    const all = { chest: 1000, length: 600, napeToCuff: 750, upperArm: 320, wrist: 200 };
    const lines = [
      'Chest: 100 cm',
      'Length: 60 cm',
      'Nape to cuff: 75 cm',
      'Upper arm: 32 cm',
      'Wrist: 20 cm',
    ];
    expect(tells(lines, all)).toBe(true);
    for (const name of Object.keys(all) as (keyof typeof all)[])
      expect(tells(lines, { ...all, [name]: all[name] + 10 }), name).toBe(false);
  });
});

describe('the body and its ease', () => {
  const eased = (chest: number, ease: number) => size({ design: { body: { chest }, ease: { chest: ease } } });
  const tells = (lines: readonly string[], ...sizes: readonly WorkedSize[]) => tellsFit(lines, sizes, words);
  const body = 'Body, round the chest: 90 (100) cm';

  it('are of each size, wider or narrower', () => {
    const wider = [body, 'Ease: 5 (10) cm wider than the body at the chest'];
    expect(tells(wider, eased(900, 50), eased(1000, 100))).toBe(true);
    expect(tells(wider, eased(900, 50), eased(1000, 50))).toBe(false);
    expect(tells(wider, eased(910, 50), eased(1000, 100))).toBe(false);
    const narrower = [body, 'Ease: 5 cm narrower than the body at the chest'];
    expect(tells(narrower, eased(900, -50), eased(1000, -50))).toBe(true);
    expect(tells([body], eased(900, 50), eased(1000, 50))).toBe(false);
    expect(tells(wider.slice(1), eased(900, 50), eased(1000, 100))).toBe(false);
    expect(tells([body, 'Ease: 0 cm wider than the body at the chest'], eased(900, 0), eased(1000, 0))).toBe(
      true,
    );
  });

  it('are not told of what was not drafted', () => {
    expect(tells([body, 'Ease: 5 cm wider'], eased(900, 50), size({}))).toBe(false);
  });
});

describe('the yarn to buy', () => {
  const need = (metresToBuy: number) => size({ yarn: { metresToBuy } });
  const tells = (lines: readonly string[], ...metres: readonly number[]) =>
    tellsAmounts(lines, metres.map(need), words);

  it('is what is needed, to the next ten metres', () => {
    const line = ['Amount, reserve included: 620 (700) m'];
    expect(tells(line, 620, 700)).toBe(true);
    expect(tells(line, 610.5, 691)).toBe(true);
    expect(tells(line, 620.5, 700)).toBe(false);
    expect(tells(line, 610, 700)).toBe(false);
    expect(tells(line, 620, 690)).toBe(false);
    expect(tells(line, 700, 620)).toBe(false);
    expect(tells(['Yarn: 620 (700) m'], 620, 700)).toBe(false);
  });
});

const garment = (...parts: readonly (readonly Rows[])[]) =>
  size({ garment: { pieces: [{ makes: [{ parts: parts.map((sections) => partOf(20, sections)) }] }] } });

describe('sections', () => {
  const hem = { name: 'hem', rows: ['k', 'k'] };
  const body = (rows: number) => ({ name: 'body', rows: [`k x ${rows}`] });
  const tells = (lines: readonly string[], ...sizes: readonly WorkedSize[]) =>
    tellsSections(lines, sizes, words);
  const lines = [
    'Hem, in stockinette stitch, 2 rows:',
    'Row 1 (RS): knit.',
    'Body, in stockinette stitch, 4 (6) rows:',
  ];

  it('are told with their rows, in their order, to each size', () => {
    const [small, large] = [garment([hem, body(4)]), garment([hem, body(6)])];
    expect(tells(lines, small, large)).toBe(true);
    expect(tells(lines, large, small)).toBe(false);
    expect(tells([...lines].reverse(), small, large)).toBe(false);
    expect(tells(lines.slice(0, 2), small, large)).toBe(false);
    expect(tells(lines.slice(1), small, large)).toBe(false);
    expect(
      tells(
        lines.map((line) => line.replace('Body', 'Bust')),
        small,
        large,
      ),
    ).toBe(false);
    expect(
      tells(
        lines.map((line) => line.replace('4 (6)', '4 (8)')),
        small,
        large,
      ),
    ).toBe(false);
  });

  it('one after the other, each on a line of its own', () => {
    const twice = garment([hem], [hem]);
    expect(tells([lines[0] ?? ''], twice)).toBe(false);
    expect(tells([lines[0] ?? '', lines[0] ?? ''], twice)).toBe(true);
    expect(tells(['Size S only: Hem, in stockinette stitch, 2 rows:'], garment([hem]))).toBe(true);
  });

  it('by their whole name, and by row or rows as the size has them', () => {
    expect(tells(['Gem, in stockinette stitch, 2 rows:'], garment([hem]))).toBe(false);
    const one = { name: 'hem', rows: ['k'] };
    expect(tells(['Hem, in stockinette stitch, 1 (2) rows:'], garment([one]), garment([hem]))).toBe(true);
    expect(tells(['Hem, in stockinette stitch, 1 (2) rows:'], garment([one]), garment([one]))).toBe(false);
  });

  it('with one row, a row alone; without a row, nothing', () => {
    expect(tells(['Hem, in stockinette stitch, 1 row:'], garment([{ name: 'hem', rows: ['k'] }]))).toBe(true);
    expect(tells(lines.slice(0, 1), garment([hem, { name: 'body', rows: [] }]))).toBe(true);
    expect(tells([], garment([{ name: 'body', rows: [] }]))).toBe(true);
  });
});

describe('needles', () => {
  const tells = (line: string, ...needles: readonly number[]) =>
    tellsNeedles([line], [garment(needles.map((needle) => ({ name: 'body', needle, rows: ['k'] })))], words);

  it('are all told that a row is worked with', () => {
    expect(tells('Needles: 3.5 mm and 4 mm', 3.5, 4)).toBe(true);
    expect(tells('Needles: 3.5 mm', 3.5, 4)).toBe(false);
    expect(tells('Needles: 3.5 mm and 4', 3.5, 4)).toBe(false);
    expect(tells('Needles: 3.5 mm and 4 mm', 3.25, 4)).toBe(false);
    expect(tells('Notions: markers')).toBe(true);
  });

  it('in every size, piece, part and row', () => {
    const hem = (needle: number) => ({ name: 'hem', needle, rows: ['k', 'k'] });
    const pieces = (...of: readonly WorkedSize[]) =>
      size({ garment: { pieces: of.flatMap(({ garment: { pieces: all } }) => all) } });
    const tellsIn = (line: string, ...sizes: readonly WorkedSize[]) => tellsNeedles([line], sizes, words);
    const [fine, both] = ['Needles: 3.5 mm', 'Needles: 3.5 mm and 4 mm'];
    for (const sizes of [
      [garment([hem(3.5)]), garment([hem(4)])],
      [pieces(garment([hem(3.5)]), garment([hem(4)]))],
      [garment([hem(3.5)], [hem(4)])],
      [garment([hem(3.5), hem(4)])],
    ]) {
      expect(tellsIn(fine, ...sizes)).toBe(false);
      expect(tellsIn(both, ...sizes)).toBe(true);
    }
    // on lines of their own as well
    expect(tellsNeedles(['3.5 mm', '4 mm'], [garment([hem(3.5)], [hem(4)])], words)).toBe(true);
  });
});
