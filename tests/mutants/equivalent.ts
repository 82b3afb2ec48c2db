/** Mutants that no test can see, each with the reason: they do not count. */
export interface Equivalent {
  readonly file: string;
  /** the line as it stands, without the space before it; undefined for all of the file's */
  readonly line: string;
  readonly before: string;
  readonly after: string;
  readonly why: string;
}

export const equivalents: readonly Equivalent[] = [
  {
    file: 'src/knit/making-up/work-making-up.ts',
    line: 'if (a.begin && b.begin) this.edges.ties.tie(a.begin, b.begin);',
    before: 'a.begin, b.begin',
    after: 'b.begin, a.begin',
    why: 'two corners are one, whichever is named first',
  },
  {
    file: 'src/knit/making-up/work-making-up.ts',
    line: 'if (a.end && b.end) this.edges.ties.tie(a.end, b.end);',
    before: 'a.end, b.end',
    after: 'b.end, a.end',
    why: 'two corners are one, whichever is named first',
  },
  {
    file: 'src/knit/making-up/work-making-up.ts',
    line: 'this.edges.ties.tie(start.begin, first.begin);',
    before: 'start.begin, first.begin',
    after: 'first.begin, start.begin',
    why: 'two corners are one, whichever is named first',
  },
  {
    file: 'src/knit/making-up/work-making-up.ts',
    line: 'this.edges.ties.tie(start.end, last.end);',
    before: 'start.end, last.end',
    after: 'last.end, start.end',
    why: 'two corners are one, whichever is named first',
  },
  {
    file: 'src/knit/making-up/work-making-up.ts',
    line: 'if (before === undefined || this.edges.ties.meet(before.end, one.begin)) continue;',
    before: 'before.end, one.begin',
    after: 'one.begin, before.end',
    why: 'two corners are one, whichever is named first',
  },
  {
    file: 'src/knit/yarn/last-ball.ts',
    line: 'if (left < -1e-9) runsOut = true;',
    before: '<',
    after: '<=',
    why: 'what is left is never that fraction of a gram to the last bit',
  },
  {
    file: 'src/knit/shape/stairs.ts',
    line: 'while (run > 0 && (steps[run - 1] ?? 0) < 2) run -= 1;',
    before: '>',
    after: '>=',
    why: 'where no step is of two or more, no order changes any',
  },
  {
    file: 'src/knit/shape/curve.ts',
    line: 'const PIECES = 8;',
    before: '8',
    after: '9',
    why: 'nine pieces measure the same length: eight leave no error that a millimetre knows of',
  },
  {
    file: 'src/knit/shape/curve.ts',
    line: 'for (let i = 0; i < 40; i += 1) {',
    before: '<',
    after: '<=',
    why: 'one halving more is less than 1e-12 away',
  },
  {
    file: 'src/knit/shape/curve.ts',
    line: 'for (let i = 0; i < 40; i += 1) {',
    before: '40',
    after: '41',
    why: 'one halving more is less than 1e-12 away',
  },
  {
    file: 'src/knit/shape/curve.ts',
    line: 'for (let i = 0; i < 40; i += 1) {',
    before: '0',
    after: '1',
    why: 'one halving fewer is less than 1e-11 away',
  },
  {
    file: 'src/knit/shape/curve.ts',
    line: 'if (((cubic * t + square) * t + linear) * t + a <= y) low = t;',
    before: '<=',
    after: '<',
    why: 'a height met to the last bit is come to from below, as near as the halving goes',
  },
  {
    file: 'src/knit/shape/spread.ts',
    line: 'const most = change > 0 ? stitches - 1 : Math.floor(stitches / 2);',
    before: '>',
    after: '>=',
    why: 'no change is never too many',
  },
  {
    file: 'src/knit/shape/spread.ts',
    line: 'const over = change > 0 ? stitches : stitches - 2 * times;',
    before: '>',
    after: '>=',
    why: 'no change leaves all stitches over either way',
  },
  {
    file: 'src/knit/written/row-lines.ts',
    line: 'if (saves > saved) {',
    before: '>',
    after: '>=',
    why: 'two blocks of different length never save as many lines: what has both periods has a shorter one',
  },
  {
    file: 'src/knit/yarn/per-stitch.ts',
    line: 'weighed.find((s) => sameCloth(s.fabric, fabric)) ??',
    before: 's.fabric, fabric',
    after: 'fabric, s.fabric',
    why: 'two fabrics are one cloth, whichever is named first',
  },
  {
    file: 'src/knit/written/write-sizes.ts',
    line: "const skeletons = new Set(lines.map((line) => line?.replace(NUMBER, '#')));",
    before: "'#'",
    after: "'sizes worked differently'",
    why: 'any mark does in place of a number',
  },
  {
    file: 'src/knit/shape/edge-steps.ts',
    line: 'const widthOf = (by: number | undefined): number => (by === undefined ? 0 : INSET + (by < 0 ? 2 : 1));',
    before: '<',
    after: '<=',
    why: 'no step adds nothing',
  },
  {
    file: 'src/store/backup/import.ts',
    line: 'const coming: Coming = { id: randomId(14), file, mode, garments, photos, read: read.value, deeds };',
    before: '14',
    after: '15',
    why: 'it tells one import from another for as long as that runs, and is no more seen than that',
  },
  {
    file: 'src/knit/pattern/follow/build/make-row.ts',
    line: 'const MOST_CELLS = 6_000_000;',
    before: '6_000_000',
    after: '6000001',
    why: 'it only keeps a mistyped number from filling the memory: a whole row goes over it at once',
  },
  {
    file: 'src/store/share/link.ts',
    line: 'if (!/^[\\w-]+$/.test(text)) return undefined;',
    before: '/^[\\w-]+$/',
    after: '/^[\\w-]*$/',
    why: 'an empty text unfolds to nothing, which is as little a garment',
  },
  {
    file: 'src/knit/making-up/found-panel.ts',
    line: 'const [first] = this.armhole(outer, true);',
    before: 'true',
    after: 'false',
    why: 'what is level of its first stretch is said anew',
  },
  {
    file: 'src/knit/piece/rework/absorb.ts',
    line: "const more: Edge = times.right > times.left ? 'right' : 'left';",
    before: '>',
    after: '>=',
    why: 'where both edges need as many, neither needs more and none is named',
  },
  {
    file: 'src/store/share/link.ts',
    line: "return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');",
    before: '/=+$/',
    after: '/=+/',
    why: 'base64 has that sign at its end only',
  },
  {
    file: 'src/knit/row/read/plain.ts',
    line: 'const after = c.at + 1 < c.end ? c.tokens[c.at + 1] : undefined;',
    before: '<',
    after: '<=',
    why: 'it only spares a further look, which reads the same',
  },
];
