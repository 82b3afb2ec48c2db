import { expect, it } from 'vitest';
import { slipFirst } from '../../../src/knit/piece/slip-first.ts';
import type { Run } from '../../../src/knit/row/shorten.ts';

/* A slipped selvedge: common practice, no published source. */
it.each<[string, readonly Run[], readonly Run[]]>([
  [
    'of several knit stitches the first',
    [{ work: 'k', times: 5 }],
    [
      { work: 'sl', times: 1 },
      { work: 'k', times: 4 },
    ],
  ],
  [
    'of purl stitches',
    [
      { work: 'p', times: 2 },
      { work: 'k', times: 3 },
    ],
    [
      { work: 'sl', times: 1 },
      { work: 'p', times: 1 },
      { work: 'k', times: 3 },
    ],
  ],
  [
    'one alone',
    [
      { work: 'k', times: 1 },
      { work: 'p', times: 2 },
    ],
    [
      { work: 'sl', times: 1 },
      { work: 'p', times: 2 },
    ],
  ],
  [
    'none that shapes',
    [
      { work: 'k2tog', times: 1 },
      { work: 'k', times: 2 },
    ],
    [
      { work: 'k2tog', times: 1 },
      { work: 'k', times: 2 },
    ],
  ],
  ['none of an empty row', [], []],
])('the stitch that is slipped first: %s', (_, runs, slipped) => {
  const row = runs.map((run) => ({ ...run }));
  slipFirst(row);
  expect(row).toEqual(slipped);
});
