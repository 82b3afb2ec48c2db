import { describe, expect, it } from 'vitest';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { Shaping } from '../../../src/knit/piece/recipe.ts';
import { expandRow } from '../../../src/knit/row/expand.ts';
import { printRow } from '../../../src/knit/row/print.ts';
import type { Step } from '../../../src/knit/row/step.ts';
import { section } from './count/mitten.ts';
import { part, partsOf } from './parts-by-hand.ts';

/** The stitches of a row in the order worked. */
const stitchesOf = (one: PlannedPart | undefined, row: number): string => {
  const { steps = [], before = 0 } = one?.rows[row - 1] ?? {};
  return expandRow(steps, before).join(' ');
};

describe('rows of a rib, in words', () => {
  const rib = (castOn: number, rows: number, ...shaping: readonly Shaping[]) =>
    partsOf(part('p', { castOn }, { sections: [section({ fabric: 'rib 1x1', rows, shaping })] }))[0];

  it('spread from the side that it is worked on: eight and eight stitches between two decreases', () => {
    // worked from the left edge, where the last column is a purl one: it is knitted there
    const spread = rib(20, 2, { kind: 'across', row: 2, by: -2 });
    expect(stitchesOf(spread, 2)).toBe('k p k p k2tog k p k p k p k p k2tog k p k p');
    expect(spread?.rows[1]).toMatchObject({
      before: 20,
      after: 18,
      shaping: [{ kind: 'across', edge: 'across', by: -2 }],
    });
  });

  it('go on as established in each of the parts that share it', () => {
    const two = (name: string, at: 'right' | 'middle' | 'left', stitches: number) =>
      part(
        name,
        { part: 'body', edge: at, stitches },
        { sections: [section({ fabric: 'rib 2x2', rows: 2 })] },
      );
    const body = part(
      'body',
      { castOn: 20 },
      {
        end: 'split',
        sections: [section({ fabric: 'rib 2x2', rows: 2 })],
      },
    );
    const all = partsOf(
      body,
      two('m', 'middle', 8),
      two('r1', 'right', 3),
      two('r2', 'right', 3),
      two('l', 'left', 6),
    );
    // columns k k p p from the right edge: 0 to 2, 3 to 5, 6 to 13, 14 to 19
    expect(all.slice(1).map((one) => [one.name, stitchesOf(one, 1)])).toEqual([
      ['m', 'p p k k p p k k'],
      ['r1', 'k k p'],
      ['r2', 'p k k'],
      ['l', 'p p k k p p'],
    ]);
    const width = all[0]?.cells[0]?.width ?? 0;
    expect(all.map(({ offset }) => Math.round(offset / width))).toEqual([0, 6, 0, 3, 14]);
    expect(new Set(all.slice(1).map(({ base }) => base))).toEqual(new Set([all[0]?.rows.at(-1)?.height]));
    expect(all.slice(1).map(({ parent, setUp }) => [parent, setUp])).toEqual(
      [8, 3, 3, 6].map((times) => ['body', [{ work: 'take', times }]]),
    );
  });
});

describe('a part that begins on the other side than its parent’s next row', () => {
  const body = part(
    'body',
    { castOn: 8 },
    { end: 'split', sections: [section({ fabric: 'rib 1x1', rows: 2 })] },
  );
  const from = { part: 'body', edge: 'right', stitches: 4 } as const;
  const rest = part('rest', { part: 'body', edge: 'left', stitches: 4 });
  const rowsFrom = (firstSide: 'RS' | 'WS' | undefined, of: Parameters<typeof section>[0]) =>
    partsOf(
      body,
      part('half', from, { sections: [section(of)], ...(firstSide ? { firstSide } : {}) }),
      rest,
    )[1]?.rows ?? [];

  it.each([
    // columns k p k p from the right edge: on the wrong side they are met from the left one, and seen from behind
    ['RS', ['k p k p', 'k p k p']],
    [undefined, ['k p k p', 'k p k p']],
    ['WS', ['k p k p', 'k p k p']],
  ] as const)('%s: the rib goes on', (side, wanted) => {
    const rows = rowsFrom(side, { fabric: 'rib 1x1', rows: 2 });
    expect(rows.map(({ steps, before }) => expandRow(steps, before).join(' '))).toEqual(wanted);
    expect(rows.map((row) => row.side)).toEqual(side === 'WS' ? ['WS', 'RS'] : ['RS', 'WS']);
  });

  it('goes on with the row of moss that comes next on that side', () => {
    const inMoss = (firstSide: 'RS' | 'WS') =>
      partsOf(
        part('body', { castOn: 5 }, { end: 'split', sections: [section({ fabric: 'moss', rows: 2 })] }),
        part(
          'all',
          { part: 'body', edge: 'right', stitches: 5 },
          { firstSide, sections: [section({ fabric: 'moss', rows: 1 })] },
        ),
      )[1];
    expect(stitchesOf(inMoss('RS'), 1)).toBe('k p k p k');
    expect(stitchesOf(inMoss('WS'), 1)).toBe('k p k p k');
  });

  it('works all of its stitches, and turns before its last one where its words say so', () => {
    const rest: Step = { work: 'p', until: { left: 0 } };
    expect(rowsFrom('WS', { rows: 1, words: [[rest]] })[0]?.steps).toEqual([rest]);
    const turned: Step[] = [
      { work: 'p', until: { left: 1 } },
      { work: 'unworked', times: 1 },
    ];
    expect(rowsFrom('WS', { rows: 1, words: [turned] })[0]?.shaping).toEqual([
      { kind: 'turn', edge: 'right', by: 0 },
    ]);
  });
});

describe('a section as it is planned', () => {
  it('keeps what a pattern said of it, and what was counted when it began', () => {
    const said = {
      own: { 2: 'as you like it' },
      length: { id: 'body', mm: 100, from: 'here', open: false },
    };
    const [made] = partsOf(
      part(
        'p',
        { castOn: 20 },
        { sections: [section({ name: 'a', rows: 2, ...said }), section({ name: 'b' })] },
      ),
    );
    expect(made?.sections).toEqual([
      { name: 'a', fabric: 'stocking', needle: 4, first: 1, last: 2, ...said },
      { name: 'b', fabric: 'stocking', needle: 4, first: 3, last: 6 },
    ]);
    const [fewer] = partsOf(
      part('p', { castOn: 20 }, { sections: [section({ rows: 2 }), section({ rows: 2, onNeedle: 17 })] }),
    );
    expect(fewer?.rows.map(({ before, after }) => [before, after])).toEqual([
      [20, 20],
      [20, 20],
      [17, 17],
      [17, 17],
    ]);
    expect(fewer?.sections[1]).toMatchObject({ onNeedle: 17, first: 3, last: 4 });
  });

  it('in words after a turn works back from the yarn, or says that it is joined', () => {
    const turn: Shaping = { kind: 'turn', edge: 'left', groups: [{ row: 1, stitches: 3 }] };
    const after = (words: readonly Step[]) => {
      const [made] = partsOf(
        part(
          'p',
          { castOn: 10 },
          { sections: [section({ rows: 1, shaping: [turn] }), section({ rows: 1, words: [words] })] },
        ),
      );
      return made?.rows[1]?.steps;
    };
    const rest: Step = { work: 'p', until: { left: 0 } };
    expect(after([rest])).toEqual([{ work: 'unworked', times: 3 }, rest]);
    const said: Step[] = [{ work: 'unworked', times: 3 }, rest];
    expect(after(said)).toEqual(said);
    expect(after([{ work: 'p', times: 10 }])).toEqual([
      { work: 'join yarn', times: 1 },
      { work: 'p', times: 10 },
    ]);
  });
});

describe('short rows', () => {
  const turn = (
    edge: 'right' | 'left',
    ...groups: readonly (readonly [row: number, stitches: number])[]
  ): Shaping => ({
    kind: 'turn',
    edge,
    groups: groups.map(([row, stitches]) => ({ row, stitches })),
  });
  const rowsSaid = (castOn: number, ...of: readonly (readonly [number, ...Shaping[]])[]) =>
    partsOf(
      part(
        'p',
        { castOn },
        { sections: of.map(([rows, ...shaping], i) => section({ name: `${i}`, rows, shaping })) },
      ),
    )[0]?.rows.map(({ steps }) => printRow(steps));

  it('list what a row does in the order in which it comes to it: the edge that it begins at before the turn at its end', () => {
    const at = (edge: 'right' | 'left', row: number): Shaping => ({
      kind: 'edge',
      edge,
      by: -1,
      rows: [row],
      inset: 1,
      lean: 'mirrored',
    });
    const listed = (...shaping: readonly Shaping[]) =>
      partsOf(part('p', { castOn: 20 }, { sections: [section({ rows: 2, shaping })] }))[0]?.rows.map((row) =>
        row.shaping.map(({ kind, edge }) => `${kind} ${edge}`),
      );
    expect(listed(turn('left', [1, 3]), at('right', 1))).toEqual([['edge right', 'turn left'], []]);
    expect(listed(turn('right', [2, 3]), at('left', 2))).toEqual([[], ['edge left', 'turn right']]);
  });

  it('leave what was left at both edges', () => {
    expect(rowsSaid(20, [6, turn('left', [1, 3], [5, 1]), turn('right', [2, 4])])).toEqual([
      'knit to last 3 sts, turn',
      'leave 3 sts unworked, purl to last 4 sts, turn',
      'leave 4 sts unworked, knit to last 3 sts, turn',
      'leave 3 sts unworked, purl to last 4 sts, turn',
      'leave 4 sts unworked, knit to last 4 sts, turn',
      'leave 4 sts unworked, purl to last 4 sts, turn',
    ]);
  });

  it('wrapped at a single stitch leave it on the way back, and pick its wrap up where they go over it', () => {
    const wrapped: Shaping = {
      kind: 'turn',
      edge: 'left',
      groups: [{ row: 1, stitches: 1 }],
      way: 'wrapped',
    };
    expect(rowsSaid(6, [2, wrapped], [2])).toEqual([
      'k5, wrap next st, turn',
      'leave 1 st unworked, purl to end',
      'k6, picking up each wrap',
      'purl',
    ]);
  });

  it('leave what was left already, in the rows between two turns too', () => {
    // 20 stitches: three left behind the first turn, so 17 back; the row between leaves the same three
    expect(rowsSaid(20, [6, turn('left', [1, 3], [5, 4])])).toEqual([
      'knit to last 3 sts, turn',
      'leave 3 sts unworked, purl to end',
      'knit to last 3 sts, turn',
      'leave 3 sts unworked, purl to end',
      'knit to last 7 sts, turn',
      'leave 7 sts unworked, purl to end',
    ]);
  });

  it('go on in the next section that turns, whatever else is shaped there', () => {
    const slanting: Shaping = {
      kind: 'edge',
      edge: 'right',
      by: -1,
      rows: [1],
      inset: 1,
      lean: 'mirrored',
    };
    const all = rowsSaid(20, [2, turn('left', [1, 3])], [2, slanting, turn('left', [1, 4])]);
    expect(all?.slice(2)).toEqual(['k1, ssk, knit to last 7 sts, turn', 'leave 7 sts unworked, purl to end']);
  });
});
