import type { Group } from '../recipe.ts';
import { roundLike, roundParts } from './round-to.ts';
import type { Scale } from './scale.ts';
import { scaledCount } from './shaped-to.ts';

/**
 * A slope of several groups gets as many as the new rows have room for on the same height, with the stitches shared
 * out along the same line; a single group stays one.
 * @param amount stitches that all groups together have; by the scale unless said
 * @param isBesideEdge single stitches are shaped at the same edge too: an armhole, a cap or a neck
 */
export function scaledGroups(
  groups: readonly Group[],
  scale: Scale,
  total: number,
  amount?: number,
  isBesideEdge = false,
): Group[] {
  const sum = groups.reduce((n, g) => n + g.stitches, 0);
  const share = amount === undefined || sum === 0 ? scale.stitches : amount / sum;
  const hasCorner = beginsAtCorner(groups, total / scale.rows, isBesideEdge);
  const slopes = slopesOf(groups, hasCorner).map((slope) => ({ slope, ...laid(slope, scale) }));
  const [first] = groups;
  // what is sewn to another corner of so many has as many as that one
  const corner = hasCorner && first ? Math.min(sum * share, scaledCount(first.stitches, scale)) : undefined;
  const along =
    corner !== undefined && first && sum > first.stitches
      ? (sum * share - corner) / (sum - first.stitches)
      : share;
  const stitches = roundParts(
    slopes.flatMap(({ slope, count }, i) =>
      i === 0 && corner !== undefined ? [corner] : sharedAlong(slope, along, count),
    ),
  );
  const rows: number[] = [];
  let most = total;
  for (const [k, { first, distance, count }] of [...slopes.entries()].reverse()) {
    const last = first + (count - 1) * distance;
    const least = 2 - (first % 2) + roomOf(slopes.slice(0, k));
    const from = last <= most ? first : first - 2 * Math.ceil((last - most) / 2);
    const begin = Math.max(least, from);
    rows.unshift(...Array.from({ length: count }, (_, i) => begin + i * distance));
    most = begin - 2;
  }
  return rows.map((row, i) => ({ row, stitches: stitches[i] ?? 0 })).filter((g) => g.stitches > 0);
}

/** Rows without a group from which on what is bound off first is no part of a shoulder's slope. */
const STANDS_ON = 6;

/** Whether what is bound off first is a corner, as of an armhole or a cap, that meets another corner stitch by stitch. */
function beginsAtCorner(groups: readonly Group[], total: number, isBesideEdge: boolean): boolean {
  const [first] = groups;
  if (!first || groups.length < 2 || first.row > 2) return false;
  const tops = [...groups.map(({ row }) => row), total + 1];
  return (
    isBesideEdge ||
    groups.some(({ stitches }, i) => i > 0 && stitches > (groups[i - 1]?.stitches ?? stitches)) ||
    tops.some((row, i) => i > 0 && row - (tops[i - 1] ?? row) > STANDS_ON)
  );
}

/** Rows that the groups need from the section's first row on, at least. */
export function rowsOfGroups(
  groups: readonly Group[],
  scale: Scale,
  total = 0,
  isBesideEdge = false,
): number {
  const hasCorner = beginsAtCorner(groups, total, isBesideEdge);
  const slopes = slopesOf(groups, hasCorner).map((slope) => laid(slope, scale));
  const [first] = slopes;
  if (!first) return 1;
  return 2 - (first.first % 2) + roomOf(slopes) - 2;
}

interface Laid {
  readonly first: number;
  readonly distance: number;
  readonly count: number;
}

/** Rows up to the first group of what comes after them. */
const roomOf = (slopes: readonly Laid[]): number =>
  slopes.reduce((rows, { distance, count }) => rows + (count - 1) * distance + 2, 0);

/** Where the groups lie evenly they are one slope; else those that follow each other at once, what lies level apart. */
function slopesOf(groups: readonly Group[], hasCorner = false): Group[][] {
  const gap = (i: number) => (groups[i]?.row ?? 0) - (groups[i - 1]?.row ?? 0);
  const isEven = groups.every((_, i) => i < 2 || gap(i) === gap(1));
  const isLevel = (i: number, beside: number) =>
    (groups[i]?.stitches ?? 0) >= 2 * (groups[beside]?.stitches ?? 0);
  const out: Group[][] = [];
  for (const [i, group] of groups.entries()) {
    const last = groups.length - 1;
    const parts =
      i === 0 ||
      (!isEven && gap(i) > 2) ||
      (i === 1 && (hasCorner || isLevel(0, 1))) ||
      (i === last && isLevel(last, i - 1));
    if (parts) out.push([group]);
    else out.at(-1)?.push(group);
  }
  return out;
}

function laid(groups: readonly Group[], scale: Scale): Laid {
  const old = groups[0]?.row ?? 1;
  const last = groups[groups.length - 1]?.row ?? old;
  const distance =
    groups.length > 1 ? Math.max(2, 2 * Math.round((last - old) / (groups.length - 1) / 2)) : 2;
  const count = groups.length < 2 ? groups.length : Math.max(1, Math.round(groups.length * scale.rows));
  // what begins the second row of a pair at the left edge stays in one pair with what begins the first at the right
  const pair = old - 1 + (old % 2);
  const first = Math.max(1, roundLike(pair * scale.rows, pair)) + (old - pair);
  return { first, distance, count };
}

/** The old groups' stitches, laid end to end and cut anew into `count` equal stretches; not yet whole. */
function sharedAlong(groups: readonly Group[], share: number, count: number): number[] {
  const upTo = (part: number): number => {
    let left = part * groups.length;
    let sum = 0;
    for (const group of groups) {
      sum += Math.min(1, Math.max(0, left)) * group.stitches;
      left -= 1;
    }
    return sum;
  };
  return Array.from({ length: count }, (_, i) => (upTo((i + 1) / count) - upTo(i / count)) * share);
}
