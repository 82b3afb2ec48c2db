import type { Result } from '../../knit/fault.ts';
import type { MakeKey } from '../../progress/log.ts';
import type { Box } from '../box/box.ts';
import { mayStill } from '../faults.ts';
import { entryId } from '../ids.ts';
import type { NewEntry } from '../records.ts';
import type { Wish } from './write-log.ts';

/** Asked of a make, as a screen asks it. */
export interface AskedOf extends NewEntry {
  readonly make: MakeKey;
}

interface Unsure {
  readonly asked: string;
  readonly wishes: readonly Wish[];
}

/** Wishes of which nobody can say whether they were written. */
const unsure = new WeakMap<Box, Unsure>();

/**
 * Several wishes in one transaction, each written once: where no answer came, the same asked again are the same wishes.
 * @param asked what tells it from anything else that is asked
 * @param write gets the wishes, and whether they may have been written before
 */
export async function writeOnce<T>(
  box: Box,
  asked: unknown,
  entries: readonly AskedOf[],
  write: (wishes: readonly Wish[], doubted: boolean) => Promise<Result<T>>,
): Promise<Result<T>> {
  const key = JSON.stringify([asked, entries]);
  const before = unsure.get(box);
  const doubted = before?.asked === key;
  const wishes = doubted
    ? before.wishes
    : entries.map((entry): Wish => ({ ...entry, id: entryId(box.device), at: box.now() }));
  const written = await write(wishes, doubted);
  if (mayStill(written)) unsure.set(box, { asked: key, wishes });
  else unsure.delete(box);
  return written;
}
