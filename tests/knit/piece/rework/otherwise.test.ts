import { describe, expect, it } from 'vitest';
import type { Section, Shaping } from '../../../../src/knit/piece/recipe.ts';
import { type Otherwise, workedOtherwise } from '../../../../src/knit/piece/rework/otherwise.ts';
import { section } from '../count/mitten.ts';
import { atEdge, boundOff } from '../shapings.ts';

/* Eleven rows of stocking stitch on 4 mm, decreased in rows 3, 5 and 7, three stitches bound off in row 2. */
const plain = section({
  name: 'armhole',
  rows: 11,
  shaping: [boundOff('left', [2, 3]), atEdge('right', -1, 3, 5, 7)],
});
const made = (wish: Otherwise, over: Partial<Section> = {}) => workedOtherwise({ ...plain, ...over }, wish);
const shapingOf = (wish: Otherwise, over: Partial<Section> = {}): readonly Shaping[] | undefined => {
  const one = made(wish, over);
  return one.ok ? one.value.shaping : undefined;
};

describe('rows to come in another rhythm', () => {
  it('are shaped as often, from where they were first; what is bound off stays', () => {
    expect(shapingOf({ every: 4 })).toEqual([boundOff('left', [2, 3]), atEdge('right', -1, 3, 7, 11)]);
    expect(shapingOf({ every: 1 })).toEqual([boundOff('left', [2, 3]), atEdge('right', -1, 3, 4, 5)]);
  });

  it.each<[string, every: number, rows: number, most: number]>([
    // 3 and 7; 11 would be the third
    ['a row too few', 4, 10, 2],
    ['many rows too few: the first alone', 9, 11, 1],
    ['no rhythm at all', 0, 11, 0],
  ])('have no room in %s', (_, every, rows, mostTimes) => {
    const one = made({ every }, { rows });
    expect(one.ok ? [] : one.faults.map(({ code, figures }) => [code, figures])).toEqual([
      ['shaping to come does not fit', { times: 3, rows, mostTimes }],
    ]);
  });

  it('are counted in whole rows', () => {
    expect(made({ every: 2.5 }).ok).toBe(false);
  });
});

describe('what was measured and what the pattern’s words are', () => {
  const own: Partial<Section> = {
    shaping: [],
    measured: { rowMm: 3 },
    words: [[{ work: 'k', until: { left: 0 } }]],
  };

  it.each<[string, Otherwise, keeps: readonly string[]]>([
    ['nothing is to be otherwise', {}, ['measured', 'words']],
    ['fabric and needle are said that they are in', { fabric: 'stocking', needle: 4 }, ['measured', 'words']],
    ['the fabric is another', { fabric: 'moss' }, []],
    ['the needle is another', { needle: 3.5 }, []],
    ['the shaping has another rhythm', { every: 2 }, ['measured']],
  ])('where %s', (_, wish, keeps) => {
    const one = made(wish, own);
    const { fabric = 'stocking', needle = 4 } = wish;
    expect(one.ok && one.value).toMatchObject({ name: 'armhole', rows: 11, fabric, needle });
    expect(['measured', 'words'].filter((field) => one.ok && field in one.value)).toEqual(keeps);
  });
});
