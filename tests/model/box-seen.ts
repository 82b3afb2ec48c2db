import type { LogEntry, MakeKey } from '../../src/progress/log.ts';
import type { GarmentRecord, PhotoRecord, PlaceRecord, PlanRecord } from '../../src/store/records.ts';

/** A device's box as it lies on its disk, read past the app. */
export interface BoxSeen {
  readonly garments: ReadonlyMap<string, GarmentRecord>;
  readonly places: ReadonlyMap<MakeKey, PlaceRecord>;
  readonly plans: ReadonlyMap<string, PlanRecord>;
  readonly log: ReadonlyMap<string, LogEntry>;
  readonly photos: ReadonlyMap<string, PhotoRecord>;
}

/** A disk with the name of the box on it. */
interface Boxed {
  readonly disk: { readonly sound: IDBFactory };
  readonly name: string;
}

const stores = ['garments', 'places', 'plans', 'log', 'photos'] as const;

export async function seeBox({ disk, name }: Boxed): Promise<BoxSeen> {
  const db = await asked(disk.sound.open(name));
  const tx = db.transaction(stores, 'readonly');
  const all = await Promise.all(
    stores.map(async (store) => {
      const records: { readonly id: string }[] = await asked(tx.objectStore(store).getAll());
      return new Map(records.map((record) => [record.id, record]));
    }),
  );
  db.close();
  const [garments, places, plans, log, photos] = all as unknown as [
    BoxSeen['garments'],
    BoxSeen['places'],
    BoxSeen['plans'],
    BoxSeen['log'],
    BoxSeen['photos'],
  ];
  return { garments, places, plans, log, photos };
}

const asked = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result));
    request.addEventListener('error', () => reject(request.error ?? new Error('nothing read')));
  });

/** Fields in the order of their names: which came first says nothing. */
const byName = (_: string, value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
    : value;

const prints = new WeakMap<object, string>();

/** What is knitted by a plan, row by row: two plans are the same to her where these are. */
export function fingerprint(plan: PlanRecord['plan']): string {
  const known = prints.get(plan);
  if (known !== undefined) return known;
  const rows = plan.rows.map(({ side, steps, before, after }) => [side, steps, before, after]);
  const print = JSON.stringify([plan.start, rows, plan.recipe], byName);
  prints.set(plan, print);
  return print;
}
