import type { GarmentPart, GarmentRecord } from '../records.ts';
import type { BegunIn } from './begun.ts';
import { listNames, partsOf, pieceIn, pieceName, sameParts } from './parts.ts';
import { recordOf } from './record-of-state.ts';
import { nextStamp, type Stamp } from './stamp.ts';
import { type GarmentState, namesIn, stateOf } from './state.ts';

/** Who changes a garment, and when by the device's own clock, ms. */
export interface By {
  readonly device: string;
  readonly at: number;
}

/** A garment as it was changed on this device: each part that is another now bears a stamp above all seen so far. */
export function stampedChange(was: GarmentRecord, next: GarmentRecord, by: By): GarmentRecord {
  const before = partsOf(was);
  const after = partsOf(next);
  const state = stateOf(was);
  const stamp = stampAbove(state, by);
  const changes = [takenOut(state, before, after, stamp), putIn(state, before, after, stamp)];
  const laid = layInOrder(state, before, after, stamp);
  if (!changes.includes(true) && !laid) return { ...next, ...(was.marks && { marks: was.marks }) };
  state.seen.set(by.device, stamp);
  return recordOf(state, next, asShown(before, after));
}

/** A garment of which photos were taken away on this device. */
export function withoutPhotos(was: GarmentRecord, ids: readonly string[], by: By): GarmentRecord {
  const state = stateOf(was);
  const stamp = stampAbove(state, by);
  for (const id of ids) state.photosGone.set(id, { stamp, id });
  state.seen.set(by.device, stamp);
  const parts = partsOf(was);
  const changedAt = Math.max(by.at, was.changedAt + 1);
  return recordOf(state, { ...was, changedAt }, asShown(parts, parts));
}

const stampAbove = ({ seen }: GarmentState, { device, at }: By): Stamp =>
  nextStamp([...seen.values()].sort().at(-1), at, device);

/** A piece that stays is shown by the version by which it was shown. */
const asShown =
  (before: Parts, after: Parts): BegunIn =>
  (piece) => {
    const name = pieceName(piece);
    const had = pieceIn(before.get(name) ?? {});
    return had && after.has(name) ? { makes: 1, parts: had.recipe.parts.length } : undefined;
  };

type Parts = ReadonlyMap<string, GarmentPart>;

function putIn(state: GarmentState, before: Parts, after: Parts, stamp: string): boolean {
  let changed = false;
  for (const [name, part] of after) {
    if (sameParts(before.get(name), part)) continue;
    state.parts.set(name, new Map([[stamp, part]]));
    changed = true;
  }
  return changed;
}

function takenOut(state: GarmentState, before: Parts, after: Parts, stamp: string): boolean {
  let changed = false;
  for (const [name, part] of before) {
    if (after.has(name)) continue;
    state.parts.delete(name);
    const piece = pieceIn(part);
    if (piece !== undefined) state.gone.set(piece.id, { stamp, piece });
    changed = true;
  }
  return changed;
}

function layInOrder(state: GarmentState, before: Parts, after: Parts, stamp: string): boolean {
  let changed = false;
  for (const list of listNames) {
    const names = namesIn(after, list);
    if (JSON.stringify(names) === JSON.stringify(namesIn(before, list)) || names.length === 0) continue;
    state.order.set(list, { stamp, names });
    changed = true;
  }
  return changed;
}
