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
    line: "ways.set('0', { at: 0, step: Number.POSITIVE_INFINITY, way: { worst: 0, at: [] } });",
    before: "'0'",
    after: "'falling'",
    why: 'only the values of that map are read',
  },
];
