import type { InHand } from './reads.ts';
import { readJson, type SmallKeep, writeJson } from './small-keep.ts';

/** Ids of the make that was last opened in this browser, of its plan and of its garment. */
export interface Seen {
  readonly make: string;
  readonly plan: string;
  readonly garment: string;
}

/** Kept beside the box: a guess at what a start will ask for, so that it is read in one go. Never trusted unread. */
export interface LastSeen {
  read(): Seen | undefined;
  keep(inHand: InHand): void;
}

export function lastSeenIn(keep: SmallKeep | undefined, box: string): LastSeen {
  const key = `${box}.seen`;
  const read = (): Seen | undefined => {
    const { make, plan, garment } = (readJson(keep, key) ?? {}) as Partial<Record<keyof Seen, unknown>>;
    if (typeof make !== 'string' || typeof plan !== 'string' || typeof garment !== 'string') return undefined;
    return { make, plan, garment };
  };
  let kept: InHand | undefined;
  return {
    read,
    keep(inHand) {
      const same = kept?.place.id === inHand.place.id && kept.plan.id === inHand.plan.id;
      kept = inHand;
      if (same) return;
      const seen: Seen = { make: inHand.place.id, plan: inHand.plan.id, garment: inHand.garment.id };
      writeJson(keep, key, seen);
    },
  };
}
