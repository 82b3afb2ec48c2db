import { expect, it } from 'vitest';
import { acrossRow } from '../../../src/knit/piece/across-row.ts';
import { freshColumns } from '../../../src/knit/piece/needle.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import { allWorked } from '../../../src/knit/piece/row-setting.ts';
import type { Step } from '../../../src/knit/row/step.ts';

/* Rows reckoned by hand. */
it.each<['RS' | 'WS', number, number, string]>([
  // k1 p1 k1 p1: each increase is worked as the stitch behind it, the last one too
  ['RS', 4, 3, 'k1 m1p1 p1 m1l1 k1 m1p1 p1'],
  // the same rib on the wrong side begins with what shows as a purl there
  ['WS', 4, 3, 'k1 m1p1 p1 m1l1 k1 m1p1 p1'],
  ['RS', 5, 1, 'k1 p1 k1 m1p1 p1 k1'],
  ['RS', 6, -1, 'k1 p1 k2tog1 k1 p1'],
])('a 1×1 rib on the %s over %i stitches, %i spread over it: %s', (side, count, by, said) => {
  const setting = {
    fabric: 'rib 1x1',
    phase: side === 'RS' ? 0 : 1,
    side,
    slipped: false,
    centres: new Map(),
    unworked: allWorked,
  } as const;
  const made = acrossRow(freshColumns(count), { across: by }, setting);
  expect(made.ok && made.value.runs.map(({ work, times }) => `${work}${times}`).join(' ')).toBe(said);
  expect(made.ok && made.value.columns.length).toBe(count + by);
  expect(made.ok && made.value.marks).toEqual([{ kind: 'across', edge: 'across', by }]);
});

it('a row in words that changes no count shapes nothing, whatever it is made of', () => {
  const lace: readonly Step[] = [
    { work: 'k2tog', times: 1 },
    { work: 'yo', times: 1 },
    { work: 'k', until: { left: 0 } },
  ];
  const narrow: readonly Step[] = [
    { work: 'k2tog', times: 1 },
    { work: 'k', until: { left: 0 } },
  ];
  const made = plan({
    name: 'Any',
    makes: 1,
    parts: [
      {
        name: 'any',
        from: { castOn: 10 },
        sections: [
          { name: 'lace', rows: 2, fabric: 'stocking', needle: 4, shaping: [], words: [lace, narrow] },
        ],
        end: 'hold',
      },
    ],
  });
  const rows = made.ok ? (made.value.parts[0]?.rows ?? []) : [];
  expect(rows.map(({ before, after, shaping }) => [before, after, shaping.length])).toEqual([
    [10, 10, 0],
    [10, 9, 1],
  ]);
});
