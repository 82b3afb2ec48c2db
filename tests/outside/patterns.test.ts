import { describe, expect, it, vi } from 'vitest';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import { printRow } from '../../src/knit/row/print.ts';
import { workRow } from '../../src/knit/row/work.ts';
import { told } from '../told.ts';
import * as bulkies from './patterns/bulkies-006.ts';
import * as fashion from './patterns/fashion-189.ts';
import * as vintage from './patterns/freevintageknitting.ts';
import * as patons from './patterns/patons-45632.ts';
import * as redCross from './patterns/red-cross.ts';
import * as star201 from './patterns/star-201.ts';
import * as star223 from './patterns/star-223-220.ts';
import type { WorkedPattern } from './patterns/worked-pattern.ts';

// two hundred rows of several sizes each: slow where many tests share two cores
vi.setConfig({ testTimeout: 60_000 });

const all: readonly WorkedPattern[] = [bulkies, star201, star223, fashion, patons, redCross, vintage].flatMap(
  (book) => Object.values(book),
);

describe('published garments, read from text', () => {
  it('are more than twenty pieces', () => {
    const pieces = all.flatMap(({ text }) => readPattern(text).pieces);
    expect(pieces.length).toBeGreaterThan(20);
  });
});

describe.each(
  all.map((pattern) => [`${pattern.source} (not the book’s: ${pattern.ours})`, pattern] as const),
)('%s', (_, { text, sizes, ends = {} }) => {
  const each = Array.from({ length: sizes }, (_none, size) => size);

  it.each(each)('size %i: every line is understood and every stated count agrees', (size) => {
    const read = readPattern(text, { size });
    const wrong = read.lines.flatMap((line) => line.faults.map((found) => `${line.line}: ${told([found])}`));
    expect(read.sizes).toHaveLength(sizes);
    // the bootees' stitches on holders: the part that is quoted ends before they are taken up
    const isKnown = (one: string) => one.includes('longer already') || one.startsWith('37: stitches wait');
    expect(wrong.filter((one) => !isKnown(one))).toEqual([]);
    expect(read.lines.filter(({ kind }) => kind === 'own words').map(({ text: line }) => line)).toEqual([]);
    expect(read.lines.flatMap(({ stated }) => stated).length).toBe(statedIn(text));
  });

  it.each(each)('size %i: every piece is a plan whose rows come out', (size) => {
    const read = readPattern(text, { size });
    for (const { plan, recipe } of read.pieces) {
      expect(plan.ok ? '' : `${recipe.name}: ${told(plan.faults)}`).toBe('');
      if (!plan.ok) continue;
      for (const part of plan.value.parts) {
        for (const { steps, before, after } of part.rows) {
          expect(workRow(steps, before)).toMatchObject({ ok: true, value: { after } });
        }
        const end = ends[`${recipe.name.toLowerCase()}/${part.name}`];
        if (end) expect({ part: part.name, left: part.left }).toEqual({ part: part.name, left: end[size] });
      }
    }
  });
});

/** Counts that a text states, told from the text alone: a number of stitches behind a row, in brackets or after a stop, dash or colon. */
function statedIn(text: string): number {
  const list = String.raw`\d+(?: \([\d, ]+\))?`;
  const bracket = new RegExp(String.raw`\(${list} sts?(?: each side)?\)`, 'g');
  const behind = new RegExp(String.raw`(?:[.:–] )${list} sts(?: each side)?(?=[.\n]|$)`, 'gm');
  return (text.match(bracket) ?? []).length + (text.replace(bracket, '').match(behind) ?? []).length;
}

describe('her raglan (Star Book No. 201, PG 61105)', () => {
  it('has 52 rows of raglan on the body and 51 on the sleeve, as printed', () => {
    const read = readPattern(star201.raglan.text, { size: 0 });
    const rows = read.pieces.map(({ plan }) => {
      if (!plan.ok) throw new Error(told(plan.faults));
      const all = plan.value.parts.flatMap((part) => part.rows);
      return all.length - all.findIndex(({ before, after }) => after < before);
    });
    expect(rows).toEqual([52, 51]);
  });
});

describe('the woman’s knitted jacket (Bulkies, Book No. 006, PG 66271)', () => {
  it('is garter stitch to its last row: nothing in it is purled, on neither side of the neck', () => {
    const { pieces } = readPattern(bulkies.womansJacket.text, { size: 0 });
    const purled = pieces.flatMap(({ plan, recipe }) => {
      if (!plan.ok) throw new Error(told(plan.faults));
      return plan.value.parts.flatMap((part) =>
        part.rows
          .map((row) => `${recipe.name}, ${part.name}, row ${row.n}: ${printRow(row.steps)}`)
          .filter((row) => /purl|\bp\d|p2tog/.test(row)),
      );
    });
    expect(purled).toEqual([]);
  });
});

describe('the boy’s hooded jacket (Bulkies, Book No. 006, PG 66271)', () => {
  it('is as long from its hem line as the leaflet says: 15½ (16, 17, 17½) inches at 6 rows to the inch', () => {
    const printed = [15.5, 16, 17, 17.5];
    printed.forEach((inches, size) => {
      const back = readPattern(bulkies.hoodedJacket.text, { size }).pieces[0]?.plan;
      if (!back?.ok) throw new Error('no back');
      const hemRows = 6;
      const rows = (back.value.parts[0]?.rows.length ?? 0) - hemRows;
      expect(Math.abs(rows / 6 - inches), `size ${size}: ${rows} rows`).toBeLessThanOrEqual(0.25);
    });
  });
});
