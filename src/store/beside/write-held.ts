import type { Fault, Result } from '../../knit/fault.ts';
import { type MakeKey, moves } from '../../progress/log.ts';
import type { Door } from '../box/door.ts';
import { Refusal } from '../faults.ts';
import type { Journal } from '../place/journal.ts';
import { withWaysTold } from '../place/told-ways.ts';
import { tapStores, type Wish, writeWish } from '../place/write-log.ts';
import type { PlaceRecord } from '../records.ts';

/** What became of the taps that were kept outside the box. */
export interface HeldWritten {
  /** of the makes that were moved */
  readonly places: readonly PlaceRecord[];
  readonly entries: number;
  /** why one was not written: it does not fit what is in the box by now */
  readonly refused: Fault | undefined;
}

/** Writes what is held into the box in one transaction; undefined where it has to wait. Loaded when something is held. */
export async function writeHeld(door: Door, journal: Journal): Promise<Result<HeldWritten | undefined>> {
  const held = journal.taps();
  const written = await door.write([...tapStores, 'summaries'], async (tx) => {
    const places = new Map<MakeKey, PlaceRecord>();
    const refused = new Map<MakeKey, Fault>();
    let entries = 0;
    // a box that has lost its garments may get them back from a backup: the taps wait for that
    if ((await tx.objectStore('summaries').count()) === 0) return undefined;
    for (const { wish } of held) {
      const isMove = moves(wish.kind);
      // a tap means the place that the tap before it makes: that it fits now would be chance
      if (isMove && refused.has(wish.make)) continue;
      try {
        const place = await withWaysTold(tx, await writeWish(tx, isMove ? wish : anywhere(wish), true));
        places.set(place.id, place);
        entries += 1;
      } catch (error) {
        // the garment is gone, another window was there first: it holds up no other
        if (!(error instanceof Refusal)) throw error;
        refused.set(wish.make, error.fault);
      }
    }
    return { places: [...places.values()], entries, refused: [...refused.values()][0] };
  });
  if (written.ok && written.value) for (const { wish } of held) journal.drop(wish.id);
  return written;
}

/** What she noted is kept, wherever the place is by now. */
const anywhere = ({ from: _from, by: _by, ...wish }: Wish): Wish => wish;
