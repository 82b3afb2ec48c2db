import type { Gauge } from '../gauge.ts';
import type { MeasuredGauge } from '../measured-gauge.ts';
import type { Garment } from '../piece/garment.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../piece/recipe.ts';

/**
 * The sample: a partner's V-neck pullover in an invented yarn, our own numbers.
 * 118 stitches at 21 to 100 mm make 562 mm for each of front and back: a chest of 1,000 mm and 120 mm of ease.
 */
const ribGauge: Gauge = { stitches: 24, rows: 30 };
const gauges = { 'rib 2x2': ribGauge, 'rib 1x1 matched': ribGauge } as const;

const RIB_NEEDLE_MM = 3.5;
const BODY_NEEDLE_MM = 4;
const gauge: MeasuredGauge = { stitches: 21, rows: 28, fabric: 'stocking', needle: BODY_NEEDLE_MM };
const BAND_NEEDLE_MM = 3.25;

const every = (step: number, first: number, times: number): number[] =>
  Array.from({ length: times }, (_, i) => first + i * step);

const rib = (rows: number): Section => ({
  name: 'rib',
  rows,
  fabric: 'rib 2x2',
  needle: RIB_NEEDLE_MM,
  shaping: [],
});

const plain = (name: string, rows: number, shaping: readonly Shaping[] = []): Section => ({
  name,
  rows,
  fabric: 'stocking',
  needle: BODY_NEEDLE_MM,
  shaping,
});

/** 118 stitches: 6 bound off and 5 decreased at each armhole leave 96. */
const armholes: readonly Shaping[] = [
  { kind: 'bind off', edge: 'right', groups: [{ row: 1, stitches: 6 }] },
  { kind: 'bind off', edge: 'left', groups: [{ row: 2, stitches: 6 }] },
  { kind: 'edge', edge: 'both', by: -1, rows: every(2, 3, 5), inset: 2, lean: 'mirrored' },
];

/** Two steps of ten; the third ten are left for the bind-off. */
const slope = (edge: 'right' | 'left', firstRow: number, times: number): Shaping => ({
  kind: 'bind off',
  edge,
  groups: every(2, firstRow, times).map((row) => ({ row, stitches: 10 })),
});

const back: Recipe = {
  name: 'Back',
  role: 'back',
  makes: 1,
  gauge,
  gauges,
  parts: [
    {
      name: 'Back',
      from: { castOn: 118 },
      sections: [
        rib(18),
        plain('body', 98),
        plain('armholes', 70, armholes),
        plain('shoulders', 6, [slope('right', 1, 3), slope('left', 2, 3)]),
      ],
      end: 'hold',
    },
  ],
};

/** 18 decreases over 58 rows: every second row nine times, then every fourth row nine times: 48 stitches to 30. */
const neckRows = [...every(2, 1, 9), ...every(4, 21, 9)];

const shoulder = (name: string, edge: 'right' | 'left'): PartRecipe => ({
  name,
  from: { part: 'Body', stitches: 48, edge },
  firstSide: 'RS',
  sections: [
    plain('neck', 58, [
      {
        kind: 'edge',
        edge: edge === 'right' ? 'left' : 'right',
        by: -1,
        rows: neckRows,
        inset: 2,
        lean: 'mirrored',
      },
    ]),
    // groups can be bound off only where a row begins: RS rows at the right edge, WS rows at the left one
    edge === 'right' ? plain('shoulder', 4, [slope(edge, 1, 2)]) : plain('shoulder', 5, [slope(edge, 2, 2)]),
  ],
  end: 'bind off',
});

const front: Recipe = {
  name: 'Front',
  role: 'front',
  makes: 1,
  gauge,
  gauges,
  parts: [
    {
      name: 'Body',
      from: { castOn: 118 },
      sections: [rib(18), plain('body', 98), plain('armholes', 12, armholes)],
      end: 'split',
    },
    // shoulders are named as worn: with the right side facing, the left one lies at the right edge
    shoulder('Left shoulder', 'right'),
    shoulder('Right shoulder', 'left'),
  ],
};

const sleeve: Recipe = {
  name: 'Sleeve',
  role: 'sleeve',
  makes: 2,
  gauge,
  gauges,
  parts: [
    {
      name: 'Sleeve',
      from: { castOn: 50 },
      sections: [
        rib(18),
        plain('sleeve', 112, [
          { kind: 'across', row: 1, by: 8 },
          {
            kind: 'edge',
            edge: 'both',
            by: 1,
            rows: [...every(4, 5, 18), ...every(6, 79, 6)],
            inset: 2,
            lean: 'mirrored',
          },
        ]),
        plain('top', 8),
      ],
      end: 'bind off',
    },
  ],
};

/** 48 along each neck edge (62 rows, about three stitches for four rows), one at the point, 36 from the back's holder. */
const neckband: Recipe = {
  name: 'Neckband',
  role: 'neckband',
  makes: 1,
  gauge,
  gauges,
  parts: [
    {
      name: 'Neckband',
      from: {
        pickUp: [
          { along: 'left front neck', stitches: 48 },
          { along: 'point of the V', stitches: 1 },
          { along: 'right front neck', stitches: 48 },
          { along: 'back neck', stitches: 36 },
        ],
      },
      firstSide: 'WS',
      sections: [
        {
          name: 'band',
          rows: 8,
          fabric: 'rib 1x1 matched',
          needle: BAND_NEEDLE_MM,
          shaping: [{ kind: 'middle', rows: [2, 4, 6], from: 48 }],
        },
      ],
      end: 'bind off',
    },
  ],
};

export const sampleGarment: Garment = {
  name: 'Harbour pullover',
  pieces: [back, front, sleeve, neckband],
  swatches: [
    { fabric: 'stocking', stitches: 32, widthMm: 152, rows: 42, heightMm: 150, needle: BODY_NEEDLE_MM },
    { fabric: 'rib 2x2', stitches: 36, widthMm: 150, rows: 30, heightMm: 100, needle: RIB_NEEDLE_MM },
  ],
  yarns: [
    {
      name: 'Quillmere Double',
      fibre: 'Corriedale wool',
      colour: 'wet slate',
      dyeLot: '4',
      grams: 50,
      metres: 120,
      balls: 13,
    },
  ],
  notes: 'Sew the right shoulder before the neckband; the left one stays open until the band is done.',
  credits: 'Sample garment, numbers of our own',
  licence: 'CC0-1.0',
};
