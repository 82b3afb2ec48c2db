import { describe, expect, it, vi } from 'vitest';
import { makeGarment } from '../../src/app/drafts/pattern/make-garment.ts';
import { change, openPattern } from '../../src/app/drafts/pattern/reader.ts';
import { forgetStore, giveStore } from '../../src/app/store.ts';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import type { Garment } from '../../src/knit/piece/garment.ts';
import { makeKey } from '../../src/progress/log.ts';
import { backupFile } from '../../src/store/backup/export.ts';
import { importBackup } from '../../src/store/backup/import.ts';
import { readBackup } from '../../src/store/backup/read.ts';
import type { GarmentRecord } from '../../src/store/records.ts';
import { garmentToLink, linkToGarment } from '../../src/store/share/link.ts';
import '../app/tasks-here.ts';
import { freshStore, given, nextRow } from '../store/scenario.ts';
import * as bulkies from './patterns/bulkies-006.ts';
import * as fashion from './patterns/fashion-189.ts';
import * as patons from './patterns/patons-45632.ts';
import * as redCross from './patterns/red-cross.ts';
import * as star201 from './patterns/star-201.ts';
import * as star223 from './patterns/star-223-220.ts';
import type { WorkedPattern } from './patterns/worked-pattern.ts';

vi.setConfig({ testTimeout: 60_000 });

const books: Readonly<Record<string, WorkedPattern>> = {
  ...bulkies,
  ...star201,
  ...star223,
  ...fashion,
  ...patons,
  ...redCross,
};
const published = Object.entries(books).map(([name, pattern]) => ({ name, ...pattern }));

/** What is passed on of a garment. */
const passedOn = ({ pieces, name }: GarmentRecord): Garment => ({
  name,
  pieces: pieces.map(({ recipe }) => recipe),
});

describe('a published garment', () => {
  it.each(published)(
    '$name ($source): pasted, stored, backed up, sent as a link, and its first row worked',
    async ({ text }) => {
      const store = await freshStore();
      forgetStore();
      giveStore(store);
      await openPattern();
      change({ text, name: 'Pasted' });
      const id = given(await makeGarment('Pattern', (unread) => unread.join('\n')));

      const { pieces } = readPattern(text, { size: 0 });
      const stored = given(await store.garment(id));
      expect(stored.pieces.map(({ recipe }) => recipe)).toEqual(pieces.map(({ recipe }) => recipe));

      const other = await freshStore();
      const backup = given(readBackup(given(await backupFile(store.box)).text));
      given(await importBackup(other.box, backup, 'replace'));
      expect(given(await other.garment(id))).toEqual(stored);

      expect(given(await linkToGarment(await garmentToLink(passedOn(stored))))).toEqual(passedOn(stored));

      const make = makeKey({ garment: id, piece: 'piece1', part: 0, make: 1 });
      const [read] = pieces;
      expect(given(await other.inHand(make)).plan.plan.rows[0]).toEqual(
        read && given(read.plan).parts[0]?.rows[0],
      );
      expect(given(await nextRow(other, make)).place.rows).toBe(1);
      store.close();
      other.close();
    },
  );
});
