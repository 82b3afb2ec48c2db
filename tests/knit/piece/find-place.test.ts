import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { landmarksOf } from '../../../src/knit/piece/count/landmarks.ts';
import { findPlace } from '../../../src/knit/piece/find-place.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { placeTrials } from '../../trials/other-trials.ts';

const partOf = (piece: string, index = 0): PlannedPart => {
  const recipe = sampleGarment.pieces.find((one) => one.name === piece);
  const planned = recipe && plan(recipe);
  if (!planned?.ok) throw new Error(`${piece} cannot be planned`);
  return planned.value.parts[index] as PlannedPart;
};

const sleeve = partOf('Sleeve');

describe('find my place', () => {
  it('true observations never rule out the true row', () => {
    expect(placeTrials(150, 40_000).missed).toBe(0);
  }, 60_000);

  it('the count leaves the rows between two increases; the last increase tells which', () => {
    const four = findPlace(sleeve, [{ kind: 'stitches', stitches: 70 }]);
    expect([...four.rows].sort((a, b) => a - b)).toEqual([43, 44, 45, 46]);
    const one = findPlace(sleeve, [
      { kind: 'stitches', stitches: 70 },
      { kind: 'last shaping', edge: 'either', rows: 2 },
    ]);
    expect(one).toMatchObject({ rows: [45], narrowed: [4, 1], next: [] });
  });

  it('every observation leaves fewer rows or as many', () => {
    const { narrowed } = findPlace(sleeve, [
      { kind: 'side', facing: 'RS', yarn: 'right' },
      { kind: 'rows above', landmark: 18, rows: 30 },
      { kind: 'stitches', stitches: 72 },
    ]);
    expect(narrowed).toEqual([...narrowed].sort((a, b) => b - a));
  });

  it('yarn at the right end means that the facing side is worked next', () => {
    const facing = findPlace(sleeve, [
      { kind: 'stitches', stitches: 70 },
      { kind: 'side', facing: 'RS', yarn: 'right' },
    ]);
    const turned = findPlace(sleeve, [
      { kind: 'stitches', stitches: 70 },
      { kind: 'side', facing: 'RS', yarn: 'left' },
    ]);
    expect(facing.rows.map((rows) => sleeve.rows[rows]?.side)).toEqual(['RS', 'RS']);
    expect(turned.rows.map((rows) => sleeve.rows[rows]?.side)).toEqual(['WS', 'WS']);
  });

  it('says what tells two rows apart, and what each would show', () => {
    const found = findPlace(sleeve, [
      { kind: 'stitches', stitches: 70 },
      { kind: 'side', facing: 'RS', yarn: 'right' },
    ]);
    expect(found.rows).toHaveLength(2);
    const [first] = found.next;
    expect(first?.kind).toBe('last shaping');
    expect(new Set(first?.shows).size).toBe(2);
  });

  it('where nothing fits, names the observation without which something would', () => {
    const found = findPlace(sleeve, [
      { kind: 'rows above', landmark: 18, rows: 27 },
      { kind: 'side', facing: 'WS', yarn: 'right' },
      { kind: 'stitches', stitches: 71 },
    ]);
    expect(found.rows).toEqual([]);
    expect(found.doubtful).toEqual([2]);
  });

  it('ranks the rows that fit by how near they are to the place last known', () => {
    expect(findPlace(sleeve, [{ kind: 'stitches', stitches: 106 }], 129).rows[0]).toBe(129);
  });

  it('landmarks are what can be seen: the start, a new fabric, a spread row, steps', () => {
    expect(landmarksOf(sleeve).map(({ kind, row }) => [kind, row])).toEqual([
      ['start', 0],
      ['fabric', 18],
      ['spread', 19],
    ]);
    const back = landmarksOf(partOf('Back')).map(({ kind, row, edge }) => [kind, row, edge]);
    expect(back.slice(2, 4)).toEqual([
      ['group', 117, 'right'],
      ['group', 118, 'left'],
    ]);
  });
});
