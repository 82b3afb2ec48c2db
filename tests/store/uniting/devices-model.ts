import type { Backup } from '../../../src/store/backup/document.ts';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import {
  type GarmentRecord,
  type PieceRecord,
  type PlaceRecord,
  type PlanRecord,
  planIdOf,
} from '../../../src/store/records.ts';
import type { Store } from '../../../src/store/store.ts';
import type { DeviceDeed } from '../../arbitraries/devices.ts';
import { freshStore, given, nextRow, planOf, scarf, undoLast } from '../scenario.ts';

const GARMENT = 'scarf';
const DAY_MS = 86_400_000;

/** What must never be lost, kept by hand beside the devices. */
export interface Kept {
  readonly entries: Set<string>;
  readonly notes: Set<string>;
  readonly pieces: Set<string>;
  readonly deleted: Set<string>;
  readonly ticked: Set<string>;
  readonly unticked: Set<string>;
  readonly weighed: Set<string>;
  readonly yarns: Set<string>;
  /** every place that a device ever showed: make, plan's length, rows */
  readonly knitted: Set<string>;
}

export interface Devices {
  readonly stores: readonly (Store & { setClock: (days: number) => void })[];
  readonly files: Backup[];
  readonly kept: Kept;
  marks: number;
}

/** The same garment on each device, as after the first copy; `knitted`: rows that were worked before it. */
export async function devicesWith(count: number): Promise<Devices> {
  const stores = [];
  for (let i = 0; i < count; i += 1) {
    let offset = 0;
    let at = 1_700_000_000_000;
    const now = () => {
      at += 1000;
      return at + offset;
    };
    const store = await freshStore({ now, keep: undefined });
    stores.push(
      Object.assign(store, {
        setClock: (days: number) => {
          offset = days * DAY_MS;
        },
      }),
    );
  }
  const [first, ...others] = stores;
  if (first === undefined) throw new Error('no device');
  const { garment } = scarf(GARMENT, 12);
  const pieces = [pieceOf('long', 12, 2), pieceOf('cuff', 12, 1, 3)];
  given(await first.saveGarment({ ...garment, pieces }, [...plansOf('long', 12, 2), ...plansOf('cuff', 12)]));
  const file = given(await exportAll(first.box));
  for (const store of others) given(await importBackup(store.box, file, 'merge'));
  const kept: Kept = {
    entries: new Set(),
    notes: new Set(),
    pieces: new Set(garment.pieces.map(({ id }) => id)),
    deleted: new Set(),
    ticked: new Set(),
    unticked: new Set(),
    weighed: new Set(),
    yarns: new Set(),
    knitted: new Set(),
  };
  return { stores, files: [file], kept, marks: 0 };
}

/** A plan that is one make's own: it says from which recipe. */
const own = (piece: string, rows: number): PlanRecord => {
  const record = planOf(GARMENT, piece, rows);
  const recipe = {
    name: 'Body',
    from: { castOn: 20 },
    sections: [{ name: 'Garter', rows, fabric: 'garter' as const, needle: 4, shaping: [] }],
    end: 'bind off' as const,
  };
  return { ...record, plan: { ...record.plan, recipe } };
};

/** A piece of so many parts, each of so many rows, to be made so often. */
const pieceOf = (id: string, rows: number, parts = 1, makes = 1): PieceRecord => {
  const [{ recipe }] = scarf(GARMENT, rows).garment.pieces as [PieceRecord];
  const [part] = recipe.parts as [PieceRecord['recipe']['parts'][number]];
  const all = Array.from({ length: parts }, (_, i) => (i === 0 ? part : { ...part, name: `Flap ${i}` }));
  return { id, recipe: { ...recipe, makes, parts: all } };
};

const plansOf = (piece: string, rows: number, parts = 1): PlanRecord[] =>
  Array.from({ length: parts }, (_, part) => {
    const plan = { ...planOf(GARMENT, piece, rows), part };
    return { ...plan, id: planIdOf(plan) };
  });

export const rowsOfRecipe = ({ recipe }: PieceRecord): number => recipe.parts[0]?.sections[0]?.rows ?? 0;

/** What a place says, apart from any names that the store gives: of which make, row, and how long its plan is. */
export const shownAs = ({ id, rows, total }: PlaceRecord): string => `${id}: row ${rows} of ${total}`;

/** Does it as the app would; what cannot be done (nothing to undo, a begun piece to delete) is left out. */
export async function doOn(devices: Devices, deed: DeviceDeed): Promise<void> {
  const store = devices.stores[deed.device] as Devices['stores'][number];
  const places = given(await store.placesOf(GARMENT));
  if ('make' in deed) await knitOn(devices, store, deed, places[deed.make % places.length] as PlaceRecord);
  else if (deed.do === 'set clock') store.setClock(deed.days);
  else if (deed.do === 'make file') devices.files.push(given(await exportAll(store.box)));
  else if (deed.do === 'unite') await uniteWith(devices, deed);
  else await changeOn(devices, store, deed, places);
}

async function uniteWith({ stores, files }: Devices, deed: DeviceDeed & { do: 'unite' }) {
  const file = files[deed.file % files.length] as Backup;
  given(await importBackup((stores[deed.device] as Store).box, file, 'merge'));
}

async function knitOn(
  { kept }: Devices,
  store: Store,
  deed: DeviceDeed & { make: number },
  place: PlaceRecord,
): Promise<void> {
  const key = place.id;
  if (deed.do === 'knit') for (let i = 0; i < deed.rows; i += 1) await nextRow(store, key);
  if (deed.do === 'undo') await undoLast(store, key);
  if (deed.do === 'note') given(await store.append(key, { kind: 'note', text: 'a marker' }));
  if (deed.do === 'check') given(await store.append(key, { kind: 'check', count: 20 }));
  if (deed.do === 'go' && deed.row <= place.total) given(await store.goTo(key, deed.row, deed.kind));
  if (deed.do === 'rework' && deed.rows >= place.rows && place.seq > 0)
    given(await store.rework([{ key, plan: own(place.piece, deed.rows) }]));
  const after = given(await store.place(key));
  if (after.seq > 0) kept.knitted.add(shownAs(after));
  // each row on the way was shown too
  for (let row = Math.min(place.rows, after.rows); row <= after.rows; row += 1)
    kept.knitted.add(shownAs({ ...after, rows: row }));
  for (const { id } of given(await store.entriesOf(key))) kept.entries.add(id);
}

async function changeOn(
  devices: Devices,
  store: Store,
  deed: DeviceDeed,
  places: readonly PlaceRecord[],
): Promise<void> {
  const { kept } = devices;
  devices.marks += 1;
  const mark = `mark${devices.marks}`;
  const { pieces } = given(await store.garment(GARMENT));
  const change = async (how: (was: GarmentRecord) => GarmentRecord, plans: readonly PlanRecord[] = []) =>
    given(await store.changeGarment(GARMENT, how, plans));
  const piece = 'piece' in deed ? pieces[deed.piece % pieces.length] : undefined;
  const isBegun = places.some((place) => place.piece === piece?.id && place.seq > 0);
  if (deed.do === 'edit' && piece && !isBegun) {
    const edited = pieceOf(piece.id, deed.rows, deed.parts, deed.makes);
    await change(
      (was) => ({ ...was, pieces: was.pieces.map((one) => (one.id === piece.id ? edited : one)) }),
      plansOf(piece.id, deed.rows, deed.parts),
    );
  }
  if (deed.do === 'add') {
    kept.pieces.add(mark);
    await change(
      (was) => ({ ...was, pieces: [...was.pieces, pieceOf(mark, deed.rows)] }),
      [planOf(GARMENT, mark, deed.rows)],
    );
  }
  if (deed.do === 'delete' && piece && !isBegun && pieces.length > 1) {
    kept.deleted.add(piece.id);
    await change((was) => ({ ...was, pieces: was.pieces.filter((one) => one.id !== piece.id) }));
  }
  if (deed.do === 'write note') {
    kept.notes.add(mark);
    await change((was) => ({ ...was, notes: `${was.notes ?? 'Cast on loosely'}\n${mark}` }));
  }
  if (deed.do === 'tick') {
    kept.ticked.add(mark);
    await change((was) => ({ ...was, ticked: [...(was.ticked ?? []), mark] }));
  }
  if (deed.do === 'untick')
    await change((was) => {
      const [gone, ...rest] = was.ticked ?? [];
      if (gone !== undefined) kept.unticked.add(gone);
      return { ...was, ticked: rest };
    });
  if (deed.do === 'weigh') {
    kept.weighed.add(mark);
    await change((was) => ({
      ...was,
      taken: [...(was.taken ?? []), { piece: mark, make: 1, grams: 50 }],
    }));
  }
  if (deed.do === 'yarn') {
    kept.yarns.add(mark);
    await change((was) => ({ ...was, yarns: [...(was.yarns ?? []), { name: mark }] }));
  }
  if (deed.do === 'rename') await change((was) => ({ ...was, name: mark }));
}

/** Files of all go to all, in the order of `turns`, until each device has had each. */
export async function uniteAll(devices: Devices, turns: readonly number[]): Promise<void> {
  const { stores } = devices;
  for (const round of [0, 1]) {
    const order = stores
      .map((store, i) => ({ store, key: turns[(i + round * stores.length) % turns.length] ?? 0 }))
      .sort((a, b) => a.key - b.key);
    for (const { store: from } of order) {
      const file = given(await exportAll(from.box));
      for (const { store: to } of [...order].reverse())
        if (to !== from) given(await importBackup(to.box, file, 'merge'));
    }
  }
}
