import type { Change } from './change.ts';

/** Faults planted by hand, since they would be knitted before anybody saw them: each has a test that must turn red. */
export interface Planted {
  readonly name: string;
  readonly changes: readonly Change[];
  /** the test's file, and its full name with its groups before it */
  readonly red: { readonly file: string; readonly test: string };
}

export const planted: readonly Planted[] = [
  {
    name: 'decreases that lean the other way',
    changes: [
      {
        file: 'src/knit/piece/edge-stitch.ts',
        from: "(leansLeft ? 'ssk' : 'k2tog')",
        to: "(leansLeft ? 'k2tog' : 'ssk')",
      },
    ],
    red: {
      file: 'tests/knit/piece/rows-spelled-out.test.ts',
      test: 'decreases at the edges stocking over 40, row 3: ssk, knit to last 2 sts, k2tog',
    },
  },
  {
    name: 'made stitches that lean the other way',
    changes: [
      {
        file: 'src/knit/piece/edge-stitch.ts',
        from: "(side === 'RS') ? 'm1r' : 'm1l'",
        to: "(side === 'RS') ? 'm1l' : 'm1r'",
      },
    ],
    red: {
      file: 'tests/knit/piece/rows-spelled-out.test.ts',
      test: 'increases at the edges stocking over 40, row 3: k1, m1r, knit to last st, m1l, k1',
    },
  },
  {
    name: 'the first stitch of every plain row slipped',
    changes: [
      {
        file: 'src/knit/piece/row-of.ts',
        from: "addRun(this.runs, 'unworked', back);\n    return ok(this.done());",
        to: "addRun(this.runs, 'unworked', back);\n    slipFirst(this.runs);\n    return ok(this.done());",
      },
    ],
    red: {
      file: 'tests/knit/piece/rows-spelled-out.test.ts',
      test: 'a row of a fabric alone stocking over 40, row 3: knit',
    },
  },
  {
    name: 'moss worked as rib',
    changes: [{ file: 'src/knit/fabric.ts', from: "rows: ['kp', 'pk']", to: "rows: ['kp']" }],
    red: {
      file: 'tests/knit/piece/rows-spelled-out.test.ts',
      test: 'a row of a fabric alone moss over 40, row 4: *p1, k1; repeat from * to end',
    },
  },
  {
    name: '2×2 rib as k1, p3',
    changes: [{ file: 'src/knit/fabric.ts', from: "rows: ['kkpp']", to: "rows: ['kppp']" }],
    red: {
      file: 'tests/knit/piece/rows-spelled-out.test.ts',
      test: 'a row of a fabric alone rib 2x2 over 40, row 3: *k2, p2; repeat from * to end',
    },
  },
  {
    name: 'ribs out of step after a decrease',
    changes: [
      {
        file: 'src/knit/piece/row-of.ts',
        from: "this.columns = first === 'right' ? kept : kept.reverse();",
        to: 'this.columns = kept.map((_, column) => column);',
      },
    ],
    red: {
      file: 'tests/knit/piece/rows-spelled-out.test.ts',
      test: 'decreases in ribs and moss, and the row after them: every rib stays in line rib 2x2 over 40, row 4: k2, p1, *k2, p2; repeat from * to last 3 sts, k1, p2',
    },
  },
  {
    name: '¼ read as 4',
    changes: [{ file: 'src/knit/row/read/lex.ts', from: "'¼': 1 / 4", to: "'¼': 4" }],
    red: {
      file: 'tests/knit/pattern/read-pattern.test.ts',
      test: 'lengths in inches and centimetres, with fractions, are the same',
    },
  },
  {
    name: 'a written pattern’s gauge a ninth too large',
    changes: [
      {
        file: 'src/knit/written/write-pattern.ts',
        from: "units === 'cm' ? '10 cm' :",
        to: "units === 'cm' ? '9 cm' :",
      },
    ],
    red: {
      file: 'tests/knit/written/write-pattern.test.ts',
      test: 'a garment written as a pattern states the tension in the figures of the garment, and at which end of the needle a side goes on',
    },
  },
  {
    name: 'all the sleeve’s markers at the underarm',
    changes: [
      {
        file: 'src/knit/making-up/joint-steps.ts',
        from: 'bottomMm + share * rows * rowMm',
        to: 'bottomMm + 0 * share',
      },
    ],
    red: {
      file: 'tests/knit/making-up/making-up.test.ts',
      test: 'making up the sample garment marks on the back where the sleeve goes: underarm and quarters of the armhole, to the millimetre',
    },
  },
  {
    name: 'the first swatch taken for that of the fabric',
    changes: [
      {
        file: 'src/knit/yarn/per-stitch.ts',
        from: 'weighed.find((s) => s.fabric === fabric) ??',
        to: 'weighed[0] ??',
      },
    ],
    red: {
      file: 'tests/knit/yarn/yarn.test.ts',
      test: 'yarn for a garment of several weighed swatches that of the fabric itself is taken, wherever it stands',
    },
  },
  {
    name: 'a piece that divides at its other edge in words',
    changes: [
      {
        file: 'src/knit/written/write-pattern.ts',
        from: "? 'first' : 'last'",
        to: "? 'last' : 'first'",
      },
    ],
    red: {
      file: 'tests/knit/written/write-pattern.test.ts',
      test: 'a garment written as a pattern states the tension in the figures of the garment, and at which end of the needle a side goes on',
    },
  },
  {
    name: 'a length that ends on the other side than the text says',
    changes: [
      {
        file: 'src/knit/pattern/say/phrase/ending.ts',
        from: "next ? (side === 'RS' ? 'WS' : 'RS') : side",
        to: "next ? side : side === 'RS' ? 'WS' : 'RS'",
      },
    ],
    red: {
      file: 'tests/knit/pattern/read-pattern.test.ts',
      test: 'lengths become the rows that the gauge makes of them, rounded to the side asked for',
    },
  },
];
