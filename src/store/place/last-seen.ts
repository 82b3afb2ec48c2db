import type { MakeKey, PlanId } from '../../progress/log.ts';
import { readJson, type SmallKeep, writeJson } from '../beside/small-keep.ts';
import type { PlaceRecord } from '../records.ts';
import type { InHand, Seen } from './reads.ts';

/** All that this window remembers of places, so that nobody waits for the box where it is known, or while it is away. */
export interface LastSeen {
  /** the make last opened in this browser, kept beside the box: what a start will ask for, perhaps. Never trusted unread. */
  guess(): Seen | undefined;
  /** a place as the box has it: read, or just written */
  saw(place: PlaceRecord): void;
  place(key: MakeKey): PlaceRecord | undefined;
  /** read in the transaction that opened the box, where `key` was asked for (undefined: the make last knitted) */
  opened(key: MakeKey | undefined, inHand: InHand | undefined): void;
  /** that one, where it is what is asked for and nothing has changed since */
  atOpening(key: MakeKey | undefined): InHand | undefined;
  /** something has changed, or may have */
  changed(): void;
  /** what is given to the screen to be shown */
  shows(inHand: InHand): InHand;
  /** what the screen was given last, where it is what is asked for */
  shown(key: MakeKey | undefined): InHand | undefined;
}

export function lastSeenIn(keep: SmallKeep | undefined, box: string): LastSeen {
  const name = `${box}.seen`;
  let guess = seenFrom(readJson(keep, name));
  let first: { readonly key: MakeKey | undefined; readonly inHand: InHand } | undefined;
  let last: InHand | undefined;
  const places = new Map<MakeKey, PlaceRecord>();
  return {
    guess: () => guess,
    saw: (place) => void places.set(place.id, place),
    place: (key) => places.get(key),
    opened(key, inHand) {
      first = inHand && { key, inHand };
    },
    atOpening: (key) =>
      first !== undefined && (key === first.key || key === first.inHand.place.id) ? first.inHand : undefined,
    changed() {
      first = undefined;
    },
    shows(inHand) {
      last = inHand;
      const { place, plan, garment } = inHand;
      if (guess?.make !== place.id || guess.plan !== plan.id) {
        guess = { make: place.id, plan: plan.id, garment: garment.id };
        writeJson(keep, name, guess);
      }
      return inHand;
    },
    shown: (key) => (key === undefined || key === last?.place.id ? last : undefined),
  };
}

function seenFrom(stored: unknown): Seen | undefined {
  const { make, plan, garment } = (stored ?? {}) as Partial<Record<keyof Seen, unknown>>;
  if (typeof make !== 'string' || typeof plan !== 'string' || typeof garment !== 'string') return undefined;
  return { make: make as MakeKey, plan: plan as PlanId, garment };
}
