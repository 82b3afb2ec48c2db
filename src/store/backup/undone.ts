import { type GarmentId, parseMakeKey } from '../../progress/log.ts';
import type { GarmentRecord } from '../records.ts';
import type { Backup } from './document.ts';
import { mergeBackups } from './merge.ts';
import { byId, stableJson } from './stable.ts';

/** What a change made of one list: ids of what came or became another, and what went or was another before. */
export interface ListChange<T> {
  readonly came: readonly string[];
  readonly went: readonly T[];
}

/** What a change made of a garment. */
export interface GarmentChanged {
  readonly id: GarmentId;
  readonly before: GarmentRecord | undefined;
  readonly after: GarmentRecord | undefined;
  readonly plans: ListChange<Backup['plans'][number]>;
  readonly entries: ListChange<Backup['entries'][number]>;
}

type Item = { readonly id: string };

const same = (a: unknown, b: unknown): boolean => stableJson(a) === stableJson(b);

export function listChange<T extends Item>(before: readonly T[], after: readonly T[]): ListChange<T> {
  const was = new Map(before.map((item) => [item.id, stableJson(item)]));
  const is = new Map(after.map((item) => [item.id, stableJson(item)]));
  return {
    came: after.filter(({ id }) => was.get(id) !== is.get(id)).map(({ id }) => id),
    went: before.filter(({ id }) => was.get(id) !== is.get(id)),
  };
}

/**
 * A garment with a change of it undone: what was knitted, noted or changed since stays.
 * @param now all of it as it is; undefined where it is not there
 * @returns undefined where it is not to be there; `now` itself where it stays as it is
 */
export function undone(changed: GarmentChanged, now: Backup | undefined, head: Backup): Backup | undefined {
  const { before, after, plans, entries } = changed;
  const [garment] = now?.garments ?? [];
  const went = { ...head, garments: before ? [before] : [], plans: plans.went, entries: entries.went };
  // what she deleted since does not come back; what was taken away does
  if (now === undefined || garment === undefined) return after === undefined ? (went as Backup) : undefined;
  // taken away and made anew since
  if (after === undefined) return mergeBackups(went as Backup, now);
  const came = new Set(entries.came);
  const log = byId([...now.entries.filter(({ id }) => !came.has(id)), ...entries.went]);
  if (before === undefined) return log.length === 0 && same(garment, after) ? undefined : now;
  const begun = new Set(log.map((entry) => parseMakeKey(entry.make)?.piece));
  const back = same(garment, after) ? before : garmentBack(before, after, garment);
  const pieces = piecesBack(before, after, garment, begun);
  const whole = same(pieces, back.pieces) ? back : { ...back, pieces };
  return { ...now, garments: [whole], plans: plansBack(changed, now, whole, log), entries: log };
}

/** Of each field what it was before, but where it was changed since. */
function garmentBack(before: GarmentRecord, after: GarmentRecord, now: GarmentRecord): GarmentRecord {
  const [was, is, changed] = [before, after, now].map((one) => new Map(Object.entries(one)));
  const names = new Set([...(was?.keys() ?? []), ...(changed?.keys() ?? [])]);
  const fields = [...names].map((name) => [
    name,
    (same(changed?.get(name), is?.get(name)) ? was : changed)?.get(name),
  ]);
  const back = Object.fromEntries(fields.filter(([, value]) => value !== undefined)) as GarmentRecord;
  return { ...back, changedAt: Math.max(now.changedAt, before.changedAt) + 1 };
}

/** One that came and was begun or changed since stays; so does one that she took away since stay away. */
function piecesBack(
  before: GarmentRecord,
  after: GarmentRecord,
  now: GarmentRecord,
  begun: ReadonlySet<string | undefined>,
): GarmentRecord['pieces'] {
  const is = new Map(after.pieces.map((piece) => [piece.id, piece]));
  const there = new Map(now.pieces.map((piece) => [piece.id, piece]));
  const had = new Set(before.pieces.map(({ id }) => id));
  const back = before.pieces.flatMap((piece) => {
    const current = there.get(piece.id);
    if (current === undefined) return is.has(piece.id) ? [] : [piece];
    return [same(current, is.get(piece.id)) ? piece : current];
  });
  const since = now.pieces.filter(
    (piece) => !had.has(piece.id) && (begun.has(piece.id) || !same(piece, is.get(piece.id))),
  );
  return [...back, ...since];
}

/** A plan that came stays where a row that stays names it, or a piece that stays is planned by it. */
function plansBack(
  { before, plans }: GarmentChanged,
  now: Backup,
  whole: GarmentRecord,
  log: Backup['entries'],
): Backup['plans'] {
  const came = new Set(plans.came);
  const named = new Set(log.map(({ plan }) => plan));
  const was = new Map(before?.pieces.map((piece) => [piece.id, piece]));
  const own = new Set(
    whole.pieces.filter((piece) => !same(piece, was.get(piece.id))).map((piece) => piece.id),
  );
  const stays = now.plans.filter(({ id, piece }) => !came.has(id) || named.has(id) || own.has(piece));
  const kept = new Set(stays.map(({ id }) => id));
  return byId([...stays, ...plans.went.filter(({ id }) => !kept.has(id))]);
}
