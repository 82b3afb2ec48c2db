import type { Slip, Stretch } from './slip.ts';

/** Something to say: a code and its figures; `src/words` makes the sentence. */
export interface Said {
  readonly code: string;
  readonly figures: Readonly<Record<string, number | string>>;
}

/** A slip so few rows down is ripped back to; a deeper one is mended on the way. */
const NEAR_ROWS = 6;

/** What to look for on the fabric. */
export const signFor = (
  slip: Slip,
  rows: readonly number[],
  [from, to]: readonly [number, number],
): Said => ({
  code: slip.cause,
  figures: {
    rows: rows.slice(0, 6).join(', '),
    more: Math.max(0, rows.length - 6),
    row: slip.rows[0] ?? 0,
    times: slip.times,
    from: from + 1,
    to,
    ...(slip.edge === undefined ? {} : { edge: slip.edge }),
    ...(slip.cause === 'cast-on miscounted' ? { way: slip.by > 0 ? 'many' : 'few' } : {}),
  },
});

/** What can be done, the best way first. */
export function adviceFor(slip: Slip, all: readonly Slip[], { to }: Stretch): Said[] {
  const off = Math.abs(slip.by);
  const accept: Said = { code: 'accept', figures: { off } };
  switch (slip.cause) {
    case 'place ahead':
    case 'place behind':
      return [{ code: 'set place', figures: { row: slip.rows[0] ?? 0 } }];
    case 'stitch dropped':
      return [{ code: 'catch stitch', figures: { count: slip.times } }, accept];
    case 'stray yarn-over':
      return [{ code: 'let down', figures: { count: slip.times } }, accept];
    case 'worked together':
      return [{ code: 'add', figures: { off } }, accept];
    case 'cast-on miscounted': {
      const anew: Said = { code: 'rip back', figures: { row: 0, rows: to } };
      const mend: Said = { code: slip.by > 0 ? 'take out' : 'add', figures: { off } };
      return to <= NEAR_ROWS ? [anew, mend, accept] : [mend, accept];
    }
    case 'shaping missed':
    case 'shaping doubled':
    case 'one edge only':
    case 'spread short':
    case 'spread over':
    case 'group miscounted': {
      const oldest = Math.min(...all.flatMap((one) => one.rows));
      const rip: Said = { code: 'rip back', figures: { row: oldest - 1, rows: to - oldest + 1 } };
      const mend: Said = { code: slip.by > 0 ? 'take out' : 'add', figures: { off } };
      return to - oldest < NEAR_ROWS ? [rip, accept] : [mend, accept, rip];
    }
  }
}
