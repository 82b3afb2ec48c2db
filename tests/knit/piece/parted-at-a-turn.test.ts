import { expect, it } from 'vitest';
import { plan } from '../../../src/knit/piece/plan.ts';
import { printRow } from '../../../src/knit/row/print.ts';

/* A row is turned four stitches before its end, and the piece is parted there: the yarn hangs at the side that has that edge. */
it.each([
  ['left', 1, ['WS purl', 'RS knit'], ['WS leave 4 sts unworked, purl to end', 'RS knit']],
  ['right', 2, ['RS leave 4 sts unworked, knit to end', 'WS purl'], ['RS knit', 'WS purl']],
] as const)(
  'turned before the %s edge in row %i, that side alone begins at the turn',
  (edge, row, right, left) => {
    const made = plan({
      name: 'Any',
      makes: 1,
      parts: [
        {
          name: 'body',
          from: { castOn: 20 },
          sections: [
            {
              name: 'body',
              rows: row,
              fabric: 'stocking',
              needle: 4,
              shaping: [{ kind: 'turn', edge, groups: [{ row, stitches: 4 }] }],
            },
          ],
          end: 'split',
        },
        ...(['right', 'left'] as const).map((side) => ({
          name: side,
          from: { part: 'body', stitches: 10, edge: side },
          sections: [{ name: 'side', rows: 2, fabric: 'stocking' as const, needle: 4, shaping: [] }],
          end: 'hold' as const,
        })),
      ],
    });
    const said = made.ok
      ? made.value.parts.slice(1).map(({ rows }) => rows.map((one) => `${one.side} ${printRow(one.steps)}`))
      : made.faults;
    expect(said).toEqual([right, left]);
  },
);
