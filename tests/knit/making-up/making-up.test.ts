import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { makingUp } from '../../../src/knit/making-up/making-up.ts';
import { alongRows, pickUpRatio, toMultiple } from '../../../src/knit/making-up/pick-up.ts';
import { easeOf, type MakingUpStep } from '../../../src/knit/making-up/step.ts';
import { told } from '../../told.ts';

const steps = (() => {
  const made = makingUp(sampleGarment);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
})();

const step = <K extends MakingUpStep['kind']>(kind: K): Extract<MakingUpStep, { kind: K }> => {
  const found = steps.find((s) => s.kind === kind);
  if (!found) throw new Error(`no step ${kind}`);
  return found as Extract<MakingUpStep, { kind: K }>;
};

describe('making up the sample garment', () => {
  it('goes from blocking to the ends, each step once', () => {
    expect(steps.map((s) => s.kind)).toEqual([
      'block',
      'block',
      'block',
      'shoulders',
      'pick up',
      'close',
      'set in sleeves',
      'side seams',
      'sleeve seams',
      'ends',
    ]);
    expect(new Set(steps.map((s) => s.id)).size).toBe(steps.length);
  });

  it('blocks each piece to the width and height of its own counts', () => {
    expect(step('block').widthMm).toBeCloseTo((118 * 100) / 21, 6);
    expect(step('block').heightMm).toBeCloseTo((18 * 100) / 30 + ((98 + 70 + 6) * 100) / 28, 6);
  });

  it('joins shoulders of the same number of stitches', () => {
    expect(step('shoulders').stitches).toEqual({ first: 30, second: 30, difference: 0, oneMoreEvery: 0 });
  });

  it('picks up the band as it is planned, along rows by the ratio of the gauge', () => {
    const pick = step('pick up');
    expect(pick.ratio).toEqual({ stitches: 3, rows: 4 });
    expect(pick.edges.map((e) => e.stitches)).toEqual([48, 1, 48, 36]);
    expect(pick.total).toBe(133);
  });

  it('without a band, says what the neck’s edges have to give', () => {
    const made = makingUp({ ...sampleGarment, pieces: sampleGarment.pieces.slice(0, 3) });
    const neck = made.ok ? made.value.find((s) => s.kind === 'neck edge') : undefined;
    if (neck?.kind !== 'neck edge') throw new Error('no neck edge');
    const [side, behind] = neck.edges;
    expect(side).toMatchObject({ along: 'side of neck', times: 2, ratio: { stitches: 3, rows: 4 } });
    // the front's second side has 64 rows, the last of which binds off: three stitches of every four of the 63
    expect([side?.rows, side?.stitches]).toEqual([63, 47]);
    expect(behind).toMatchObject({ along: 'back neck', stitches: 36 });
    // 47 + 47 + 36, which is a multiple of four and two more
    expect(neck.total).toBe(130);
  });

  it('sets the marker of the armhole 70 rows below the shoulder, with quarter points', () => {
    expect(step('set in sleeves')).toMatchObject({ markerRows: 70, quarters: [18, 35, 53] });
  });

  it('marks on the back where the sleeve goes: underarm and quarters of the armhole, to the millimetre', () => {
    // 18 rows of rib at 30 to 10 cm and 98 of body at 28 are 410 mm; the armhole's 70 rows are 250 mm
    const { on, markerMm, marksMm } = step('set in sleeves');
    expect([on, markerMm]).toEqual(['Back', 250]);
    expect(marksMm.map((mm) => Math.round(mm * 100) / 100)).toEqual([410, 472.5, 535, 597.5]);
  });

  it('sews side seams of the same number of rows', () => {
    expect(step('side seams').rows).toMatchObject({ first: 116, second: 116, difference: 0 });
  });
});

describe('making up a garment of which pieces are missing', () => {
  const [back, front, sleeve, band] = sampleGarment.pieces;
  const kinds = (...pieces: readonly (typeof back)[]): string[] => {
    const made = makingUp({ ...sampleGarment, pieces: pieces.filter((piece) => piece !== undefined) });
    return made.ok ? made.value.map(({ kind }) => kind) : [told(made.faults)];
  };

  it('leaves out the steps that join what is not there', () => {
    expect(kinds(back)).toEqual(['block', 'ends']);
    expect(kinds(front)).toEqual(['block', 'ends']);
    expect(kinds(sleeve)).toEqual(['block', 'sleeve seams', 'ends']);
    expect(kinds(back, sleeve)).toEqual(['block', 'block', 'sleeve seams', 'ends']);
    expect(kinds(back, front)).toEqual(['block', 'block', 'shoulders', 'neck edge', 'side seams', 'ends']);
  });

  it('a band is picked up along what there is, and not blocked', () => {
    expect(kinds(back, band)).toEqual(['block', 'pick up', 'ends']);
    expect(kinds(front, band)).toEqual(['block', 'pick up', 'ends']);
    expect(kinds(band)).toEqual(['pick up', 'ends']);
  });
});

describe('edges that differ', () => {
  it('are eased by one more of the longer after every so many', () => {
    expect(easeOf(100, 104)).toEqual({ first: 100, second: 104, difference: -4, oneMoreEvery: 25 });
    expect(easeOf(30, 30).oneMoreEvery).toBe(0);
  });

  it('are eased the other way round where the first is longer, and at every one where more than twice as long', () => {
    expect(easeOf(104, 100)).toEqual({ first: 104, second: 100, difference: 4, oneMoreEvery: 25 });
    expect(easeOf(10, 3)).toEqual({ first: 10, second: 3, difference: 7, oneMoreEvery: 1 });
    expect(easeOf(61, 50).oneMoreEvery).toBe(4);
  });
});

describe('picking up along an edge', () => {
  it('common practice, no published source: 3 of 4 or 2 of 3 rows in stocking stitch, one a ridge in garter', () => {
    expect(pickUpRatio('stocking', { stitches: 21, rows: 28 })).toEqual({ stitches: 3, rows: 4 });
    expect(pickUpRatio('stocking', { stitches: 20, rows: 30 })).toEqual({ stitches: 2, rows: 3 });
    expect(pickUpRatio('garter', { stitches: 20, rows: 40 })).toEqual({ stitches: 1, rows: 2 });
  });

  it('Handbook of Wool Knitting and Crochet, 1918 (PG 26113), Ladies’ sweater: ridges 5 + 29 + 4 + 29 + 5 give 72', () => {
    const ridges = [5, 29, 4, 29, 5];
    const ratio = pickUpRatio('garter', { stitches: 20, rows: 40 });
    expect(ridges.reduce((sum, r) => sum + alongRows(2 * r, ratio), 0)).toBe(72);
  });

  it('keeps to numbers up to five, that can be counted along an edge, and never takes more than one a row', () => {
    // 25 of 30 would be 5 of 6, exactly; 24 of 30 are 4 of 5
    expect(pickUpRatio('stocking', { stitches: 25, rows: 30 })).toEqual({ stitches: 4, rows: 5 });
    expect(pickUpRatio('stocking', { stitches: 24, rows: 30 })).toEqual({ stitches: 4, rows: 5 });
    expect(pickUpRatio('stocking', { stitches: 10, rows: 50 })).toEqual({ stitches: 1, rows: 5 });
    expect(pickUpRatio('stocking', { stitches: 30, rows: 28 })).toEqual({ stitches: 1, rows: 1 });
    expect(alongRows(10, { stitches: 3, rows: 4 })).toBe(8);
  });

  it('of two counts equally near takes the smaller, and never none at all', () => {
    expect(toMultiple(129, 'rib 2x2')).toBe(128);
    expect(toMultiple(128, 'rib 2x2')).toBe(128);
    expect(toMultiple(1, 'rib 2x2')).toBe(2);
  });

  it('goes to the nearest count that the rib can be worked over', () => {
    expect(toMultiple(131, 'rib 2x2')).toBe(130);
    expect(toMultiple(132, 'rib 1x1 matched')).toBe(131);
    expect(toMultiple(90, 'garter')).toBe(90);
  });
});
