import type { Result } from '../../../src/knit/fault.ts';
import { type Way, waysIn } from '../../../src/progress/ways.ts';
import type { ImportMode } from '../../../src/store/backup/document.ts';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { forgetWayBack, hideWayBack, takeBack } from '../../../src/store/backup/way-back.ts';
import { addPhoto, deletePhoto } from '../../../src/store/garment/photos.ts';
import type { Writes } from '../../../src/store/interface.ts';
import { chooseWay } from '../../../src/store/place/choose-way.ts';
import type { PlaceRecord } from '../../../src/store/records.ts';
import type { Store } from '../../../src/store/store.ts';
import { dot, knittedBox } from '../knitted-box.ts';
import { freshStore, given, LONG, nextRow, planOf, scarf } from '../scenario.ts';

/** What is done before, through a sound store, and what is then tried. */
export interface Path {
  readonly before?: (store: Store) => Promise<unknown>;
  /** nothing can be kept outside the box either */
  readonly alone?: true;
  readonly go: (store: Store) => Promise<Result<unknown>>;
}

const backup = given(await exportAll((await knittedBox()).box));
const CUFF = 'scarf/cuff/0/1';
/** the path for which a tap is held before it begins */
export const WRITE_HELD = 'write what was held';

const readIn = (mode: ImportMode) => (store: Store) => importBackup(store.box, backup, mode);
const withPhoto = (store: Store) => addPhoto(store.box, 'scarf', dot());

const finishBoth = (store: Store) =>
  store.finishRows([
    { key: LONG, row: 4 },
    { key: CUFF, row: 1 },
  ]);

/** A method of the store that writes has its path here, or this does not compile. */
const ofStore: { readonly [Name in keyof Writes]: Readonly<Record<string, Path>> } = {
  // tried again it is the row that was shown
  finishRow: {
    'finish a row': { go: (store) => store.finishRow(LONG, 4) },
    'finish a row that nothing else takes': { go: (store) => store.finishRow(LONG, 4), alone: true },
  },
  finishRows: {
    'finish rows of two': { go: finishBoth },
    'finish rows of two that nothing else takes': { go: finishBoth, alone: true },
  },
  undo: { undo: { go: (store) => store.undo(LONG, 3) } },
  goTo: { 'go to a row': { go: (store) => store.goTo(LONG, 7, 'place') } },
  append: { 'note something': { go: (store) => store.append(LONG, { kind: 'note', text: 'green thread' }) } },
  rework: {
    'plan two parts anew': {
      go: (store) =>
        store.rework([
          { key: LONG, plan: planOf('scarf', 'long', 50), from: 3 },
          { key: CUFF, plan: planOf('scarf', 'cuff', 16), from: 0 },
        ]),
    },
    'plan a part anew and another piece with it': {
      go: (store) =>
        store.rework([{ key: LONG, plan: planOf('scarf', 'long', 50), from: 3 }], {
          id: 'scarf',
          change: (was) => ({ ...was, pieces: [...was.pieces] }),
          plans: [planOf('scarf', 'cuff', 16)],
        }),
    },
  },
  saveGarment: {
    'save a garment': {
      go: (store) => {
        const { garment, plans } = scarf('hat');
        return store.saveGarment(garment, plans);
      },
    },
  },
  changeGarment: {
    'note something on a garment': {
      go: (store) => store.changeGarment('scarf', (was) => ({ ...was, notes: 'for the beach' })),
    },
    'change the rows of a garment': {
      go: (store) =>
        store.changeGarment('scarf', (was) => ({ ...was, pieces: [...was.pieces] }), [
          planOf('scarf', 'cuff', 16),
        ]),
    },
  },
  deleteGarment: { 'delete a garment': { before: withPhoto, go: (store) => store.deleteGarment('scarf') } },
  setSetting: { 'change a setting': { go: (store) => store.setSetting('hand', 'left') } },
  probe: { [WRITE_HELD]: { go: (store) => store.probe() } },
};

/** The way that another device went meanwhile, with the place beside which it was shown. */
let other: { readonly way: Way; readonly place: PlaceRecord } | undefined;

async function partedFromTablet(store: Store): Promise<void> {
  const tablet = await freshStore({ now: () => 1000 });
  given(await importBackup(tablet.box, given(await exportAll(store.box)), 'merge'));
  for (const [device, rows] of [
    [store, 50],
    [tablet, 80],
  ] as const) {
    const { plan, ...record } = planOf('scarf', 'long', rows);
    const recipe = { name: 'Body', from: { castOn: 20 }, sections: [], end: 'bind off' as const };
    given(await device.rework([{ key: LONG, plan: { ...record, plan: { ...plan, recipe } } }]));
    given(await nextRow(device, LONG));
  }
  // that she went further here is what tells which one is shown
  given(await nextRow(store, LONG));
  given(await importBackup(store.box, given(await exportAll(tablet.box)), 'merge'));
  tablet.close();
  const [way] = waysIn(given(await store.entriesOf(LONG))).open;
  if (way === undefined) throw new Error('one way only');
  other = { way, place: given(await store.place(LONG)) };
}

/** What writes into the box and is loaded when it is asked for. */
const besideIt: Readonly<Record<string, Path>> = {
  'go on by the other way': {
    before: partedFromTablet,
    go: async (store) => {
      if (other === undefined) throw new Error('one way only');
      return chooseWay(store.box, LONG, other.way, other.place);
    },
  },
  'merge a backup': { go: readIn('merge') },
  'replace by a backup': { go: readIn('replace') },
  'take a backup back': { before: readIn('replace'), go: (store) => takeBack(store.box) },
  'let a backup stay': { before: readIn('merge'), go: (store) => hideWayBack(store.box) },
  'forget the way back': { before: readIn('merge'), go: (store) => forgetWayBack(store.box) },
  'add a photo': { go: withPhoto },
  'put a photo in the place of another': {
    before: withPhoto,
    go: async (store) =>
      addPhoto(store.box, 'scarf', dot(), { caption: 'red', instead: await firstPhoto(store) }),
  },
  'delete a photo': {
    before: withPhoto,
    go: async (store) => deletePhoto(store.box, (await firstPhoto(store)) ?? ''),
  },
};

/** As the screen read it before the storage failed. */
export const photosRead = new WeakMap<Store, string>();
const firstPhoto = async (store: Store) => photosRead.get(store);

export const paths: Readonly<Record<string, Path>> = {
  ...Object.assign({}, ...Object.values(ofStore)),
  ...besideIt,
};
