import { expect, it } from 'vitest';
import { END, type Item, takenBy } from '../../../../src/knit/row/read/notation.ts';

/* Stitches that leave the left needle, counted by hand. */
const k: Item = { is: 'stitches', work: 'k', times: 3 };
const together: Item = { is: 'stitches', work: 'k2tog', times: 2 };
const over: Item = { is: 'stitches', work: 'yo', times: 5 };
const open: Item = { is: 'stitches to', work: 'k', goal: END };

it.each<[string, readonly Item[], number | undefined]>([
  ['nothing', [], 0],
  ['stitches, one by one and two together; what is made takes none', [k, together, over], 3 + 4],
  ['a group as often as it is worked', [{ is: 'group', items: [k, together], times: 4 }], 28],
  ['a group in a group', [{ is: 'group', items: [{ is: 'group', items: [k], times: 2 }, k], times: 2 }], 18],
  ['a group over so many stitches takes those', [{ is: 'group over', items: [k], stitches: 11 }], 11],
  ['a marker', [k, { is: 'marker', does: 'place' }], 3],
  ['a turn', [k, { is: 'turn' }], 3],
  ['a parting', [{ is: 'parting', of: 2 }, k], 3],
  ['what goes on to an end hangs on the count', [k, open], undefined],
  ['so does a group that does', [k, { is: 'group', items: [open], times: 2 }], undefined],
  ['and one that is worked to an end', [{ is: 'group to', items: [k], goal: END }, k], undefined],
  ['and what is spread over the row', [{ is: 'evenly', change: 2, over: 20 }], undefined],
])('%s', (_, items, taken) => {
  expect(takenBy(items)).toBe(taken);
});
