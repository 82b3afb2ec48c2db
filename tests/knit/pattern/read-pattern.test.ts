import { describe, expect, it } from 'vitest';
import { type ReadOptions, readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { printRow } from '../../../src/knit/row/print.ts';

/** How patterns are usually worded: common practice, no published source. Gauge 20 × 28 in 10 cm: a row is 3.571 mm. */
const gauge = { stitches: 20, rows: 28 };

const rows = (text: string, line: number, options: ReadOptions = {}) =>
  readPattern(text, options).lines[line]?.rows ?? [];
const counts = (text: string, options: ReadOptions = {}) =>
  readPattern(text, options).lines.map(({ after }) => after);
const shaped = (text: string, line: number) =>
  rows(text, line).flatMap(({ before, after }, i) => (before === after ? [] : [i + 1]));
const said = (text: string, line: number, options: ReadOptions = {}) =>
  rows(text, line, options).map(({ side, steps }) => `${side}: ${printRow(steps)}`);
const told = (text: string, options: ReadOptions = {}) =>
  readPattern(text, options).lines.flatMap(({ faults }) => faults.map(({ code }) => code));

describe('lengths', () => {
  it('become the rows that the gauge makes of them, rounded to the side asked for', () => {
    const text =
      'Cast on 60 sts.\nWork in st st until piece measures 10 cm from cast-on edge, ending with a WS row.';
    // 100 mm are 28 rows; the 28th is a WS row
    expect(rows(text, 1, { gauge })).toHaveLength(28);
    expect(rows(text.replace('WS', 'RS'), 1, { gauge }).at(-1)?.side).toBe('RS');
  });

  it('count from where the text says: the armhole, the beginning, here', () => {
    const text = `Cast on 60 sts.
Work in st st for 10 cm.
BO 4 sts at beg of next 2 rows.
Work even until armhole measures 5 cm.
Work even until piece measures 20 cm from beg.`;
    const read = readPattern(text, { gauge });
    const made = read.lines.map((line) => line.rows.length);
    expect(made).toEqual([0, 28, 2, 12, 14]);
  });

  it('without a gauge are open stretches that her own count fills', () => {
    const text = 'Cast on 20 sts.\nWork in st st until piece measures 38 cm, ending with a WS row.';
    const open = readPattern(text).pieces[0]?.recipe.parts[0]?.sections[0];
    expect(open?.length).toMatchObject({ id: 'piece/1', open: true, mm: 380, endSide: 'WS' });
    const counted = readPattern(text, { stretches: { 'piece/1': 110 } });
    expect(counted.lines[1]?.rows).toHaveLength(110);
  });

  it('that grow keep every row worked before as it was', () => {
    const text = `Cast on 20 sts.
Row 1: *K1, p1; rep from * to end. Row 2: *P1, k1; rep from * to end.
Rep rows 1 and 2 until piece measures 10 cm.
Dec 1 st at each end of every RS row 3 times.`;
    const at = (n: number) =>
      readPattern(text, { stretches: { 'piece/1': n } }).lines.flatMap((line) => line.rows);
    const [short, long] = [at(10), at(14)];
    expect(long.slice(0, 12)).toEqual(short.slice(0, 12));
    expect(long.length - short.length).toBe(4);
    expect(long.at(-1)?.after).toBe(short.at(-1)?.after);
  });

  it('in inches and centimetres, with fractions, are the same', () => {
    // garter takes 1.4 times the rows: 39.2 to 10 cm; 10.16 cm are 39.8 rows, 8.255 cm are 32.4
    const garter = (length: string) => rows(`CO 20 sts.\nGarter st for ${length}.`, 1, { gauge }).length;
    for (const length of ['4 in', '4"', '4 inches (10 cm)', '10.16 cm'])
      expect(garter(length), length).toBe(40);
    for (const length of [
      '3¼ in',
      '3 ¼"',
      '3 1/4 in',
      '3-1/4 ins',
      '3 and 1/4 inches',
      '3.25 in',
      '8.255 cm',
    ])
      expect(garter(length), length).toBe(32);
    for (const length of ['¾ in', '3/4 in', '0.75 inch']) expect(garter(length), length).toBe(8);
  });

  it('already passed are told', () => {
    expect(told('Cast on 20 sts.\nKnit 60 rows.\nWork even until piece measures 10 cm.', { gauge })).toEqual([
      'longer already',
    ]);
  });
});

describe('rows of shaping', () => {
  it('‘next and every foll 4th row to 12 sts’ lie on rows 1, 5, 9, 13', () => {
    expect(shaped('CO 20 sts.\nDec 1 st at each end of next and every foll 4th row to 12 sts.', 1)).toEqual([
      1, 5, 9, 13,
    ]);
  });

  it('‘5th and every foll 6th row until 26 sts’ lie on rows 5, 11, 17', () => {
    expect(
      shaped('CO 20 sts.\nInc 1 st at each end of 5th and every foll 6th row until there are 26 sts.', 1),
    ).toEqual([5, 11, 17]);
  });

  it('‘every other row 3 times, then every row twice’ go on from one another', () => {
    expect(
      shaped('CO 30 sts.\nDec 1 st each side every other row 3 times, then every row twice.', 1),
    ).toEqual([1, 3, 5, 6, 7]);
  });

  it('‘this and every 3rd row 14 times more’ are fifteen (Bulkies, Book No. 006: rows 4 to 46)', () => {
    const found = shaped('CO 57 sts.\nDec 1 st at each end of this and every 3rd row 14 times more.', 1);
    expect(found).toHaveLength(15);
    expect(found.at(-1)).toBe(1 + 3 * 14);
  });

  it('‘next and every foll 4th row 4 times’ are four in all; ‘next row, then every 4th row 4 times’ five', () => {
    expect(
      shaped('CO 30 sts.\nDec 1 st at each end of next and every foll 4th row 4 times.', 1),
    ).toHaveLength(4);
    expect(
      shaped('CO 30 sts.\nDec 1 st at each end of next row, then every 4th row 4 times.', 1),
    ).toHaveLength(5);
  });

  it('at the same time run beside each other, each to its own end', () => {
    const text = `LEFT FRONT
CO 40 sts.
Dec 1 st at armhole edge every other row 3 times, AT THE SAME TIME dec 1 st at neck edge every 4th row until 30 sts remain.
Work 24 rows even.`;
    // armhole: 3; neck, on rows 3, 7, 11 … 27: 7
    expect(counts(text)).toEqual([undefined, 40, 36, 30]);
    expect(told(text)).toEqual([]);
  });

  it('at the neck edge of a left front lie at the end of RS rows, of a right front at their beginning', () => {
    const row = (piece: string) => said(`${piece}\nCO 20 sts.\nDec 1 st at neck edge of next row.`, 2);
    expect(row('LEFT FRONT')).toEqual(['RS: knit to last 2 sts, dec']);
    expect(row('RIGHT FRONT')).toEqual(['RS: dec, knit to end']);
  });

  it('spread evenly over a row keep the count stated', () => {
    const text = 'CO 92 sts.\nWork 6 rows in k1, p1 rib, inc 8 sts evenly across last row. (100 sts)';
    expect(told(text)).toEqual([]);
    expect(rows(text, 1)).toHaveLength(6);
  });
});

describe('parts', () => {
  const divided = `FRONT
CO 60 sts. Work 4 rows in st st.
Next row (RS): K20, turn and leave rem 40 sts on a holder.
Dec 1 st at neck edge of next 3 rows. 17 sts.
BO 8 sts at beg of next row. Work 1 row. BO rem 9 sts.
With RS facing, rejoin yarn to rem sts, BO centre 20 sts, k to end. (20 sts)
Complete to match first side, reversing shaping.`;

  it('divided at a turn are two sides, the second the mirror image of the first', () => {
    const [piece] = readPattern(divided).pieces;
    expect(told(divided)).toEqual([]);
    expect(
      piece?.plan.ok && piece.plan.value.parts.map(({ name, start, left }) => [name, start, left]),
    ).toEqual([
      ['body', 60, 60],
      ['right side', 20, 0],
      ['left side', 40, 0],
    ]);
    expect(said(divided, 6)[0]).toBe('WS: purl to last 2 sts, dec');
  });

  it('bound off in the middle part there; a buttonhole closed by the next row does not', () => {
    const parted = readPattern('CO 30 sts.\nRow 1: K10, BO 10, k to end.\nDec 1 st at neck edge of next row.')
      .pieces[0];
    expect(parted?.recipe.parts).toHaveLength(3);
    const buttonhole = readPattern(
      'CO 30 sts.\nRow 1: K4, BO 2, k to end.\nRow 2: K to last 4 sts, CO 2, k4. (30 sts)',
    ).pieces[0];
    expect(buttonhole?.recipe.parts).toHaveLength(1);
  });

  it('worked as for another piece follow it to the place named', () => {
    const text = `BACK
CO 50 sts. Work 20 rows in st st.
Shape armholes: BO 3 sts at beg of next 2 rows. Dec 1 st at each end of next row.
Work 10 rows. BO.
FRONT
Work as for back to armhole.
LEFT FRONT
CO 25 sts. Work as for back to armhole.
Shape armhole as for back.`;
    const read = readPattern(text);
    expect(read.lines.map(({ rows: made }) => made.length)).toEqual([0, 20, 3, 11, 0, 20, 0, 20, 3]);
    // a half has one armhole: 3 bound off and 1 decreased
    expect(read.lines.at(-1)?.after).toBe(21);
    expect(told(text)).toEqual([]);
  });

  it('short rows leave the count alone', () => {
    const text = 'CO 30 sts.\nK20, turn. P10, turn. K to end.';
    const read = rows('CO 30 sts.\nK20, turn.\nK back.', 1);
    expect(read.map(({ before, after }) => [before, after])).toEqual([[30, 30]]);
    expect(readPattern(text).lines[1]?.after).toBe(30);
  });
});

describe('sizes', () => {
  const text = `Sizes: S (M, L)
BACK
Cast on 80 (88, 96) sts. Knit 2 rows.
BO 3 (4, 5) sts at beg of next 2 rows, then – (2, 3) sts at beg of next 0 (2, 2) rows.
For size L only: dec 1 st at each end of next row.
Next row: K10 [12: 14], k2tog, k to end.`;

  it('are named, and every number follows the one chosen', () => {
    expect(readPattern(text).sizes).toEqual(['S', 'M', 'L']);
    expect(counts(text, { size: 0 })).toEqual([undefined, undefined, 80, 74, undefined, 73]);
    expect(counts(text, { size: 1 })).toEqual([undefined, undefined, 88, 76, undefined, 75]);
    expect(counts(text, { size: 2 })).toEqual([undefined, undefined, 96, 80, 78, 77]);
  });

  it('in a list of another length are told', () => {
    expect(told('Sizes: S (M, L)\nCast on 80 (88, 96) sts.\nK10 (12, 14, 16), k to end.')).toContain(
      'sizes differ',
    );
  });
});

describe('what is not understood', () => {
  const text = 'CO 40 sts.\nNext row: wibble the k sts and 3 wobble sts.\nKnit 1 row.';

  it('stays in the plan as the knitter’s own words, is marked and asks for its count', () => {
    const [, own, after] = readPattern(text).lines;
    expect(own).toMatchObject({ kind: 'own words', asksCount: true });
    expect(own?.rows[0]?.own).toContain('wibble');
    expect(after?.after).toBe(40);
  });

  it('takes the count written behind it', () => {
    const answered = text.replace('sts.\nKnit', 'sts (36 sts).\nKnit');
    const [, own, after] = readPattern(answered).lines;
    expect(own).toMatchObject({ asksCount: false, after: 36 });
    expect(after?.after).toBe(36);
    expect(readPattern(answered).pieces[0]?.plan.ok).toBe(true);
  });

  it('and asks for no knitting is talk', () => {
    const [talk] = readPattern('The back is made in one and looks lovely.\nCO 40 sts.').lines;
    expect(talk).toMatchObject({ kind: 'talk', asksCount: false, faults: [] });
  });
});

describe('stitch patterns', () => {
  const text = `Wave pattern (multiple of 4 plus 1)
Row 1: *K1, p3; rep from * to last st, k1.
Row 2: *P1, k3; rep from * to last st, p1.

SCARF
CO 21 sts.
Work in wave pattern for 4 rows.
Dec 1 st at each end of next row.`;

  it('are worked where they are named, and go on under the shaping of the edges', () => {
    expect(said(text, 5)[0]).toBe('RS: *k1, p3; repeat from * to last st, k1');
    expect(said(text, 6)).toEqual(['RS: dec, p2, *k1, p3; repeat from * to last 5 sts, k1, p2, dec']);
  });
});
