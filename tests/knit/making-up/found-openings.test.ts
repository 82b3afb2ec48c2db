import { describe, expect, it } from 'vitest';
import type { EdgeName, SewnBand } from '../../../src/knit/making-up/band-joints.ts';
import { openingsOf } from '../../../src/knit/making-up/found-openings.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import type { Step } from '../../../src/knit/row/step.ts';

/** What a neck opens by is seen from the edges that its bands are picked up along: common practice, no published source. */

const band = (piece: string, ...edges: readonly EdgeName[]): SewnBand => ({
  piece,
  part: 'band',
  role: 'front band',
  makes: 1,
  along: edges.map((edge) => ({ edge, stitches: 20 })),
});

const worded = (name: string, ...rows: readonly (readonly Step[])[]): Recipe => ({
  name,
  makes: 1,
  parts: [
    {
      name: 'band',
      from: { pickUp: [{ along: 'edge', stitches: 20 }] },
      sections: [
        { name: 'before', rows: 2, fabric: 'garter', needle: 4, shaping: [] },
        { name: 'holes', rows: rows.length, fabric: 'garter', needle: 4, shaping: [], words: rows },
      ],
      end: 'bind off',
    },
  ],
});

const [knit, over]: Step[] = [
  { work: 'k', times: 4 },
  { work: 'k', until: { left: 0 } },
];
const rest = over as Step;
const before = knit as Step;

describe('shoulders that are banded', () => {
  const laps = (...bands: readonly SewnBand[]) => openingsOf(bands, [], false).laps;

  it('are buttoned: both, or the left one', () => {
    expect(laps(band('A', 'left front shoulder'), band('B', 'right front shoulder'))).toBe('both');
    expect(laps(band('A', 'left front shoulder', 'right front shoulder'))).toBe('both');
    expect(laps(band('A', 'left front shoulder'))).toBe('left');
  });

  it('are none where only the right one, or a back one, has a band', () => {
    expect(laps(band('A', 'right front shoulder'))).toBeUndefined();
    expect(laps(band('A', 'left back shoulder', 'right back shoulder'))).toBeUndefined();
    expect(laps()).toBeUndefined();
  });
});

describe('a front that is parted above its hem', () => {
  const edges = [band('Left', 'left front edge'), band('Right', 'right front edge')];
  const placket = (...recipes: readonly Recipe[]) => openingsOf(edges, recipes, false).placket;

  it('has the band with the holes on top', () => {
    const plain = worded('Left', [rest], [before, rest]);
    expect(placket(plain, worded('Right', [before, { work: 'bo', times: 2 }, rest]))).toBe('right');
    expect(placket(worded('Left', [before, { work: 'bo', times: 2 }, rest]))).toBe('left');
    expect(
      placket(worded('Left', [before, { work: 'yo', times: 1 }, { work: 'k2tog', times: 1 }, rest])),
    ).toBe('left');
    expect(placket()).toBe('right');
  });

  it('has holes where they are repeated, so often or to the end; in any of its rows', () => {
    const hole: Step[] = [before, { work: 'yo', times: 1 }, { work: 'k2tog', times: 1 }];
    expect(placket(worded('Left', [rest], [{ repeat: hole, times: 3 }, rest]))).toBe('left');
    expect(placket(worded('Left', [{ repeat: hole, until: { left: 2 } }, rest]))).toBe('left');
    // they fill their row evenly
    expect(placket(worded('Left', [{ repeat: hole, times: 5 }]))).toBe('left');
    expect(placket(worded('Left', [{ repeat: [before, { work: 'p', times: 1 }], times: 3 }, rest]))).toBe(
      'right',
    );
    expect(placket(worded('Left', [before, { work: 'bo', until: { left: 4 } }, rest]))).toBe('left');
  });

  it('has none in a row that binds off all of it, by its count or to the end', () => {
    expect(placket(worded('Left', [{ work: 'bo', times: 20 }]))).toBe('right');
    expect(placket(worded('Left', [{ work: 'bo', until: { left: 0 } }]))).toBe('right');
    // one more order in that row, and it opens something
    expect(placket(worded('Left', [{ work: 'bo', times: 2 }, rest]))).toBe('left');
    // what is bound off within a repeat to the end lies between other stitches
    expect(
      placket(worded('Left', [{ repeat: [before, { work: 'bo', times: 2 }], until: { left: 0 } }])),
    ).toBe('left');
  });

  it('is of the band along the left edge, whatever other bands have holes', () => {
    const holes = [before, { work: 'bo' as const, times: 2 }, rest];
    const three = [band('Neckband', 'back neck'), ...edges];
    const onTop = (...recipes: readonly Recipe[]) => openingsOf(three, recipes, false).placket;
    expect(onTop(worded('Neckband', holes), worded('Left', [rest]))).toBe('right');
    expect(onTop(worded('Neckband', [rest]), worded('Left', holes))).toBe('left');
  });

  it('is none with one band, and none where the front is open from its hem', () => {
    expect(openingsOf(edges.slice(0, 1), [], false)).not.toHaveProperty('placket');
    expect(openingsOf(edges.slice(1), [], false)).not.toHaveProperty('placket');
    expect(openingsOf(edges, [], true)).not.toHaveProperty('placket');
  });
});

describe('a back that opens', () => {
  const opens = (...edges: readonly EdgeName[]) =>
    openingsOf([band('Collar', ...edges)], [], false).partsBack;

  it('has its neck picked up in two halves, with no middle between them', () => {
    expect(opens('left back neck', 'right back neck')).toBe(true);
    expect(opens('left back neck', 'middle of the back neck', 'right back neck')).toBe(false);
    expect(opens('left back neck')).toBe(false);
    expect(opens('back neck')).toBe(false);
  });
});

describe('a back whose neck is picked up in halves', () => {
  const partsBack = (...along: readonly EdgeName[]) =>
    openingsOf([band('Neckband', ...along)], [], false).partsBack;

  it('is parted, unless what lies between them is picked up too', () => {
    expect(partsBack('left back neck', 'front neck', 'right back neck')).toBe(true);
    expect(partsBack('left back neck', 'middle of the back neck', 'right back neck')).toBe(false);
    expect(partsBack('left back neck')).toBe(false);
    expect(partsBack('right back neck')).toBe(false);
    expect(partsBack('back neck')).toBe(false);
  });

  it('may have a band for each half', () => {
    const two = [band('A', 'left back neck'), band('B', 'right back neck')];
    expect(openingsOf(two, [], false)).toEqual({ partsBack: true });
    expect(openingsOf([], [], false)).toEqual({ partsBack: false });
  });
});
