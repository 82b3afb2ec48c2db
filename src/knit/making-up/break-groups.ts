import type { Break, Consequence } from './break.ts';
import { alike } from './consequences.ts';

/** Breaks that are mended by one and the same. */
export type Group = readonly [Break, ...Break[]];

/** A body that is no longer level has another armhole with it: both are mended in one, where they can be. */
export function atOnce(groups: readonly Group[]): readonly (readonly Group[])[] {
  const isBody = ([{ what }]: Group) =>
    (what.kind === 'level' && what.of === 'above the underarm') ||
    (what.kind === 'seam' && what.of === 'armhole');
  const bodies = groups.filter(isBody);
  if (!bodies.some(([{ what }]) => what.kind === 'level')) return groups.map((group) => [group]);
  return [bodies, ...groups.filter((group) => !isBody(group)).map((group) => [group])];
}

/** What is mended by one and the same: both sides of a body, all edges of a band, both armholes of a pair of sleeves. */
export function together(found: readonly Break[]): readonly Group[] {
  const known = new Map<string, Break[]>();
  const groups = alike(found).flatMap((group): (readonly Break[])[] => {
    const name = nameOf(group[0]);
    if (name === undefined) return [group];
    const own = known.get(name);
    if (own) own.push(...group);
    else known.set(name, [...group]);
    return own ? [] : [known.get(name) ?? []];
  });
  return groups
    .flatMap(([first, ...others]) => (first ? [[first, ...others] as const] : []))
    .sort(([a], [b]) => rank(a) - rank(b));
}

/** What breaks under one name is one: the armhole of one arm begins at the back, that of the other at the front. */
function nameOf({ what, worked }: Break): string | undefined {
  if (what.kind === 'pick up') return `band ${what.band}`;
  const [sleeve, body] = worked?.lines ?? [];
  if (what.kind !== 'seam' || what.of !== 'armhole' || !sleeve || !body) return undefined;
  return `armhole ${sleeve.laid[0]?.stretch.piece} ${sleeve.mm > body.mm}`;
}

/** Rows that lie beside each other first: lengths hang on them, and on both what is picked up. */
const rank = ({ what }: Break): number =>
  what.kind === 'level'
    ? 0
    : what.kind === 'pick up'
      ? 3
      : what.kind === 'seam' && what.unit === 'mm'
        ? 2
        : 1;

export function changedBy(what: Consequence): string | undefined {
  return what.kind === 'seam' || what.kind === 'level' ? what.piece : undefined;
}

export const isCounted = ({ what }: Break): boolean =>
  what.kind === 'level' || (what.kind === 'seam' && what.unit !== 'mm');

/** Rows or stitches that a counted edge is off by. */
export const offBy = ({ what, worked, meant = 0 }: Break): number => {
  const [a, b] = worked?.lines ?? [];
  if (what.kind === 'level') return Math.abs((a?.rows ?? 0) - (b?.rows ?? 0) - meant);
  return what.kind === 'seam' ? Math.abs(what.now - what.other) : 0;
};

/** By how much the edge that was changed is longer than it is meant to be beside its other, mm. */
export function longerBy(one: Break | undefined): number {
  if (one?.what.kind !== 'seam') return 0;
  const { what, worked } = one;
  const [a, b] = worked?.lines ?? [];
  const { ease = 0 } = worked?.joint?.kind === 'seam' ? worked.joint : {};
  if (!a || !b || ease === 0) return what.longerMm;
  const first = a.mm - b.mm * (1 + ease / 100);
  return a.laid.some(({ stretch }) => stretch.piece === what.piece) ? first : -first;
}
