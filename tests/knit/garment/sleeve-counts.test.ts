import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { panelCounts } from '../../../src/knit/garment/panel-counts.ts';
import { knitSides } from '../../../src/knit/garment/sides.ts';
import { sleeveCounts } from '../../../src/knit/garment/sleeve-counts.ts';
import { targetsOf } from '../../../src/knit/garment/targets.ts';
import { even } from './spelled.ts';

/*
 * From the even design of `spelled.ts`: a wrist of 160 mm, an upper arm of 280 and an armhole of 180, each with its ease; 5 mm
 * a stitch and 8 mm a pair of rows unless said.
 */
const { ease, sleeve, cuff, gauges } = even;
const countsOf = (more: Partial<Design>) => {
  const design = { ...even, ...more };
  const targets = targetsOf(design);
  const panels = panelCounts(design, targets);
  return sleeveCounts(design, targets, panels, knitSides(design, panels));
};
/** Stitches of the cuff, above it, at the underarm. */
const said = (more: Partial<Design>): string => {
  const { cuff, low, wide } = countsOf(more);
  return `${cuff}, ${low}, ${wide}`;
};
const eased = (wrist: number, armholeDepth = 20) => ({ ease: { ...ease, wrist, armholeDepth } });
const garter = { cuff: { ...cuff, fabric: 'garter' } } as const;
const drop = { armhole: 'drop', shoulderDropMm: 0 } as const;

describe('the stitches of a sleeve', () => {
  it.each<[string, Partial<Design>, string]>([
    ['200 and 300 mm', {}, '38, 40, 60'],
    ['a cuff of any count is as wide as what is above it', garter, '40, 40, 60'],
    ['a stitch at each edge for its seam', { ...garter, seamStitch: true }, '42, 42, 62'],
    ['twice an armhole of 25 pairs of rows', { ...drop, ...garter }, '40, 40, 80'],
    [
      'of a straight top no stitch for the seam in the first edition',
      { ...drop, ...garter, seamStitch: true },
      '42, 42, 80',
    ],
    [
      'and one at each edge from the second on',
      { ...drop, ...garter, seamStitch: true, edition: 2 },
      '42, 42, 82',
    ],
    [
      'straight: as wide as it is at the underarm',
      { ...drop, ...garter, sleeve: { ...sleeve, shape: 'straight' } },
      '80, 80, 80',
    ],
    [
      'widened at once: 203 mm are nearer to 41 stitches, and two for its seam',
      { ...garter, ...eased(43), seamStitch: true, sleeve: { ...sleeve, shape: 'after cuff' } },
      '43, 62, 62',
    ],
    [
      'the same in 2×2 rib: 42 of 4 n + 2',
      { ...eased(43), sleeve: { ...sleeve, shape: 'after cuff' } },
      '42, 60, 60',
    ],
    [
      'without a cuff',
      { cuff: { ...cuff, heightMm: 0 }, sleeve: { ...sleeve, shape: 'after cuff' } },
      '60, 60, 60',
    ],
  ])('%s', (_, more, counts) => {
    expect(said(more)).toBe(counts);
  });

  it('widen at most by one after each: a cuff that is too narrow for that takes one repeat more', () => {
    // 100 mm are 20 stitches: 22 or 18 of rib; of 60 above it 31 are needed at the least, 34 are more than a quarter wider
    const narrow = (wrist: number) => said({ ...eased(wrist), sleeve: { ...sleeve, shape: 'after cuff' } });
    expect(narrow(-60)).toBe('22, 60, 60');
    // 140 mm: 28, of which 34 are less than a quarter more
    expect(narrow(-20)).toBe('34, 60, 60');
    expect(narrow(-10)).toBe('34, 60, 60');
    expect(narrow(-23)).toBe('30, 60, 60');
  });
});

/* A rib of 4 n + 2 is even: over an odd sleeve a stitch would be lost above it and won again; common practice, no published source. */
describe('a sleeve that would lose a stitch above its cuff', () => {
  const straight = { ...sleeve, shape: 'straight' } as const;

  it('is even as a whole: 26 pairs of rows are 83 stitches, 205 mm 41, its cuff 42', () => {
    expect(said({ ...drop, ...eased(45, 28) })).toBe('42, 42, 84');
    // 195 mm are 39: the cuff is 38, and a stitch is made above it
    expect(said({ ...drop, ...eased(35, 28) })).toBe('38, 39, 83');
  });

  it('or has a cuff a repeat narrower, where its cap would not be as good: 17 of 23 at 8 stitches to 100 mm', () => {
    // 210 mm are 16.8 stitches, 280 are 22.4; 14 of rib are more than three quarters of 18, and less than 85 in the hundred
    const thick = { stocking: { stitches: 8, rows: 10 }, 'rib 2x2': { stitches: 10, rows: 10 } };
    const wide = (upperArm: number, wrist: number, edition?: 2) =>
      said({ gauges: thick, ease: { ...ease, upperArm, wrist }, ...(edition && { edition }) });
    expect(wide(0, 50, 2)).toBe('14, 17, 23');
    expect(wide(0, 50)).toBe('18, 17, 23');
  });

  it('but not where nothing is won again: 24 pairs at 17 stitches to 100 mm are 65, straight to a cuff of 66', () => {
    const thick = { gauges: { ...gauges, stocking: { stitches: 17, rows: 25 } } };
    expect(said({ ...drop, ...thick, ...eased(40, 12), sleeve: straight })).toBe('66, 65, 65');
  });
});

describe('the length of a sleeve', () => {
  const asked = (more: Partial<Design>) => countsOf(more).askedLengthMm;
  const atWrist = { ...sleeve, endsAtWrist: true } as const;

  it('is the arm, or what was asked', () => {
    expect(asked({})).toBe(420);
    expect(asked({ sleeve: { ...atWrist, lengthMm: 500 } })).toBe(500);
    // 700 less half of 400 mm
    expect(asked(drop)).toBe(500);
    expect(asked({ ...drop, sleeve: atWrist })).toBe(500);
  });

  it('ends at the wrist where half the back and the cap would carry it further, but is two thirds of the arm at least', () => {
    const { pairs } = countsOf({ sleeve: atWrist });
    // 68 stitches less one at either seam are 330 mm across
    const capMm = 8 * pairs.cap;
    const reaching = (napeToWrist: number) => asked({ sleeve: atWrist, body: { ...even.body, napeToWrist } });
    expect(reaching(165 + capMm + 400)).toBeCloseTo(400, 6);
    expect(reaching(165 + capMm + 421)).toBe(420);
    expect(reaching(165 + capMm + 281)).toBeCloseTo(281, 6);
    expect(reaching(165 + capMm + 279)).toBe(280);
  });

  it('has its cuff taken off it: 420 mm less 10 rows of 4 mm are 95 rows, 48 pairs', () => {
    expect(countsOf({}).pairs).toMatchObject({ cuff: 5, sleeve: 48 });
    // a cuff of 25 rows to 100 mm that is 50 mm high has 12 rows or 14: 48 mm are taken off
    expect(countsOf({ cuff: { ...cuff, heightMm: 50 } }).pairs).toMatchObject({ cuff: 6, sleeve: 47 });
    expect(countsOf({ cuff: { ...cuff, heightMm: 1 } }).pairs).toMatchObject({ cuff: 1, sleeve: 52 });
  });
});

describe('the top of a sleeve', () => {
  it('is a quarter of its width, what was asked, or four stitches at least', () => {
    // 75 mm are 15 stitches; beside 60 and 40 they are 16
    expect(countsOf({}).top).toBe(16);
    expect(countsOf({ sleeve: { ...sleeve, capTopMm: 100 } })).toMatchObject({ top: 20, endsSquare: true });
    expect(countsOf({ sleeve: { ...sleeve, capTopMm: 10 } }).top).toBe(4);
    expect(countsOf({}).endsSquare).toBe(false);
    // 30 mm of a raglan are six, and from the second edition on two more for either seam where it has them
    expect(countsOf({ armhole: 'raglan' }).top).toBe(6);
    expect(countsOf({ armhole: 'raglan', seamStitch: true }).top).toBe(6);
    expect(countsOf({ armhole: 'raglan', seamStitch: true, edition: 2 }).top).toBe(8);
    expect(countsOf(drop)).toMatchObject({ top: 80, step: 0 });
  });

  it('rises by as many rows as the body’s raglan, and is let in by as many as an indent is wide', () => {
    expect(countsOf({ armhole: 'raglan' }).pairs.cap).toBe(28);
    // 8.5 in the hundred of 400 mm are 34, seven stitches; 35 mm are four pairs of rows
    const indented = countsOf({ armhole: 'indented' });
    expect(indented.pairs.cap).toBe(4);
    expect(indented.step).toBe(0);
    expect(countsOf(drop).pairs.cap).toBe(0);
  });
});
