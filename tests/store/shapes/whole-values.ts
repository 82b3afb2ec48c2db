import { planOf, scarf } from '../scenario.ts';

const STAMP = '0000001jk.00000.aa';
const { garment } = scarf();
const stretch = {
  piece: 'Back',
  make: 1,
  part: 'Body',
  edge: 'left',
  sections: ['Rib'],
  rows: { first: 1, last: 20 },
  level: 'only',
  shaped: 'before',
  stitches: { from: 0, to: 4 },
  reversed: true,
};
const length = { id: 'a/1', mm: 100, from: 'start', endSide: 'WS', open: true };
export const step = { work: 'k', times: 2 };
const section = {
  name: 'Body',
  rows: 20,
  fabric: 'stocking',
  needle: 4,
  shaping: [
    { kind: 'edge', edge: 'both', by: -1, rows: [3], inset: 1, lean: 'mirrored' },
    { kind: 'across', row: 3, by: 4 },
    { kind: 'middle', rows: [3], from: 10 },
    { kind: 'bind off', edge: 'right', groups: [{ row: 1, stitches: 3 }] },
  ],
  words: [[step]],
  own: { 1: 'as she likes' },
  length,
  onNeedle: 20,
  measured: { rowMm: 3, atMm: 20 },
};
/** Something of everything that a stored garment, plan, entry and photo may have. */
export const whole = {
  garment: {
    ...garment,
    swatches: [
      {
        fabric: 'garter',
        stitches: 20,
        widthMm: 100,
        rows: 28,
        heightMm: 100,
        needle: 4,
        before: { stitches: 20, widthMm: 100, rows: 28, heightMm: 100 },
        weighed: { grams: 5, stitches: 20, rows: 28 },
      },
    ],
    yarns: [
      {
        name: 'Harbour',
        fibre: 'wool',
        colour: 'red',
        dyeLot: '7',
        grams: 50,
        metres: 110,
        balls: 4,
        strands: 2,
      },
    ],
    joints: [
      { kind: 'seam', of: 'side', how: 'mattress', a: [stretch], b: [stretch], ease: 5, byHand: 'x' },
      { kind: 'pick up', piece: 'Band', make: 1, along: [{ line: [stretch], stitches: 40, percent: 75 }] },
      { kind: 'left free', line: [stretch], as: 'hem' },
    ],
    byHand: [{ id: 'x', a: [stretch], b: [stretch], how: 'mattress' }],
    notes: 'soft',
    credits: 'her aunt',
    licence: 'free',
    texts: { long: 'Cast on.' },
    ticked: ['ends'],
    taken: [{ piece: 'Back', make: 1, grams: 80 }],
    stripes: [{ colour: 'red', rows: 2 }],
    striped: { long: { first: 1, last: 20, at: -2, back: true } },
    restriped: [{ piece: 'long', make: 1, part: 0, row: 5, at: 1, stripes: [{ colour: 'red', rows: 2 }] }],
    design: { any: [1, 'kind'] },
    sizes: { any: ['set'] },
    rowNotes: [{ piece: 'Scarf', part: 'Body', row: 3, text: 'soft', address: 'https://example.org/how' }],
    marks: { base: STAMP, seen: [STAMP], at: { notes: STAMP }, gone: [], order: {} },
    pieces: [
      {
        id: 'long',
        plans: ['scarf/long/0/s/1'],
        recipe: {
          name: 'Scarf',
          makes: 2,
          mirrored: true,
          role: 'back',
          gauge: { stitches: 20, rows: 28, fabric: 'garter', needle: 4 },
          gauges: { garter: { stitches: 20, rows: 40 } },
          parts: [
            {
              name: 'Body',
              from: { castOn: 20 },
              firstSide: 'RS',
              selvedge: 'slipped',
              sections: [section],
              end: 'split',
            },
            { name: 'Left', from: { part: 'Body', stitches: 10, edge: 'left' }, sections: [], end: 'hold' },
            {
              name: 'Band',
              from: { pickUp: [{ along: 'Body', stitches: 9, held: true }] },
              sections: [],
              end: 'bind off',
            },
          ],
        },
      },
    ],
  },
  plan: {
    ...planOf('scarf', 'long', 2),
    plan: {
      ...planOf('scarf', 'long', 2).plan,
      sections: [
        {
          name: 'Garter',
          fabric: 'garter',
          needle: 4,
          first: 1,
          last: 2,
          own: { 1: 'knit' },
          length,
          onNeedle: 4,
        },
      ],
      rows: planOf('scarf', 'long', 2).plan.rows.map((row) => ({
        ...row,
        shaping: [{ kind: 'edge', edge: 'left', by: -1 }],
      })),
    },
  },
  entry: {
    id: 'e1',
    make: 'scarf/long/0/1',
    seq: 1,
    at: 5,
    kind: 'row',
    row: 1,
    count: 20,
    text: 'red',
    plan: 'scarf/long/0/s/1',
    follows: 'e0',
    settles: ['e0'],
    undoes: 'e0',
  },
  photo: { id: 'p1', garment: 'scarf', at: 5, caption: 'dot', image: 'data:image/png;base64,AAAA' },
} as const;
