import { describe, expect, it } from 'vitest';
import type { FabricName } from '../../../src/knit/fabric.ts';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import type { PartRecipe, Recipe } from '../../../src/knit/piece/recipe.ts';
import { writePattern } from '../../../src/knit/written/write-pattern.ts';
import { told } from '../../told.ts';

/** Patterns written out by hand in the wording of leaflets, line by line, and what is written for the same garment. */

type Section = PartRecipe['sections'][number];

const section = (over: Partial<Section> = {}): Section => ({
  name: 'plain',
  rows: 4,
  fabric: 'garter',
  needle: 4,
  shaping: [],
  ...over,
});

const part = (over: Partial<PartRecipe> = {}): PartRecipe => ({
  name: 'scarf',
  from: { castOn: 10 },
  end: 'bind off',
  sections: [section()],
  ...over,
});

const piece = (over: Partial<Recipe> = {}): Recipe => ({
  name: 'Scarf',
  makes: 1,
  parts: [part()],
  ...over,
});

const linesOf = (garment: Partial<Garment>, terms?: 'US' | 'UK'): string[] => {
  const written = writePattern({ name: 'Wren', pieces: [piece()], ...garment }, terms && { terms });
  if (!written.ok) throw new Error(told(written.faults));
  return written.value.split('\n');
};

describe('the head of a written pattern', () => {
  it('is its name alone where nothing else is known', () => {
    expect(linesOf({}).slice(0, 3)).toEqual(['Wren', '', 'SCARF']);
  });

  it('says who made it, under what licence, of what yarn and at what tension', () => {
    const lines = linesOf({
      credits: 'A. Knitter',
      licence: 'CC BY 4.0',
      yarns: [{ name: 'Hollin', fibre: 'wool', grams: 50, metres: 120, balls: 3 }],
      pieces: [
        piece({ name: 'Cord' }),
        piece({ gauge: { stitches: 21.04, rows: 28.36, fabric: 'moss', needle: 3.5 } }),
      ],
    });
    expect(lines.slice(0, 7)).toEqual([
      'Wren',
      'Design: A. Knitter',
      'Licence: CC BY 4.0',
      'Yarn: Hollin, wool, 50 g = 120 m, 3 balls',
      'Gauge: 21 sts and 28.4 rows = 10 cm in seed stitch on 3.5 mm needles.',
      '',
      'CORD',
    ]);
  });

  it('leaves out of yarn and tension what is not known', () => {
    const yarn = (yarns: Garment['yarns']) => linesOf(yarns === undefined ? {} : { yarns })[1];
    expect(yarn([{ name: 'Hollin' }])).toBe('Yarn: Hollin');
    expect(yarn([{ name: 'Hollin', grams: 50 }])).toBe('Yarn: Hollin');
    expect(yarn([{ name: 'Hollin', metres: 120, balls: 2 }])).toBe('Yarn: Hollin, 2 balls');
    expect(yarn([])).toBe('');
    expect(linesOf({ pieces: [piece({ gauge: { stitches: 20, rows: 40 } })] })[1]).toBe(
      'Gauge: 20 sts and 40 rows = 10 cm.',
    );
  });

  // names of fabrics on either side of the Atlantic: American Thread's and Patons & Baldwins' leaflets
  it.each<[FabricName, string, string]>([
    ['garter', 'garter stitch', 'garter stitch'],
    ['stocking', 'stockinette stitch', 'stocking stitch'],
    ['reverse stocking', 'reverse stockinette stitch', 'reverse stocking stitch'],
    ['rib 1x1', 'k1, p1 rib', 'k1, p1 rib'],
    ['rib 1x1 matched', 'k1, p1 rib', 'k1, p1 rib'],
    ['rib 2x2', 'k2, p2 rib', 'k2, p2 rib'],
    ['moss', 'seed stitch', 'moss stitch'],
  ])('names %s as %s and %s', (fabric, american, british) => {
    const pieces = [piece({ gauge: { stitches: 20, rows: 40, fabric } })];
    expect(linesOf({ pieces })[1]).toBe(`Gauge: 20 sts and 40 rows = 10 cm in ${american}.`);
    expect(linesOf({ pieces }, 'UK')[1]).toBe(`Tension: 20 sts and 40 rows = 10 cm in ${british}.`);
  });
});

describe('a piece', () => {
  it('in garter stitch is one row and how often it comes again', () => {
    expect(linesOf({}).slice(2)).toEqual([
      'SCARF',
      'With 4 mm needles, cast on 10 sts.',
      'Plain, in garter stitch, 4 rows:',
      'Row 1 (RS): knit.',
      'Row 2 (WS): knit.',
      'Rep rows 1 and 2 once more.',
      'Row 5 (RS): Bind off all sts.',
      '',
    ]);
    expect(linesOf({}, 'UK')).toContain('Row 5 (RS): Cast off all sts.');
  });

  it('says how often it is made, and that the second is a mirror image where it is', () => {
    const title = (over: Partial<Recipe>) => linesOf({ pieces: [piece(over)] })[2];
    expect(title({ name: 'Sleeve', makes: 2 })).toBe('SLEEVE (make 2)');
    expect(title({ name: 'Front', makes: 2, mirrored: true })).toBe(
      'FRONT (make 2, the second as a mirror image)',
    );
    expect(title({ name: 'Back', makes: 1 })).toBe('BACK');
    const fronts = { name: 'Front', role: 'front', mirrored: true } as const;
    expect(title({ ...fronts, makes: 2 })).toBe(
      'FRONT (make 2, the second as a mirror image: first the left front as worn, then the right)',
    );
    expect(title({ ...fronts, makes: 3 })).toBe('FRONT (make 3, the second as a mirror image)');
    expect(title({ ...fronts, mirrored: false, makes: 2 })).toBe('FRONT (make 2)');
    expect(title({ ...fronts, name: 'Sleeve', role: 'sleeve', makes: 2 })).toBe(
      'SLEEVE (make 2, the second as a mirror image)',
    );
  });

  it('says other needles where they are taken up, and never twice', () => {
    const sections = [
      section({ name: 'rib', rows: 2, fabric: 'rib 1x1', needle: 3.5 }),
      section({ name: 'plain', rows: 2, fabric: 'stocking', needle: 4 }),
      section({ name: 'more', rows: 2, fabric: 'stocking', needle: 4 }),
    ];
    const lines = linesOf({ pieces: [piece({ parts: [part({ sections })] })] });
    expect(lines.filter((line) => line.includes('needles'))).toEqual([
      'With 3.5 mm needles, cast on 10 sts.',
      'Change to 4 mm needles.',
    ]);
    expect(lines.indexOf('Change to 4 mm needles.')).toBe(
      lines.findIndex((line) => line.startsWith('Row 3')) - 1,
    );
  });

  it('names each section with its fabric and its rows; one whose name is no plain words by its fabric', () => {
    const sections = [
      section({ name: 'rib', rows: 2, fabric: 'rib 1x1' }),
      section({ name: 'above: 2, then?', rows: 2, fabric: 'stocking' }),
    ];
    const lines = linesOf({ pieces: [piece({ parts: [part({ sections })] })] });
    expect(lines.filter((line) => line.endsWith(':'))).toEqual([
      'Rib, in k1, p1 rib, 2 rows:',
      'Stockinette stitch, in stockinette stitch, 2 rows:',
    ]);
  });

  it('of three rows in turn repeats them with a dash between first and last', () => {
    const shaping = [
      { kind: 'edge', edge: 'right', by: -1, rows: [1, 5, 9, 13], inset: 1, lean: 'plain' } as const,
    ];
    const lines = linesOf({
      pieces: [
        piece({
          parts: [
            part({ from: { castOn: 20 }, sections: [section({ rows: 16, fabric: 'stocking', shaping })] }),
          ],
        }),
      ],
    });
    const repeat = lines.find((line) => line.startsWith('Rep')) ?? '';
    // four rows, three times more, and one stitch fewer each time: 20 − 4
    expect(repeat).toBe('Rep rows 1–4, 3 times more. (16 sts)');
    expect(lines.filter((line) => line.startsWith('Row'))).toHaveLength(5);
  });

  // 'inc 1 st at each end of next and every foll 8th row to 72 sts' as leaflets have it; common practice, no published source
  it('shapes in a rhythm: the row once, on which rows it comes again, and to how many stitches', () => {
    const rows = [3, 7, 11, 17, 23] as const;
    const shaping = [{ kind: 'edge', edge: 'both', by: 1, rows, inset: 1, lean: 'mirrored' } as const];
    const sections = [section({ rows: 24, fabric: 'stocking', shaping })];
    const lines = linesOf({ pieces: [piece({ parts: [part({ from: { castOn: 20 }, sections })] })] });
    expect(lines.slice(5, -2)).toEqual([
      'Row 1 (RS): knit.',
      'Row 2 (WS): purl.',
      'Row 3 (RS): k1, m1r, knit to last st, m1l, k1. (22 sts)',
      'Rep row 3 on every foll 4th row to 26 sts, then on every foll 6th row to 30 sts.',
      'Row 24 (WS): purl.',
    ]);
  });

  // editors write button-holes so, and count the stitch left after a bind-off as the next; common practice, no published source
  it('with button-holes in rib says how far to rib, not each stitch', () => {
    const k1p1 = (work: 'k' | 'p') => ({ work, times: 1 }) as const;
    const rib = (n: number) => Array.from({ length: n }, (_, i) => k1p1(i % 2 ? 'p' : 'k'));
    const hole = (work: 'bo' | 'co') => ({ work, times: 3 }) as const;
    const purlFirst = (n: number) => Array.from({ length: n }, (_, i) => k1p1(i % 2 ? 'k' : 'p'));
    const words = [
      rib(27),
      purlFirst(27),
      [...rib(4), hole('bo'), ...purlFirst(5), hole('bo'), ...purlFirst(5), hole('bo'), ...purlFirst(4)],
      [...purlFirst(4), hole('co'), ...rib(5), hole('co'), ...rib(5), hole('co'), ...rib(4)],
    ];
    const sections = [section({ rows: 4, fabric: 'rib 1x1', words })];
    const lines = linesOf({ pieces: [piece({ parts: [part({ from: { castOn: 27 }, sections })] })] });
    expect(lines.slice(7, 9)).toEqual([
      'Row 3 (RS): rib 4, [bind off 3 sts, rib until 5 sts on needle after gap] 2 times, bind off 3 sts, rib to end. (18 sts)',
      'Row 4 (WS): rib 4, [cast on 3 sts, rib 5] 2 times, cast on 3 sts, rib to end. (27 sts)',
    ]);
  });

  it('with one button-hole in rib says so too', () => {
    const k1p1 = (work: 'k' | 'p') => ({ work, times: 1 }) as const;
    const rib = (n: number, first = 0) =>
      Array.from({ length: n }, (_, i) => k1p1((i + first) % 2 ? 'p' : 'k'));
    const words = [rib(11), rib(11, 1), [...rib(4), { work: 'bo', times: 3 } as const, ...rib(4, 1)]];
    const sections = [section({ rows: 3, fabric: 'rib 1x1', words })];
    const lines = linesOf({ pieces: [piece({ parts: [part({ from: { castOn: 11 }, sections })] })] });
    expect(lines.slice(7, 8)).toEqual(['Row 3 (RS): rib 4, bind off 3 sts, rib to end. (8 sts)']);
  });

  it('says with which needles it goes on above a parting, where the last row below it had others', () => {
    const rows = (over: Partial<Section>) => section({ rows: 2, ...over });
    const onTop = (needle: number) =>
      linesOf({
        pieces: [
          piece({
            parts: [
              part({
                name: 'body',
                end: 'split',
                sections: [rows({ rows: 3 }), rows({ rows: 1, needle: 5 })],
              }),
              part({ from: { part: 'body', stitches: 10, edge: 'right' }, sections: [rows({ needle })] }),
            ],
          }),
        ],
      }).filter((line) => /5 mm|4 mm/.test(line));
    // cast on with 4 mm, the last row with 5 mm: going on with 5 mm nothing more is said
    expect(onTop(5)).toHaveLength(2);
    expect(onTop(4)).toHaveLength(3);
    expect(onTop(4)[2]).toContain('4 mm');
  });

  // a neck that is bound off tightly does not go over the head; common practice, no published source
  it('binds a neckband off loosely, and no other', () => {
    const end = (role: Recipe['role'], fabric: FabricName) =>
      linesOf({
        pieces: [piece({ ...(role && { role }), parts: [part({ sections: [section({ fabric })] })] })],
      }).at(-2);
    expect(end('neckband', 'rib 1x1')).toBe('Row 5 (RS): Bind off all sts loosely in rib.');
    expect(end('neckband', 'garter')).toBe('Row 5 (RS): Bind off all sts loosely.');
    expect(end('front band', 'rib 1x1')).toBe('Row 5 (RS): Bind off all sts in rib.');
    expect(end(undefined, 'garter')).toBe('Row 5 (RS): Bind off all sts.');
  });

  it('that rests a stitch between its sides says so without joining yarn', () => {
    const side = (name: string, from: PartRecipe['from']) =>
      part({ name, from, sections: [section({ rows: 2 })] });
    const parts = [
      part({ name: 'body', from: { castOn: 11 }, end: 'split' }),
      side('right', { part: 'body', edge: 'right', stitches: 5 }),
      part({
        name: 'centre',
        from: { part: 'body', edge: 'middle', stitches: 1 },
        end: 'hold',
        sections: [],
      }),
      side('left', { part: 'body', edge: 'left', stitches: 5 }),
    ];
    const lines = linesOf({ pieces: [piece({ parts })] });
    expect(lines.filter((line) => /holder|rejoin/.test(line))).toEqual([
      'Divide: work on first 5 sts only; place rem 6 sts on a holder.',
      'Place next 1 st on a holder.',
      'With RS facing, rejoin yarn to next 5 sts.',
    ]);
  });

  it('says a count after each row that changes it and after no other', () => {
    const shaping = [{ kind: 'across', row: 2, by: -1 } as const];
    const lines = linesOf({
      pieces: [piece({ parts: [part({ from: { castOn: 2 }, sections: [section({ rows: 3, shaping })] })] })],
    });
    const rows = lines.filter((line) => line.startsWith('Row'));
    expect(rows.map((line) => /\((\d+ sts?)\)$/.exec(line)?.[1])).toEqual([
      undefined,
      '1 st',
      undefined,
      undefined,
    ]);
  });

  it('whose stitches wait says on how many of them a holder lies', () => {
    const lines = linesOf({ pieces: [piece({ parts: [part({ end: 'hold' })] })] });
    expect(lines.at(-2)).toBe('Place rem 10 sts on a holder.');
    expect(linesOf({}).some((line) => line.includes('holder'))).toBe(false);
  });

  it('that is picked up says where from, edge by edge, and how many there are', () => {
    const from = {
      pickUp: [
        { stitches: 12, along: 'the left front neck' },
        { stitches: 1, along: 'the shoulder seam' },
      ],
    };
    const lines = linesOf({ pieces: [piece({ name: 'Band', parts: [part({ name: 'band', from })] })] });
    expect(lines[3]).toBe(
      'With 4 mm needles, with RS facing, pick up and knit 12 sts along the left front neck, pick up and knit 1 st along the shoulder seam. (13 sts)',
    );
  });

  it('that divides works its first side on the first or the last stitches, and joins the yarn anew for the other', () => {
    const sides = (edge: 'right' | 'left') => {
      const other = edge === 'right' ? 'left' : 'right';
      const side = (name: string, at: 'right' | 'left', from: PartRecipe['from']): PartRecipe => ({
        name: `${name} ${at}`,
        from,
        end: 'bind off',
        sections: [section({ rows: 2 })],
      });
      return linesOf({
        pieces: [
          piece({
            parts: [
              part({ name: 'body', end: 'split' }),
              side('neck', edge, { part: 'body', edge, stitches: 4 }),
              side('neck', other, { part: 'body', edge: other, stitches: 6 }),
            ],
          }),
        ],
      });
    };
    const right = sides('right').filter((line) => /^(Divide|With RS)/.test(line));
    expect(right).toEqual([
      'Divide: work on first 4 sts only; place rem 6 sts on a holder.',
      'With RS facing, rejoin yarn to next 6 sts.',
    ]);
    expect(sides('left').find((line) => line.startsWith('Divide'))).toBe(
      'Divide: work on last 4 sts only; place rem 6 sts on a holder.',
    );
  });
});

describe('what recurs', () => {
  /** Rows that are all unlike: one knitted and the rest purled, two and the rest, and so on. */
  const unlike = (count: number) =>
    Array.from({ length: count }, (_, i) => [
      { work: 'k', times: i + 1 } as const,
      { work: 'p', times: 30 - i - 1 } as const,
    ]);
  const lines = (one: Partial<Section>, over: Partial<PartRecipe> = {}) =>
    linesOf({
      pieces: [piece({ parts: [part({ from: { castOn: 30 }, ...over, sections: [section(one)] })] })],
    });
  const told = (one: Partial<Section>, over: Partial<PartRecipe> = {}) =>
    lines(one, over)
      .filter((line) => /^(Row|Rep)/.test(line))
      .map((line) => line.replace(/^Row (\d+).*/, '$1'));
  const upTo = (last: number, from = 1) => Array.from({ length: last - from + 1 }, (_, i) => `${from + i}`);

  it('is told once where it takes 24 rows at most', () => {
    expect(told({ rows: 48, words: unlike(24) })).toEqual([...upTo(24), 'Rep rows 1–24 once more.', '49']);
    expect(told({ rows: 52, words: unlike(26) })).toEqual(upTo(53));
  });

  it('up to the very last row is told so too', () => {
    expect(told({ rows: 4 }, { end: 'hold' })).toEqual(['1', '2', 'Rep rows 1 and 2 once more.']);
    expect(told({ rows: 3 }, { end: 'hold' })).toEqual(['1', '2', '3']);
  });

  it('begins on a right side row where the part begins on a wrong side one', () => {
    expect(told({ rows: 9 }, { firstSide: 'WS' })).toEqual([
      '1',
      '2',
      '3',
      'Rep rows 2 and 3, 3 times more.',
      '10',
    ]);
    // three rows are no pair and a pair again
    expect(told({ rows: 4 }, { firstSide: 'WS', end: 'hold' })).toEqual([
      '1',
      '2',
      'Rep rows 1 and 2 once more.',
    ]);
    // a block of four stands as it is
    expect(told({ rows: 8, words: unlike(4) }, { firstSide: 'WS', end: 'hold' })).toEqual([
      ...upTo(4),
      'Rep rows 1–4 once more.',
    ]);
  });
});

describe('parts that go on from each other', () => {
  const taking = (edge: 'right' | 'left', stitches: number, over: Partial<PartRecipe> = {}): PartRecipe => ({
    name: `${edge} side`,
    from: { part: 'body', edge, stitches },
    end: 'bind off',
    sections: [section({ rows: 2 })],
    ...over,
  });
  const after = (...parts: readonly PartRecipe[]) =>
    linesOf({ pieces: [piece({ parts: [part({ name: 'body', end: 'split' }), ...parts] })] }).filter(
      (line) => !/^(Row|Rep|Plain,)/.test(line),
    );

  it('take all stitches without a word', () => {
    expect(after(taking('right', 10))).toEqual([
      'Wren',
      '',
      'SCARF',
      'With 4 mm needles, cast on 10 sts.',
      '',
    ]);
  });

  it('on a wrong side row the left side is the first that is come to, and the yarn is joined with that side facing', () => {
    const back = { firstSide: 'WS' } as const;
    expect(after(taking('left', 4, back), taking('right', 6, back)).slice(4, -1)).toEqual([
      'Divide: work on first 4 sts only; place rem 6 sts on a holder.',
      'With WS facing, rejoin yarn to next 6 sts.',
    ]);
    expect(after(taking('right', 1, back), taking('left', 9, back)).slice(4, -1)).toEqual([
      'Divide: work on last 1 st only; place rem 9 sts on a holder.',
      'With WS facing, rejoin yarn to next 9 sts.',
    ]);
  });

  it('name other needles than those worked with last, side by side', () => {
    const thin = { sections: [section({ rows: 2, needle: 3 })] };
    expect(after(taking('right', 4, thin), taking('left', 6, thin)).slice(4, -1)).toEqual([
      'Divide: work on first 4 sts only; place rem 6 sts on a holder.',
      'Change to 3 mm needles.',
      'With RS facing, rejoin yarn to next 6 sts.',
    ]);
    expect(after(taking('right', 4, thin), taking('left', 6)).slice(4, -1)).toEqual([
      'Divide: work on first 4 sts only; place rem 6 sts on a holder.',
      'Change to 3 mm needles.',
      'With RS facing, rejoin yarn to next 6 sts.',
      'Change to 4 mm needles.',
    ]);
  });

  it('begin with the needles of their first row, though it is the only one', () => {
    const sections = [section({ name: 'first', rows: 1, needle: 3 }), section({ rows: 2 })];
    expect(linesOf({ pieces: [piece({ parts: [part({ sections })] })] }).slice(3, 8)).toEqual([
      'With 3 mm needles, cast on 10 sts.',
      'First, in garter stitch, 1 row:',
      'Row 1 (RS): knit.',
      'Plain, in garter stitch, 2 rows:',
      'Change to 4 mm needles.',
    ]);
  });

  it('without a row of their own name no needle', () => {
    expect(linesOf({ pieces: [piece({ parts: [part({ sections: [], end: 'hold' })] })] }).slice(3)).toEqual([
      'Cast on 10 sts.',
      'Place rem 10 sts on a holder.',
      '',
    ]);
  });
});
