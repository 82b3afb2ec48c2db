import type { Page } from 'playwright-core';
import { planRecords } from '../../src/app/garments/plan-records.ts';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import type { Garment } from '../../src/knit/piece/garment.ts';
import { makeKey } from '../../src/progress/log.ts';
import type { GarmentRecord } from '../../src/store/records.ts';
import { longPanel } from './workload.ts';

/** How full a device is. */
export interface Fullness {
  readonly garments: number;
  readonly entries: number;
}

export const few: Fullness = { garments: 3, entries: 100 };
export const many: Fullness = { garments: 300, entries: 100_000 };

/** The make that is in hand on a device filled by `fill`; its log holds a tenth of all entries. */
export const makeInHand = makeKey({ garment: 'g0', piece: 'back', part: 0, make: 1 });

/** A garment of one panel of 2,000 rows, and its only make. */
export const longGarment: Garment = { name: 'Long panel', pieces: [longPanel(2000)] };
export const longMake = makeKey({ garment: 'long', piece: 'panel', part: 0, make: 1 });

export function recordOf(id: string, garment: Garment) {
  const record: GarmentRecord = {
    ...garment,
    id,
    createdAt: 1,
    changedAt: 1,
    pieces: garment.pieces.map((recipe) => ({ id: recipe.name.toLowerCase(), recipe })),
  };
  const plans = planRecords(record);
  if (!plans.ok) throw new Error(JSON.stringify(plans.faults[0]));
  return { garment: record, plans: plans.value };
}

/**
 * Writes so many copies of the sample, and of one long panel, with so many rows knitted, into the database of the page that
 * shows the app: the records as the store writes them (src/store/box/schema.ts), which the app must have made before.
 */
export async function fill(page: Page, fullness: Fullness): Promise<void> {
  const sample = recordOf('g', sampleGarment);
  await page.evaluate(writeCopies, { ...sample, ...fullness });
  const long = recordOf('long', longGarment);
  await page.evaluate(writeCopies, { ...long, garments: 0, entries: 0 });
}

/** Sets how many rows of a make are worked; the page shows any file of the app's host that is not the app. */
export const setRows = (page: Page, make: string, rows: number): Promise<void> =>
  page.evaluate(writeRows, { make, rows });

async function writeRows({ make, rows }: { readonly make: string; readonly rows: number }): Promise<void> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open('ridgeline');
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const tx = db.transaction('places', 'readwrite');
  const places = tx.objectStore('places');
  const found = places.get(make);
  found.onsuccess = () => places.put({ ...(found.result as object), rows });
  await new Promise<void>((resolve, reject) => {
    tx.oncomplete = () => resolve();
    tx.onabort = () => reject(tx.error);
  });
  db.close();
}

type Template = ReturnType<typeof recordOf> & Fullness;

/** Runs in the page. `garments` 0: the garment itself under its own id. */
async function writeCopies({ garment, plans, garments, entries }: Template): Promise<void> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open('ridgeline');
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const now = Date.now();
  const begin = () => db.transaction(['garments', 'summaries', 'plans', 'log', 'places'], 'readwrite');
  const ended = (tx: IDBTransaction) =>
    new Promise<void>((resolve, reject) => {
      tx.oncomplete = () => resolve();
      tx.onabort = () => reject(tx.error);
    });
  let tx = begin();
  const ids = garments === 0 ? [garment.id] : Array.from({ length: garments }, (_, i) => `g${i}`);
  const logged = new Map<string, number>();
  let made = 0;
  const rowsOf = new Map(plans.map((plan) => [`${plan.piece}/${plan.part}`, plan.plan.rows.length]));
  const makesOf = (id: string) =>
    garment.pieces.flatMap(({ id: piece, recipe }) =>
      recipe.parts.flatMap((_, part) =>
        Array.from({ length: recipe.makes }, (_unused, i) => ({ garment: id, piece, part, make: i + 1 })),
      ),
    );

  /** Rows finished up and down between the first and the last but one, so that any number can be logged. */
  const rowAt = (n: number, total: number): number => {
    const span = Math.max(1, total - 2);
    const at = n % (2 * span);
    return at < span ? at + 1 : 2 * span - at;
  };
  const log = async (make: string, plan: string, total: number, count: number) => {
    for (let n = 0; n < count; n += 1) {
      // a device fills by small transactions, and its database is not as one great one leaves it
      if (made % 100 === 99) {
        const full = ended(tx);
        tx.commit();
        await full;
        tx = begin();
      }
      const up = n === 0 || rowAt(n, total) > rowAt(n - 1, total);
      tx.objectStore('log').put({
        id: `bench-${String(made).padStart(9, '0')}`,
        make,
        seq: n + 1,
        at: now - (entries - made) * 1000,
        kind: up ? 'row' : 'place',
        row: rowAt(n, total),
        ...(n === 0 ? { plan } : {}),
      });
      made += 1;
    }
    logged.set(make, count);
  };

  const all = ids.flatMap((id) => makesOf(id));
  const share = Math.floor((entries * 0.9) / Math.max(1, all.length - 1));
  for (const [i, id] of ids.entries()) {
    tx.objectStore('garments').put({ ...garment, id, name: `${garment.name} ${i + 1}`, createdAt: now - i });
    for (const plan of plans)
      tx.objectStore('plans').put({ ...plan, id: plan.id.replace(garment.id, id), garment: id });
    const makes = makesOf(id);
    let rows = 0;
    for (const make of makes) {
      const key = `${id}/${make.piece}/${make.part}/${make.make}`;
      const total = rowsOf.get(`${make.piece}/${make.part}`) ?? 0;
      const plan = `${id}/${make.piece}/${make.part}/s/1`;
      const first = make === makes[0] && i === 0;
      const count = entries === 0 ? 0 : first ? entries - share * (all.length - 1) : share;
      await log(key, plan, total, count);
      rows += total;
      const at = count === 0 ? 0 : first ? now : now - 1000 - i;
      tx.objectStore('places').put({
        ...make,
        id: key,
        plan,
        rows: count === 0 ? 0 : rowAt(count - 1, total),
        total,
        seq: count,
        at,
        touched: at,
      });
    }
    tx.objectStore('summaries').put({
      id,
      name: `${garment.name} ${i + 1}`,
      createdAt: now - i,
      changedAt: now,
      pieces: garment.pieces.length,
      makes: makes.length,
      rows,
    });
  }
  await ended(tx);
  db.close();
}
