import type { PlannedPart } from '../piece/planned.ts';
import type { Stripe } from '../yarn/stripes.ts';
import type { StripeStretch, WrittenWords } from './written-words.ts';

/** A knitted copy of a piece in its colours. */
export interface ColouredMake {
  readonly piece: string;
  /** undefined where all copies are alike, or where there is one */
  readonly make?: number;
  readonly parts: readonly ColouredPart[];
}

interface ColouredPart {
  readonly name: string;
  /** the colour of each row, from row 1; undefined where it has none of its own */
  readonly rows: readonly (string | undefined)[];
  /** told apart: its row goes on in the colour of the one before it, whose stripe it would make one row longer */
  readonly boundOffIn?: string;
}

/** Which rows are worked in which colours, a line for each part; numbered as the rows of the pattern are. */
export function stripeLines(makes: readonly ColouredMake[], words: WrittenWords): string[] {
  return makes.flatMap(({ piece, make, parts }) =>
    parts.flatMap(({ name, rows, boundOffIn }) => {
      const stretches = stretchesOf(rows);
      if (stretches.length === 0) return [];
      const copy = `${words.name(piece)}${make === undefined ? '' : words.joining.nos([make])}`;
      const of = name === piece ? copy : `${copy}, ${words.name(name)}`;
      return [words.facts.striped(of, stretches, boundOffIn)];
    }),
  );
}

/** Colours of a part, so that `stripeLines` can tell them. */
export const colouredPart = (
  { name, rows, end }: PlannedPart,
  colour: (row: number) => string | undefined,
): ColouredPart => {
  const all = rows.map(({ n }) => colour(n));
  const last = all.at(-1);
  // a part of one row is told as that row
  if (end !== 'bind off' || last === undefined || last !== all.at(-2)) return { name, rows: all };
  return { name, rows: all.slice(0, -1), boundOffIn: last };
};

interface Run extends Stripe {
  readonly first: number;
}

/**
 * The longest turns that there are, from the first row on.
 * @instrument of tests: what is written has its lines
 */
export function stretchesOf(rows: readonly (string | undefined)[]): readonly StripeStretch[] {
  const runs = runsOf(rows);
  const found: StripeStretch[] = [];
  for (let i = 0; i < runs.length; ) {
    const { count, turn } = turnFrom(runs, i);
    const top = i + count - 1;
    found.push({
      first: runs[i]?.first ?? 1,
      last: (runs[top]?.first ?? 1) + (runs[top]?.rows ?? 1) - 1,
      turn,
    });
    i += count;
  }
  return found;
}

function runsOf(rows: readonly (string | undefined)[]): readonly Run[] {
  const runs: Run[] = [];
  for (const [i, colour] of rows.entries()) {
    const before = runs.at(-1);
    if (colour === undefined) continue;
    if (before?.colour === colour && before.first + before.rows === i + 1)
      runs[runs.length - 1] = { ...before, rows: before.rows + 1 };
    else runs.push({ first: i + 1, colour, rows: 1 });
  }
  return runs;
}

/** A turn is worked twice at least, or it is told stripe by stripe. */
function turnFrom(runs: readonly Run[], at: number): { readonly count: number; readonly turn: Stripe[] } {
  const of = (count: number) => runs.slice(at, at + count).map(({ colour, rows }) => ({ colour, rows }));
  let best = { count: 1, turn: of(1) };
  for (let period = 2; 2 * period <= runs.length - at; period += 1) {
    let count = period;
    while (goesOn(runs, at + count, period)) count += 1;
    // the last stripe of a part may be cut short
    if (count >= 2 * period && isCut(runs, at + count, period)) count += 1;
    if (count >= 2 * period && count > best.count) best = { count, turn: of(period) };
  }
  return best;
}

function goesOn(runs: readonly Run[], at: number, period: number): boolean {
  const [one, before] = [runs[at], runs[at - period]];
  return one !== undefined && one.colour === before?.colour && one.rows === before.rows && adjoins(runs, at);
}

function isCut(runs: readonly Run[], at: number, period: number): boolean {
  const isShorter = (runs[at]?.rows ?? 0) < (runs[at - period]?.rows ?? 0);
  const isLast = at === runs.length - 1;
  return isLast && isShorter && runs[at]?.colour === runs[at - period]?.colour && adjoins(runs, at);
}

/** No row without a colour of its own lies between. */
function adjoins(runs: readonly Run[], at: number): boolean {
  const [below, one] = [runs[at - 1], runs[at]];
  return below !== undefined && below.first + below.rows === one?.first;
}
