import { describe, expect, it } from 'vitest';
import type { LogEntry } from '../../../src/progress/log.ts';
import { beyondUse } from '../../../src/store/backup/at-the-door.ts';
import { byGarment } from '../../../src/store/backup/by-garment.ts';
import { headOf, markOf } from '../../../src/store/backup/contents.ts';
import type { Backup } from '../../../src/store/backup/document.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { mergeBackups, photosGone, united } from '../../../src/store/backup/merge.ts';
import { namedByContent, withPlansNamed } from '../../../src/store/backup/named-by-content.ts';
import { isOwnSetting } from '../../../src/store/backup/own-settings.ts';
import { deedOf, previewOf } from '../../../src/store/backup/preview.ts';
import { byId, oneOf, stableJson } from '../../../src/store/backup/stable.ts';
import { type GarmentRecord, type PieceRecord, planId, planIdOf } from '../../../src/store/records.ts';
import { memoryKeep } from '../beside/memory-keep.ts';
import { freshStore, given, LONG, planOf, scarf } from '../scenario.ts';

const { garment, plans } = scarf();
const [long, cuff] = garment.pieces as [PieceRecord, PieceRecord];
type Entry = Backup['entries'][number];

const backup = (of: Partial<Backup> = {}): Backup =>
  ({
    ...headOf('aa', 5000),
    garments: [garment],
    plans: byId(plans),
    entries: [],
    settings: {},
    photos: [],
    ...of,
  }) as Backup;
const entry = (id: string, of: Partial<LogEntry> = {}): Entry =>
  ({ id, make: LONG, seq: 1, at: 1, kind: 'row', row: 1, plan: plans[0]?.id, ...of }) as Entry;
const photo = (id: string) => ({ id, garment: 'scarf', at: 1, type: 'image/png', data: '' }) as never;

describe('two backups as one', () => {
  it('bear the later time, and the device whose letters come last', () => {
    const both = mergeBackups(backup({ device: 'bb', madeAt: 5 }), backup({ device: 'aa', madeAt: 9 }));
    expect([both.device, both.madeAt]).toEqual(['bb', 9]);
    expect(mergeBackups(backup({ device: 'aa', madeAt: 9 }), backup({ device: 'bb', madeAt: 5 }))).toEqual(
      both,
    );
  });

  it('have every setting of both, and of two of a name the same one whichever comes first', () => {
    const [one, two] = [backup({ settings: { a: 1, b: 'x' } }), backup({ settings: { b: 'y', c: [2] } })];
    expect(mergeBackups(one, two).settings).toEqual({ a: 1, b: 'y', c: [2] });
    expect(mergeBackups(two, one).settings).toEqual({ a: 1, b: 'y', c: [2] });
    expect(Object.keys(mergeBackups(two, one).settings)).toEqual(['a', 'b', 'c']);
  });

  it('have the photos of both but those that were taken away', () => {
    const stamp = '0000001jk.00000.aa';
    const without = { ...garment, marks: { base: stamp, seen: [stamp], photosGone: [{ stamp, id: 'p2' }] } };
    const one = backup({ photos: [photo('p1'), photo('p2')] });
    const two = backup({ garments: [without] as never, photos: [photo('p3')] });
    expect(mergeBackups(one, two).photos.map(({ id }) => id)).toEqual(['p1', 'p3']);
    expect([...photosGone([without, garment])]).toEqual(['p2']);
  });

  it('leave a garment that neither has changed as it was, to the letter', () => {
    expect(mergeBackups(backup(), backup()).garments).toEqual([garment]);
  });

  it('are the things of both, each once, by their ids', () => {
    const items = (...ids: string[]) => ids.map((id) => ({ id, n: ids.length }));
    expect(united(items('c', 'a'), items('b', 'a', 'd'), (one) => one)).toEqual([
      { id: 'a', n: 2 },
      { id: 'b', n: 3 },
      { id: 'c', n: 2 },
      { id: 'd', n: 3 },
    ]);
    expect(united(items('a'), items('a', 'b'), (_, two) => two)[0]).toEqual({ id: 'a', n: 2 });
  });
});

describe('makes that were begun and come back', () => {
  const mirrored = (makes: number, is: boolean): GarmentRecord => ({
    ...garment,
    pieces: [long, { ...cuff, recipe: { ...cuff.recipe, makes, mirrored: is } }],
  });
  const second = entry('one', { make: 'scarf/cuff/0/2', plan: plans[1]?.id as never });
  const merged = (one: GarmentRecord, two: GarmentRecord, some = plans) =>
    mergeBackups(
      backup({ garments: [one] as never, plans: some as never }),
      backup({ garments: [two] as never, entries: [second], plans: some as never }),
    ).garments[0]?.pieces.find(({ id }) => id === 'cuff')?.recipe;
  const mirror = { ...planOf('scarf', 'cuff', 12), mirror: true };

  it('are all alike where nobody has planned a mirrored one', () => {
    const recipe = merged({ ...mirrored(1, true), notes: 'x' }, { ...garment, notes: 'y' });
    expect([recipe?.makes, recipe?.mirrored === true]).toEqual([2, false]);
    const two = mirrored(2, true);
    expect(merged({ ...two, notes: 'x' }, { ...two, notes: 'y' })).toMatchObject({
      makes: 2,
      mirrored: false,
    });
    // and no other piece is touched
    const all = mergeBackups(
      backup({ garments: [{ ...two, notes: 'x' }] as never, plans: plans as never }),
      backup({ garments: [{ ...two, notes: 'y' }] as never, plans: plans as never }),
    ).garments[0]?.pieces;
    expect(all?.find(({ id }) => id === 'long')?.recipe).toEqual(long.recipe);
    expect(all?.find(({ id }) => id === 'cuff')?.recipe.mirrored).toBe(false);
  });

  it('are mirrored only where every part has such a plan, and each piece by its own', () => {
    const [part] = cuff.recipe.parts;
    const two = {
      ...mirrored(2, true),
      pieces: [long, { ...cuff, recipe: { ...cuff.recipe, makes: 2, mirrored: true, parts: [part, part] } }],
    } as GarmentRecord;
    const made = (part: number, piece = 'cuff') => {
      const plan = { ...mirror, part, piece };
      return { ...plan, id: planIdOf(plan) };
    };
    const after = (...some: readonly object[]) =>
      merged({ ...two, notes: 'x' }, { ...two, notes: 'y' }, [...plans, ...some] as never)?.mirrored;
    expect(after(made(0), made(1))).toBe(true);
    expect(after(made(0))).toBe(false);
    expect(after(made(1))).toBe(false);
    expect(after(made(0), made(1, 'long'))).toBe(false);
  });

  it('are mirrored where that is planned', () => {
    const some = [...plans, { ...mirror, id: planIdOf(mirror) }];
    const recipe = merged({ ...mirrored(2, true), notes: 'x' }, { ...mirrored(2, true), notes: 'y' }, some);
    expect([recipe?.makes, recipe?.mirrored]).toEqual([2, true]);
  });

  it('are left alone where there is one make, or where they are alike already', () => {
    const { entries: _begun, ...one } = backup({ garments: [{ ...mirrored(1, true), notes: 'x' }] as never });
    const two = backup({ garments: [{ ...mirrored(1, true), notes: 'y' }] as never });
    expect(mergeBackups({ ...one, entries: [] }, two).garments[0]?.pieces[1]?.recipe.mirrored).toBe(true);
    expect(
      merged({ ...mirrored(2, false), notes: 'x' }, { ...mirrored(2, false), notes: 'y' })?.mirrored,
    ).toBe(false);
  });
});

describe('plans that older devices numbered only', () => {
  const old = plans.map((plan) => ({ ...plan, id: planId('scarf', plan.piece, 0, false, 1) }));

  it('are named by what they say, wherever they are named', () => {
    const [oldLong] = old;
    const was = backup({
      plans: old as never,
      garments: [{ ...garment, pieces: [{ ...long, plans: [oldLong?.id as never] }, cuff] }] as never,
      entries: [
        entry('one', { plan: oldLong?.id as never }),
        entry('two', { seq: 2, row: 2, plan: undefined as never }),
      ],
    });
    const named = namedByContent(was);
    expect(named.plans.map(({ id }) => id)).toEqual(plans.map((plan) => planIdOf(plan)));
    expect(named.garments[0]?.pieces).toEqual([{ ...long, plans: [plans[0]?.id] }, cuff]);
    expect(named.entries.map(({ plan }) => plan)).toEqual([plans[0]?.id, plans[0]?.id]);
    expect(namedByContent(named)).toBe(named);
  });

  it('are named also by pieces that were taken out and by other devices’ versions', () => {
    const stamp = '0000001jk.00000.aa';
    const of = (id: string): PieceRecord => ({ ...cuff, plans: [id as never] });
    const marks = (id: string) => ({
      base: stamp,
      seen: [stamp],
      gone: [{ stamp, piece: of(id) }],
      also: [
        { name: 'pieces/cuff', stamp, of: { pieces: [of(id)] } },
        { name: 'notes', stamp, of: { notes: 'x' } },
        { name: 'name', stamp },
      ],
    });
    const was = backup({
      plans: old as never,
      garments: [{ ...garment, marks: marks(old[1]?.id ?? '') }] as never,
    });
    expect(namedByContent(was).garments[0]?.marks).toEqual(marks(plans[1]?.id ?? ''));
  });

  it('are said by each piece, unless it says so itself', () => {
    const other = { ...planOf('hat', 'long', 30) };
    const named = withPlansNamed({ ...garment, pieces: [long, { ...cuff, plans: [] }] }, [...plans, other]);
    expect(named.pieces.map(({ plans: names }) => names)).toEqual([[plans[0]?.id], []]);
    expect('marks' in named).toBe(false);
  });
});

describe('what a file must not bring into a box', () => {
  const bad = { ...cuff, recipe: { ...cuff.recipe, parts: [] } };
  const pathOf = (of: Partial<Backup>) => beyondUse(backup(of))?.figures as { pathText: string } | undefined;
  const stamp = '0000001jk.00000.aa';

  it('is told by its place in the file', () => {
    expect(pathOf({})).toBeUndefined();
    expect(pathOf({ garments: [garment, { ...garment, pieces: [long, bad] }] as never })).toEqual({
      pathText: 'garments.1.pieces.1.recipe.parts',
    });
    const gone = { ...garment, marks: { base: stamp, seen: [stamp], gone: [{ stamp, piece: bad }] } };
    expect(pathOf({ garments: [garment, gone] as never })).toEqual({ pathText: 'garments.1.marks' });
  });

  it('names the part and its field', () => {
    const [part] = cuff.recipe.parts;
    const odd = { ...part, name: 'Odd', from: { castOn: -3 } };
    const wrong = { ...cuff, recipe: { ...cuff.recipe, parts: [part, odd] } };
    expect(pathOf({ garments: [{ ...garment, pieces: [wrong] }] as never })?.pathText).toMatch(
      /^garments\.0\.pieces\.0\.recipe\.parts\.1\./,
    );
  });

  it('is a number behind which there is no room', () => {
    const [plan] = plans;
    const numbered = (version: number) => ({ plans: [plan, { ...plan, version }] as never });
    expect(pathOf(numbered(1_000_000_000))).toBeUndefined();
    expect(pathOf(numbered(1_000_000_001))).toEqual({ pathText: 'plans.1.version' });
    expect(pathOf({ plans: [{ ...plan, version: 1_000_000_001 }] as never })).toEqual({
      pathText: 'plans.0.version',
    });
    expect(pathOf({ entries: [{ seq: 1_000_000_001 }] as never })).toEqual({ pathText: 'entries.0.seq' });
    expect(pathOf({ entries: [{ seq: 1_000_000_000 }, { seq: 1_000_000_001 }] as never })).toEqual({
      pathText: 'entries.1.seq',
    });
    const at = (seq: number) => ({ entries: [entry('one'), entry('two', { seq })] });
    expect(pathOf(at(1_000_000_000))).toBeUndefined();
    expect(pathOf(at(1_000_000_001))).toEqual({ pathText: 'entries.1.seq' });
    expect(pathOf({ entries: [entry('one', { seq: 1_000_000_001 })] })).toEqual({
      pathText: 'entries.0.seq',
    });
  });
});

describe('what reading a backup in would change', () => {
  const here = (of: Partial<Backup> = {}) => ({ backup: backup(of), photos: [], mark: '' });

  it('is nothing where the file says the same', () => {
    expect(deedOf('scarf', here(), backup(), 'merge')).toBeUndefined();
    expect(deedOf('scarf', here(), backup(), 'replace')).toBeUndefined();
    expect(deedOf('scarf', here(), undefined, 'merge')).toBeUndefined();
  });

  it('is a new garment, or one that goes where the file is put in the box’s stead', () => {
    expect(deedOf('scarf', undefined, backup({ entries: [entry('one')] }), 'merge')?.change).toMatchObject({
      id: 'scarf',
      name: 'Moorland scarf',
      kind: 'new',
      entriesIn: 1,
      entriesOut: 0,
      recipe: true,
      makes: [
        { key: LONG, piece: 'Scarf', part: 'Body', make: 1, makes: 1, here: undefined, there: 1, after: 1 },
        { key: 'scarf/cuff/0/1', makes: 2, here: undefined, there: 0, after: 0 },
        { key: 'scarf/cuff/0/2', makes: 2, here: undefined, there: 0, after: 0 },
      ],
    });
    const gone = deedOf('scarf', here({ entries: [entry('one')] }), undefined, 'replace');
    expect(gone?.after).toBeUndefined();
    expect(gone?.change).toMatchObject({ kind: 'gone', entriesIn: 0, entriesOut: 1, recipe: true });
    expect(gone?.change?.makes[0]).toMatchObject({ here: 1, there: undefined, after: undefined });
  });

  it('is rows that were knitted there and here', () => {
    const further = [entry('one'), entry('two', { seq: 2, row: 2 })];
    const change = deedOf(
      'scarf',
      here({ entries: [entry('one')] }),
      backup({ entries: further }),
      'merge',
    )?.change;
    expect(change).toMatchObject({ kind: 'changed', entriesIn: 1, entriesOut: 0, recipe: false });
    expect(change?.makes).toEqual([
      { key: LONG, piece: 'Scarf', part: 'Body', make: 1, makes: 1, here: 1, there: 2, after: 2 },
    ]);
    const back = deedOf('scarf', here({ entries: further }), backup({ entries: [entry('one')] }), 'replace');
    expect(back?.change).toMatchObject({ entriesIn: 0, entriesOut: 1, recipe: false });
  });

  it('counts garments that stay the same, and the pictures that come', () => {
    const deed = deedOf('scarf', undefined, backup(), 'merge');
    const boxed = new Map([['hat', { ...here(), photos: [{ id: 'p1' } as never] }]]);
    const file = backup({
      garments: [garment, { ...garment, id: 'hat' }] as never,
      photos: [photo('p1'), photo('p2')],
    });
    expect(previewOf(deed ? [deed] : [], boxed, file)).toMatchObject({
      garments: [deed?.change],
      same: 1,
      photos: 1,
    });
  });
});

describe('a backup garment by garment', () => {
  it('is each with its own plans and rows', () => {
    const other = scarf('scarf2');
    const all = backup({
      garments: [garment, other.garment] as never,
      plans: byId([...other.plans, ...plans]) as never,
      entries: [entry('one'), entry('two', { make: 'scarf2/long/0/1' })],
      settings: { hand: 'left' },
    });
    const of = byGarment(all);
    expect(of.get('scarf')).toEqual(backup({ entries: [entry('one')] }));
    expect(of.get('scarf2')).toEqual(
      backup({
        garments: [other.garment] as never,
        plans: byId(other.plans) as never,
        entries: [entry('two', { make: 'scarf2/long/0/1' })],
      }),
    );
    expect(byGarment(backup({ plans: [] })).get('scarf')).toEqual(backup({ plans: [] }));
  });

  it('has another mark where a place has moved, whatever the order they are read in', () => {
    const [a, b] = ['a', 'b'].map((id) => ({ id, rows: 1 }) as never) as [never, never];
    expect(markOf(garment, [a, b])).toBe(markOf(garment, [b, a]));
    expect(markOf(garment, [a])).not.toBe(markOf(garment, [a, b]));
  });
});

describe('two versions of a thing', () => {
  it('give the same one whichever is named first, and one that only lies in another order is the first', () => {
    expect(oneOf({ n: 1 }, { n: 2 })).toEqual({ n: 2 });
    expect(oneOf({ n: 2 }, { n: 1 })).toEqual({ n: 2 });
    const [one, two] = [{ n: 1 }, { n: 1 }];
    expect(oneOf(one, two)).toBe(one);
  });

  it('are the same text in whichever order their fields are', () => {
    expect(stableJson({ b: [{ d: 1, c: 2 }], a: null })).toBe('{"a":null,"b":[{"c":2,"d":1}]}');
  });

  it('of what the device keeps for itself are no part of a backup', () => {
    expect(['device', 'backup file', 'aside', 'way back', 'locked'].map(isOwnSetting)).toEqual(
      Array.from({ length: 5 }, () => true),
    );
    expect(isOwnSetting('hand')).toBe(false);
  });
});

describe('how many entries this device knows of', () => {
  it('is as many as a file held that was read in, where it knew of fewer', async () => {
    const store = await freshStore({ keep: memoryKeep() });
    store.box.sentinel.change(() => ({ entries: 1 }));
    const entries = [entry('one'), entry('two', { seq: 2, row: 2 })];
    given(await importBackup(store.box, backup({ entries }), 'merge'));
    expect(store.box.sentinel.read()).toMatchObject({ garments: 1, entries: 2 });
    store.box.sentinel.change(() => ({ entries: 9 }));
    given(await importBackup(store.box, backup({ entries: [] }), 'merge'));
    expect(store.box.sentinel.read().entries).toBe(9);
    store.close();
  });
});
