import { IDBFactory } from 'fake-indexeddb';
import { expect, it } from 'vitest';
import { boxName } from '../../../src/app/start/box-name.ts';
import { openStore } from '../../../src/store/store.ts';
import { memoryKeep } from '../../store/beside/memory-keep.ts';
import { given, LONG, scarf } from '../../store/scenario.ts';

const opened = async (factory: IDBFactory, name: string | undefined) =>
  given(
    await openStore({
      factory: () => factory,
      keep: undefined,
      spareFactory: async () => undefined,
      ...(name === undefined ? {} : { name }),
    }),
  );

it('the copy of the app that comes first keeps the box that was there before names had folders in them', async () => {
  const factory = new IDBFactory();
  const keep = memoryKeep();
  const before = await opened(factory, undefined);
  const { garment, plans } = scarf();
  given(await before.saveGarment(garment, plans));
  given(await before.finishRow(LONG, 1));
  before.close();

  const now = await opened(
    factory,
    boxName(() => keep, '/knitting/'),
  );
  expect(given(await now.place(LONG)).rows).toBe(1);
  now.close();
  // at the next start too
  expect(boxName(() => keep, '/knitting/')).toBe('ridgeline');
});

it('a copy in another folder has a box of its own, whichever is opened after', async () => {
  const factory = new IDBFactory();
  const keep = memoryKeep();
  const first = await opened(
    factory,
    boxName(() => keep, '/'),
  );
  const second = await opened(
    factory,
    boxName(() => keep, '/copy/'),
  );
  const { garment, plans } = scarf();
  given(await first.saveGarment(garment, plans));
  expect(given(await second.list())).toEqual([]);
  first.close();
  second.close();
  const names = ['/copy/', '/', '/third/', '/copy/'].map((folder) => boxName(() => keep, folder));
  expect(names).toEqual(['ridgeline /copy/', 'ridgeline', 'ridgeline /third/', 'ridgeline /copy/']);
});

it('without a small keep, or with a full one, the box has the name that it always had', () => {
  const refuse = (): never => {
    throw new Error('not here');
  };
  expect(boxName(refuse, '/copy/')).toBe('ridgeline');
  expect(boxName(() => ({ getItem: () => null, setItem: refuse }), '/copy/')).toBe('ridgeline');
});
