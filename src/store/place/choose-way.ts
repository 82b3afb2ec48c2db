import { fault, type Result } from '../../knit/fault.ts';
import type { MakeKey } from '../../progress/log.ts';
import { leftBy, type Way } from '../../progress/ways.ts';
import type { Box } from '../box/box.ts';
import type { Tx } from '../box/schema.ts';
import { Refusal } from '../faults.ts';
import type { PlaceRecord } from '../records.ts';
import { present } from './reads.ts';
import { withWaysTold } from './told-ways.ts';
import { checkPlace, logOf, tapStores, type Wish, writeMove } from './write-log.ts';
import { writeOnce } from './write-once.ts';

/**
 * Goes on by one of the ways that devices went without each other: an entry that leaves the others, which stay in the
 * log and can be taken up again. Faults: 'no-such-make', 'no-such-entry', 'place-moved'.
 */
export async function chooseWay(
  box: Box,
  make: MakeKey,
  way: Way,
  now: PlaceRecord,
): Promise<Result<PlaceRecord>> {
  const asked = { kind: 'place', make, row: way.rows, plan: way.plan, from: now.rows, by: now.plan } as const;
  const written = await writeOnce(box, [way], [asked], ([wish], doubted) =>
    box.door.write(tapStores, (tx, again) => writeChoice(tx, wish as Wish, way, again || doubted)),
  );
  if (written.ok) box.tell({ kind: 'place', key: make });
  return written;
}

async function writeChoice(tx: Tx<'readwrite'>, wish: Wish, way: Way, again: boolean): Promise<PlaceRecord> {
  const place = present(await tx.objectStore('places').get(wish.make), 'no-such-make');
  if (again && (await tx.objectStore('log').get(wish.id)) !== undefined) return place;
  checkPlace(wish, place);
  const settles = leftBy(await logOf(tx, wish.make), way.end);
  if (settles === undefined) throw new Refusal(fault('no-such-entry'));
  const moved = await writeMove(tx, { ...wish, row: way.rows }, place);
  const entry = await tx.objectStore('log').get(wish.id);
  if (entry !== undefined) await tx.objectStore('log').put({ ...entry, follows: way.end, settles });
  return withWaysTold(tx, moved);
}
