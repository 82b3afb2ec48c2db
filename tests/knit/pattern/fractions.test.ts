import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';

/** One inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
const INCH = 25.4;

const GAUGE = 'Gauge: 20 sts and 28 rows = 10 cm.';

/** The length to which the piece is to be worked, mm, as the text is read. */
function lengthRead(length: string): number | undefined {
  const { pieces } = readPattern(`${GAUGE}\nBACK\nCO 40 sts.\nWork in st st until piece measures ${length}.`);
  return pieces[0]?.recipe.parts[0]?.sections.at(-1)?.length?.mm;
}

describe('a fraction in a pattern’s text', () => {
  it.each([
    ['15¼ in', 15 + 1 / 4],
    ['15½ in', 15 + 1 / 2],
    ['15¾ in', 15 + 3 / 4],
    ['15⅓ in', 15 + 1 / 3],
    ['15⅔ in', 15 + 2 / 3],
    ['15⅛ in', 15 + 1 / 8],
    ['15⅜ in', 15 + 3 / 8],
    ['15⅝ in', 15 + 5 / 8],
    ['15⅞ in', 15 + 7 / 8],
    ['15 1/4 in', 15 + 1 / 4],
    ['15 1/2 inches', 15 + 1 / 2],
    ['15 3/4"', 15 + 3 / 4],
    ['15-1/4 in', 15 + 1 / 4],
    ['¾ in', 3 / 4],
    ['3/4 in', 3 / 4],
    ['¼ in', 1 / 4],
    ['1/4 in', 1 / 4],
  ])('%s is that part of an inch, and no whole number', (length, inches) => {
    expect(lengthRead(length)).toBeCloseTo(inches * INCH, 6);
  });

  it('makes as many rows as the length has: 28 to 10 cm', () => {
    const rows = (length: string) => {
      const { pieces } = readPattern(
        `${GAUGE}\nBACK\nCO 40 sts.\nWork in st st until piece measures ${length}.`,
      );
      return pieces[0]?.recipe.parts[0]?.sections.reduce((sum, section) => sum + section.rows, 0);
    };
    // 4¼ in = 107.95 mm = 30.2 rows; 4¾ in = 120.65 mm = 33.8 rows; 4 in = 101.6 mm = 28.4 rows
    expect(Math.abs(Number(rows('4¼ in')) - 30.2)).toBeLessThanOrEqual(1);
    expect(Math.abs(Number(rows('4 3/4 in')) - 33.8)).toBeLessThanOrEqual(1);
    expect(Math.abs(Number(rows('4 in')) - 28.4)).toBeLessThanOrEqual(1);
  });

  it.each([
    ['Gauge: 5½ sts and 7 rows = 1 in.', 5.5],
    ['Gauge: 5 1/2 sts and 7 1/2 rows = 1 inch.', 5.5],
    ['Gauge: 9 sts and 12 rows = 2 inches.', 4.5],
    ['Gauge: 7¼ sts and 9 rows = 1 inch.', 7.25],
  ])('%s is that many to the inch', (gauge, perInch) => {
    const { gauge: read } = readPattern(`${gauge}\nBACK\nCO 40 sts.\nKnit 2 rows.`);
    expect(read?.stitches).toBeCloseTo((perInch * 100) / INCH, 6);
  });
});
