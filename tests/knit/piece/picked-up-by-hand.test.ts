import { describe, expect, it } from 'vitest';
import { part, partsOf } from './parts-by-hand.ts';

/* How a band begins; common practice, no published source. */
describe('a part that is picked up', () => {
  const band = (over = {}) =>
    partsOf(
      part(
        'band',
        {
          pickUp: [
            { along: 'right front neck', stitches: 12 },
            { along: 'back neck', stitches: 9, held: true },
            { along: 'left front neck', stitches: 13, held: false },
          ],
        },
        { sections: [{ name: 'band', rows: 2, fabric: 'stocking', needle: 4, shaping: [] }], ...over },
      ),
    )[0];

  it('takes from their holder those that rest, picks up the others, and has all of them on the needle', () => {
    expect(band()?.setUp).toEqual([
      { work: 'pu', times: 12 },
      { work: 'take', times: 9 },
      { work: 'pu', times: 13 },
    ]);
    expect([band()?.start, band()?.rows[0]?.before]).toEqual([34, 34]);
  });

  it('begins on the wrong side unless said, and one that is cast on with the right one', () => {
    expect([band()?.rows[0]?.side, band({ firstSide: 'RS' })?.rows[0]?.side]).toEqual(['WS', 'RS']);
    const sections = [{ name: 'a', rows: 2, fabric: 'stocking', needle: 4, shaping: [] }] as const;
    const [cast] = partsOf(part('body', { castOn: 21 }, { sections }));
    expect([cast?.setUp, cast?.rows[0]?.side]).toEqual([[{ work: 'co', times: 21 }], 'RS']);
  });
});
