import { readJson, type SmallKeep, writeJson } from '../beside/small-keep.ts';
import type { InHand, Seen } from './reads.ts';

/** Kept beside the box: a guess at what a start will ask for, so that it is read in one go. Never trusted unread. */
export interface LastSeen {
  seen(): Seen | undefined;
  keep(inHand: InHand): void;
}

export function lastSeenIn(keep: SmallKeep | undefined, box: string): LastSeen {
  const key = `${box}.seen`;
  let seen = seenFrom(readJson(keep, key));
  return {
    seen: () => seen,
    keep({ place, plan, garment }) {
      if (seen?.make === place.id && seen.plan === plan.id) return;
      seen = { make: place.id, plan: plan.id, garment: garment.id };
      writeJson(keep, key, seen);
    },
  };
}

function seenFrom(stored: unknown): Seen | undefined {
  const { make, plan, garment } = (stored ?? {}) as Partial<Record<keyof Seen, unknown>>;
  if (typeof make !== 'string' || typeof plan !== 'string' || typeof garment !== 'string') return undefined;
  return { make, plan, garment };
}
