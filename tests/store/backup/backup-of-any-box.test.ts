import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newForm } from '../../../src/app/drafts/design/form.ts';
import { garmentToForm } from '../../../src/app/drafts/editor/garment-form.ts';
import { emptyDraft } from '../../../src/app/drafts/pattern/draft.ts';
import { planRecords } from '../../../src/app/garments/plan-records.ts';
import { stepWeight } from '../../../src/knit/row/step-weight.ts';
import type { MakeKey } from '../../../src/progress/log.ts';
import { BACKUP_LIMITS } from '../../../src/store/backup/document.ts';
import { backupFile } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { addPhoto } from '../../../src/store/garment/photos.ts';
import type { GarmentRecord, PlaceRecord } from '../../../src/store/records.ts';
import type { Store } from '../../../src/store/store.ts';
import { anyGarment } from '../../arbitraries/any-garment.ts';
import { type Deed, deed } from '../../arbitraries/knitting-log.ts';
import { share } from '../../by-turns.ts';
import { dot, everything, places } from '../knitted-box.ts';
import { codesOf, freshStore, given, nextRow, planOf, scarf, undoLast } from '../scenario.ts';

/** What she does with the app; `which` says of which garment and make, as far as there are any. */
type Command =
  | { readonly does: 'save'; readonly garment: GarmentRecord }
  | { readonly does: 'delete'; readonly which: number }
  | { readonly does: 'knit'; readonly which: number; readonly deed: Deed }
  | { readonly does: 'edit'; readonly which: number; readonly isNew: boolean }
  | { readonly does: 'copy'; readonly length: number }
  | { readonly does: 'design' }
  | { readonly does: 'plan anew'; readonly which: number }
  | { readonly does: 'photo'; readonly which: number };

const which = fc.nat(7);
const command = (): fc.Arbitrary<Command> =>
  fc.oneof(
    { weight: 3, arbitrary: fc.record({ does: fc.constant('save' as const), garment: anyGarment() }) },
    { weight: 8, arbitrary: fc.record({ does: fc.constant('knit' as const), which, deed: deed(30) }) },
    fc.record({ does: fc.constant('delete' as const), which }),
    {
      weight: 2,
      arbitrary: fc.record({ does: fc.constant('edit' as const), which, isNew: fc.boolean() }),
    },
    fc.record({ does: fc.constant('copy' as const), length: fc.constantFrom(10, 20_001, 450_000) }),
    fc.record({ does: fc.constant('design' as const) }),
    fc.record({ does: fc.constant('plan anew' as const), which }),
    fc.record({ does: fc.constant('photo' as const), which }),
  );

async function knit(store: Store, key: MakeKey, { total }: { total: number }, it: Deed) {
  if (it.do === 'finish') return nextRow(store, key);
  if (it.do === 'undo') return undoLast(store, key);
  if (it.do === 'go') return store.goTo(key, Math.min(it.row, total), it.kind);
  if (it.do === 'note') return store.append(key, { kind: 'note', text: 'a marker\u0000\ud83e' });
  return store.append(key, { kind: 'check', count: it.count });
}

/** Whatever is asked for may be refused; what is not is in the box. */
async function done(store: Store, it: Command): Promise<void> {
  if (it.does === 'save') {
    const plans = planRecords(it.garment);
    if (plans.ok) await store.saveGarment(it.garment, plans.value);
    return;
  }
  if (it.does === 'copy') {
    await store.setSetting('pattern new', {
      ...emptyDraft,
      text: 'Row 1: k2.\n'.padEnd(it.length, 'Knit. '),
    });
    return;
  }
  if (it.does === 'design') {
    await store.setSetting('design new', { ...newForm(), body: { ...newForm().body, chest: Number.NaN } });
    return;
  }
  const list = given(await store.list());
  const id = list[it.which % Math.max(1, list.length)]?.id;
  if (id === undefined) return;
  if (it.does === 'delete') await store.deleteGarment(id);
  if (it.does === 'photo') await addPhoto(store.box, id, dot());
  if (it.does === 'edit') {
    const form = garmentToForm(given(await store.garment(id)));
    const name = it.isNew ? 'draft new' : `draft ${id}`;
    await store.setSetting(name, { version: 2, garment: id, at: 5, form });
  }
  const all = given(await store.placesOf(id));
  const place = all[it.which % Math.max(1, all.length)];
  if (place === undefined) return;
  if (it.does === 'knit') await knit(store, place.id, place, it.deed);
  if (it.does === 'plan anew') await planAnew(store, place);
}

/** As the app does it: a plan made for one make says of which recipe it is. */
async function planAnew(store: Store, { id, garment, piece, part }: PlaceRecord): Promise<void> {
  const { pieces } = given(await store.garment(garment));
  const recipe = pieces.find((one) => one.id === piece)?.recipe.parts[part];
  if (recipe === undefined) return;
  const record = planOf(garment, piece, 40);
  await store.rework([{ key: id, plan: { ...record, plan: { ...record.plan, recipe } } }]);
}

async function saveAndRestore(store: Store): Promise<void> {
  const file = given(await backupFile(store.box));
  expect(file.without).toEqual([]);
  const other = await freshStore();
  given(await importBackup(other.box, given(readBackup(file.text)), 'replace'));
  expect(await everything(other)).toEqual(await everything(store));
  for (const { id } of given(await store.list()))
    expect(await places(other, id)).toEqual(await places(store, id));
  other.close();
}

describe('a backup can be made and restored to the same', () => {
  it('of a box after anything that was done with the app', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(command(), { maxLength: 25 }), async (commands) => {
        const store = await freshStore();
        for (const one of commands) await done(store, one);
        await saveAndRestore(store);
        store.close();
      }),
      { numRuns: share(25), endOnFailure: true },
    );
  }, 120_000);

  it('while a pattern of more than 20,000 characters is being copied in', async () => {
    const store = await freshStore();
    await done(store, { does: 'copy', length: 20_001 });
    await saveAndRestore(store);
    store.close();
  });

  it('while a garment with the longest of ids is being edited', async () => {
    const store = await freshStore();
    const id = 'g'.repeat(64);
    const { garment, plans } = scarf(id);
    given(await store.saveGarment(garment, plans));
    await done(store, { does: 'edit', which: 0, isNew: false });
    await saveAndRestore(store);
    store.close();
  });

  it('of ten times as many blankets of 300 rows on 600 stitches as were too many once', () => {
    const blanket = {
      row: [
        {
          repeat: [
            { work: 'k', times: 1 },
            { work: 'p', times: 1 },
          ],
          until: { left: 0 },
        },
      ],
    } as const;
    const weight = 300 * stepWeight(blanket.row, 600);
    expect(10 * 112 * weight).toBeLessThan(BACKUP_LIMITS.work);
  });
});

describe('what no backup could carry', () => {
  it('is refused as it is to be kept, and said', async () => {
    const store = await freshStore();
    let deep: unknown = 'too deep';
    for (let i = 0; i < 60; i += 1) deep = [deep];
    expect(codesOf(await store.setSetting('draft new', deep))).toEqual(['not-storable']);
    expect(given(await store.settings())['draft new']).toBeUndefined();
    store.close();
  });

  it('but lies in the box all the same is named, and everything else is in the file', async () => {
    const store = await freshStore();
    for (const id of ['scarf', 'shawl']) {
      const { garment, plans } = scarf(id);
      given(await store.saveGarment({ ...garment, name: `The ${id}` }, plans));
    }
    given(
      await store.box.door.write(['garments', 'settings'], async (tx) => {
        const stores = tx.objectStore('garments');
        await stores.put({ ...((await stores.get('shawl')) as GarmentRecord), createdAt: Number.NaN });
        await tx.objectStore('settings').put({ constructor: 1 }, 'of another time');
      }),
    );
    const file = given(await backupFile(store.box));
    expect(file.without.map(({ code, figures }) => [code, figures])).toEqual([
      ['backup-without', { whatText: 'The shawl', pathText: 'garments.0.createdAt' }],
      ['backup-without', { whatText: 'of another time', pathText: 'settings' }],
    ]);
    expect(given(readBackup(file.text)).garments.map(({ name }) => name)).toEqual(['The scarf']);
    store.close();
  });
});
