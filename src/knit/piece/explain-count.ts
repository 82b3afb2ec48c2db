import { adviceFor, type Said, signFor } from './count/advice.ts';
import { countAt } from './count/count-at.ts';
import { landmarksOf } from './count/landmarks.ts';
import { laidRows } from './count/lie.ts';
import { bestLook, type Look, looksAt, type Seen, sameSeen, seenAt } from './count/look.ts';
import { slipRates } from './count/rates.ts';
import type { Slip, SlipCause, Stretch } from './count/slip.ts';
import { slipsIn } from './count/slips.ts';
import type { PlannedPart } from './planned.ts';
import type { Edge } from './recipe.ts';

/** What explains a count, with how to tell and what to do. */
export interface Explanation {
  readonly cause: SlipCause | 'unknown' | 'other';
  /** rows of the plan it may lie in, the likeliest first; for 'place ...' the rows really worked; empty: anywhere in `between` */
  readonly rows: readonly number[];
  /** the stretch in which it lies: after the first of these rows, up to the second */
  readonly between: readonly [number, number];
  /** the edge at which it is missing, where that is known */
  readonly edge?: Edge;
  /** how many rows (shaping, place) or stitches */
  readonly times: number;
  /** share of all that can be, 0 to 1 */
  readonly likelihood: number;
  /** what to look for on the fabric, and what to do, the best way first; sentences are made in src/words */
  readonly lookFor: Said;
  readonly toDo: readonly Said[];
  /** the one further look that tells most; the same for all explanations of a count */
  readonly ask?: Look;
}

/** A count that was taken before: rows worked, stitches. */
export interface Check {
  readonly row: number;
  readonly count: number;
}

export interface CountKnown {
  /** counts taken before on this piece, in any order */
  readonly checks: readonly Check[];
  /** rows with a lifeline in them */
  readonly lifelines?: readonly number[];
  /** what she answered to looks asked for before */
  readonly answers?: readonly {
    readonly look: Pick<Look, 'code' | 'landmark' | 'row'>;
    readonly seen: Seen;
  }[];
}

/** What an answer that does not fit leaves of a likelihood: she may have miscounted. */
const MISFIT = 0.01;

/** What any answer leaves of the likelihood that it is something else, which may look like anything. */
const OTHER_FITS = 0.2;

/**
 * What explains `counted` stitches on the needle where the plan states another number after `rowsWorked` rows:
 * the likeliest first, none when the count is as planned. Likelihoods follow from the plan's own rows since the count
 * was last right. None of them is ever all that can be: 'other' always
 * remains, and 'unknown' stands alone where no single slip explains it.
 */
export function explainCount(
  part: PlannedPart,
  rowsWorked: number,
  counted: number,
  known: CountKnown,
): Explanation[] {
  const planned = countAt(part, rowsWorked);
  if (planned === undefined || planned === counted) return [];
  const { stretch, off } = stretchOf(part, rowsWorked, counted - planned, known);
  const possible = slipsIn(stretch).filter((slip) => slip.by === off && slip.weight > 0);
  const between = [stretch.from, stretch.latest] as const;
  if (possible.length === 0) return [unknown(between, off)];
  const weighed = possible.map((slip) => ({
    ...slip,
    weight: slip.weight * fitOf(slip, known.answers ?? []),
  }));
  const looks = looksAt(part, stretch.landmark, stretch.to, weighed).filter(
    (look) => !isAnswered(look, known),
  );
  const ask = bestLook(weighed, looks, { rows: laidRows(part, stretch.landmark, stretch.to), trace: 'none' });
  const other = slipRates.other * weightOf(possible) * OTHER_FITS ** (known.answers ?? []).length;
  return explanationsOf(weighed, other, stretch, ask);
}

const weightOf = (slips: readonly Slip[]): number => slips.reduce((sum, slip) => sum + slip.weight, 0);

const isAnswered = (look: Pick<Look, 'code'>, { answers = [] }: CountKnown): boolean =>
  answers.some((answer) => answer.look.code === look.code);

const fitOf = (slip: Slip, answers: NonNullable<CountKnown['answers']>): number =>
  answers.reduce((fit, { look, seen }) => (sameSeen(seenAt(look, slip.lie()), seen) ? fit : fit * MISFIT), 1);

/**
 * The rows in which the slip lies, and what it added: after the last count that was right; up to a later count that
 * was off by as much; and after a later one that was off by another number, only what came on top.
 */
function stretchOf(
  part: PlannedPart,
  rowsWorked: number,
  off: number,
  known: CountKnown,
): { stretch: Stretch; off: number } {
  const checks = known.checks
    .filter((check) => check.row < rowsWorked)
    .map((check) => ({ row: check.row, off: check.count - (countAt(part, check.row) ?? check.count) }))
    .sort((a, b) => a.row - b.row);
  const counted = part.sections.filter(
    (section) => section.onNeedle !== undefined && section.first <= rowsWorked,
  );
  const ground = Math.max(0, ...counted.map((section) => section.first - 1));
  const lastRight = Math.max(ground, ...checks.filter((check) => check.off === 0).map((check) => check.row));
  const later = checks.filter((check) => check.row > lastRight);
  const other = later.filter((check) => check.off !== off).at(-1);
  const from = other?.row ?? lastRight;
  const latest = later.find((check) => check.row > from)?.row ?? rowsWorked;
  const landmark = landmarksOf(part, from, known.lifelines).at(-1)?.row ?? 0;
  const added = off - (other?.off ?? 0);
  const castOn = 'castOn' in part.from && from === 0 && !checks.some(({ row }) => row === 0);
  return { stretch: { part, from, latest, to: rowsWorked, landmark, castOn }, off: added };
}

function explanationsOf(
  slips: readonly Slip[],
  other: number,
  stretch: Stretch,
  ask: Look | undefined,
): Explanation[] {
  const total = weightOf(slips) + other;
  const between = [stretch.from, stretch.latest] as const;
  const byCause = new Map<SlipCause, Slip[]>();
  for (const slip of slips) byCause.set(slip.cause, [...(byCause.get(slip.cause) ?? []), slip]);
  const rest: Explanation = {
    ...unknown(between, slips[0]?.by ?? 0),
    cause: 'other',
    likelihood: other / total,
    ...(ask === undefined ? {} : { ask }),
  };
  return [...[...byCause.values()].map((group) => explanation(group, total, stretch, ask)), rest].sort(
    (a, b) => b.likelihood - a.likelihood,
  );
}

function explanation(
  group: readonly Slip[],
  total: number,
  stretch: Stretch,
  ask: Look | undefined,
): Explanation {
  const ranked = [...group].sort((a, b) => b.weight - a.weight || (b.rows[0] ?? 0) - (a.rows[0] ?? 0));
  const best = ranked[0] as Slip;
  const weight = weightOf(ranked);
  const near = ranked.filter((slip) => slip.weight > best.weight * MISFIT * 2);
  const edges = new Set(near.map((slip) => slip.edge));
  const rows = [...new Set(near.flatMap((slip) => slip.rows))];
  const between = [stretch.from, stretch.latest] as const;
  return {
    cause: best.cause,
    rows,
    between,
    times: best.times,
    likelihood: weight / total,
    lookFor: signFor(best, rows, between),
    toDo: adviceFor(best, near, stretch),
    ...(edges.size === 1 && best.edge !== undefined ? { edge: best.edge } : {}),
    ...(ask === undefined ? {} : { ask }),
  };
}

const unknown = (between: readonly [number, number], off: number): Explanation => ({
  cause: 'unknown',
  rows: [],
  between,
  times: Math.abs(off),
  likelihood: 1,
  lookFor: { code: 'unknown', figures: { off: Math.abs(off), from: between[0], to: between[1] } },
  toDo: [
    { code: 'count again', figures: {} },
    { code: 'find the place', figures: {} },
    { code: 'accept', figures: { off: Math.abs(off) } },
  ],
});
