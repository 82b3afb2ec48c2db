import { describe, expect, it } from 'vitest';
import type { NeckOpening } from '../../../src/knit/garment/kinds/neck-openings.ts';
import { openingPairs } from '../../../src/knit/garment/neck-opening.ts';
import type { PanelCounts } from '../../../src/knit/garment/panel-counts.ts';
import { even } from './spelled.ts';

/* Two rows are 8 mm; the armhole has 20 pairs of them. */
describe('how far a neck opens, in pairs of rows', () => {
  const counts = {
    gauge: { stitches: 20, rows: 25 },
    pairs: { armhole: 20, neck: 10, backNeck: 3 },
  } as PanelCounts;
  const pairs = (
    armhole: 'raglan' | 'set-in',
    opening: NeckOpening,
    openingMm: number | undefined,
    of?: 'back' | 'front',
    more: Partial<PanelCounts['pairs']> = {},
  ) =>
    openingPairs(
      {
        ...even,
        armhole,
        neck: {
          shape: 'round',
          widthMm: 160,
          depthMm: 80,
          backDepthMm: 24,
          opening,
          ...(openingMm !== undefined && { openingMm }),
        },
      },
      { ...counts, pairs: { ...counts.pairs, ...more } },
      of,
    );
  it.each([
    ['a raglan’s line as it is asked', pairs('raglan', 'raglan seam', 80), 10],
    ['four pairs of it stay sewn', pairs('raglan', 'raglan seam', 400), 16],
    ['there is none where it has no more', pairs('raglan', 'raglan seam', 80, undefined, { armhole: 3 }), 0],
    ['no panel is parted by it', pairs('raglan', 'raglan seam', 80, 'back'), 0],
    ['the back', pairs('set-in', 'back', 80), 10],
    ['not the front', pairs('set-in', 'back', 80, 'front'), 0],
    ['no back without a neck', pairs('set-in', 'back', 80, 'back', { backNeck: 0 }), 0],
    ['50 mm unless said', pairs('set-in', 'back', undefined), 6],
    ['a placket', pairs('set-in', 'placket', 80), 10],
    ['it has two rows at least', pairs('set-in', 'placket', 1), 1],
    ['not in the back', pairs('set-in', 'placket', 80, 'back'), 0],
    ['nor without a neck', pairs('set-in', 'placket', 80, 'front', { neck: 0 }), 0],
    ['shoulders part nothing', pairs('set-in', 'envelope', 80), 0],
    ['a set-in sleeve has no such line', pairs('set-in', 'raglan seam', 80), 0],
  ])('%s', (_, found, wanted) => {
    expect(found).toBe(wanted);
  });
});
