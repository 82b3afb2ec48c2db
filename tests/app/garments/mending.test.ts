import { beforeEach, describe, expect, it } from 'vitest';
import { change, editor, openEditor, undo } from '../../../src/app/drafts/editor/editor.ts';
import {
  askedOf,
  leaveMends,
  openStanding,
  standingEdited,
  takeMend,
} from '../../../src/app/drafts/editor/mending.ts';
import { saveGarment } from '../../../src/app/drafts/editor/save-garment.ts';
import { keepGarment } from '../../../src/app/garments/keep-garment.ts';
import { knittedOf, mendWrites } from '../../../src/app/garments/mending.ts';
import { readView } from '../../../src/app/garments/open-garments.ts';
import type { GarmentView } from '../../../src/app/state.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import type { Edit } from '../../../src/knit/making-up/edit.ts';
import { answers } from '../../../src/knit/making-up/mends.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import type { GarmentId, MakeKey } from '../../../src/progress/log.ts';
import { given } from '../../store/scenario.ts';
import { type OpenApp, openApp } from '../open-app.ts';

/** One change of the sample, over a real store: what mends it is written with it, all of it or nothing. */

let app: OpenApp;
const id = 'sample' as GarmentId;

const view = async (): Promise<GarmentView> => {
  const read = await readView(app.store, id);
  if (!read) throw new Error('no sample');
  return read;
};

/** Rows of the plans in force, of every make of the piece's first part. */
const rowsOf = async (name: string): Promise<readonly number[]> =>
  (await view()).pieces
    .find((piece) => piece.name === name)
    ?.makes.map(({ parts }) => parts[0]?.rows.length ?? 0) ?? [];

const longer = (piece: string, part: string, by: number, makes = [1]): Edit => ({
  kind: 'rows',
  piece,
  makes,
  part,
  section: 1,
  called: 'body',
  by,
});

/** Types so many rows more into the second section of a piece's first part. */
const type = (piece: string, by: number) =>
  change(
    (form) => ({
      ...form,
      pieces: form.pieces.map((entry) =>
        entry.form.name !== piece
          ? entry
          : {
              ...entry,
              form: {
                ...entry.form,
                parts: entry.form.parts.map((part, i) => ({
                  ...part,
                  sections: part.sections.map((section, n) =>
                    i === 0 && n === 1 ? { ...section, rows: String(Number(section.rows) + by) } : section,
                  ),
                })),
              },
            },
      ),
    }),
    'typed',
  );

const opened = async () => {
  editor.value = undefined;
  await openEditor(id);
  await openStanding(id);
};

/** What is broken by what is typed, and the first mend of each. */
const found = () => {
  const [now, standing] = [editor.value, standingEdited.value];
  if (!now || !standing) throw new Error('nothing is edited');
  const asked = askedOf(now, standing, undefined);
  return asked ? [...answers(asked)] : [];
};
const takeAll = () => {
  for (let n = 0; n < 8; n += 1) {
    const mend = found().find(({ mends }) => mends.length > 0)?.mends[0];
    const standing = standingEdited.value;
    if (!mend || !standing) return;
    takeMend(mend.edits, standing);
  }
};

beforeEach(async () => {
  app = await openApp();
});

describe('what mends a change', () => {
  it('of a piece not begun is its recipe; of one on the needles a new plan from its needle on', async () => {
    await app.store.finishRow(app.back, 1);
    const writes = mendWrites(await view(), [longer('Back', 'Back', 8), longer('Front', 'Body', 8)]);
    expect(writes?.reworks.map(({ key, from }) => [key, from])).toEqual([[app.back, 1]]);
    expect(writes?.beside?.plans.length).toBeGreaterThan(0);
    expect(knittedOf(await view()).get('Back')).toEqual({ isBegun: true, rows: [[1]] });
  });

  it('knows a piece of several parts as begun with the first row of one of them', async () => {
    const front = async () =>
      (await view()).pieces.find(({ name }) => name === 'Front')?.makes[0]?.places ?? [];
    expect(knittedOf(await view()).get('Front')).toEqual({ isBegun: false, rows: [[0, 0, 0]] });
    const [body] = await front();
    if (!body) throw new Error('no front');
    await app.store.finishRow(body.id, 1);
    expect(knittedOf(await view()).get('Front')).toEqual({ isBegun: true, rows: [[1, 0, 0]] });
  });

  it('is written whole or not at all', async () => {
    await app.store.finishRow(app.back, 1);
    const [back, front] = [await rowsOf('Back'), await rowsOf('Front')];
    const writes = mendWrites(await view(), [longer('Back', 'Back', 8), longer('Front', 'Body', 8)]);
    if (!writes) throw new Error('nothing to write');
    await app.store.finishRow(app.back, 2);
    const late = await app.store.rework(writes.reworks, writes.beside);
    expect(late.ok).toBe(false);
    expect([await rowsOf('Back'), await rowsOf('Front')]).toEqual([back, front]);
    const again = mendWrites(await view(), [longer('Back', 'Back', 8), longer('Front', 'Body', 8)]);
    const done = again && (await app.store.rework(again.reworks, again.beside));
    expect(done?.ok).toBe(true);
    expect([await rowsOf('Back'), await rowsOf('Front')]).toEqual([
      back.map((rows) => rows + 8),
      front.map((rows) => rows + 8),
    ]);
  });

  it('can not be made of what is knitted already', async () => {
    for (let row = 1; row <= 60; row += 1) await app.store.finishRow(app.back, row);
    expect(mendWrites(await view(), [longer('Back', 'Back', -90)])).toBeUndefined();
    expect(mendWrites(await view(), [longer('Back', 'Back', -8)])?.reworks).toHaveLength(1);
  });
});

describe('what mends a piece of two copies', () => {
  const sleeves = async (mirrored: boolean) => {
    const sleeve = sampleGarment.pieces.find(({ name }) => name === 'Sleeve') as Recipe;
    const garment = given(
      await keepGarment({ name: 'Sleeves', pieces: [{ ...sleeve, makes: 2, mirrored }] }),
    );
    const read = async () => {
      const found = await readView(app.store, garment);
      if (!found) throw new Error('no sleeves');
      return found;
    };
    const [first, second] = (await read()).pieces[0]?.makes ?? [];
    for (const make of [first, second]) given(await app.store.finishRow(make?.places[0]?.id as MakeKey, 1));
    const part = sleeve.parts[0];
    const edit = longer('Sleeve', part?.name ?? '', 8, [1, 2]);
    const called = part?.sections[1]?.name ?? '';
    return mendWrites(await read(), [{ ...edit, called } as Edit])?.reworks.map(({ plan }) => plan.mirror);
  };

  it('is the mirror image for the second of a mirrored one', async () => {
    expect(await sleeves(true)).toEqual([false, true]);
    expect(await sleeves(false)).toEqual([false, false]);
  });

  it('is a plan for the copies meant only', async () => {
    given(await app.store.finishRow('sample/sleeve/0/1', 1));
    given(await app.store.finishRow('sample/sleeve/0/2', 1));
    const edit = longer('Sleeve', 'Sleeve', 8, [2]);
    const called =
      sampleGarment.pieces.find(({ name }) => name === 'Sleeve')?.parts[0]?.sections[1]?.name ?? '';
    const writes = mendWrites(await view(), [{ ...edit, called } as Edit]);
    expect(writes?.reworks.map(({ key }) => key)).toEqual(['sample/sleeve/0/2']);
    expect(writes).not.toHaveProperty('beside');
  });
});

describe('in the editor', () => {
  it('a front made longer asks for the back, which is typed longer too and saved with it', async () => {
    const before = await rowsOf('Back');
    await opened();
    expect(found()).toEqual([]);
    type('Front', 16);
    expect(found().length).toBeGreaterThan(0);
    takeAll();
    expect(found()).toEqual([]);
    expect(editor.value?.history.now.mends).toBeUndefined();
    expect((await saveGarment()).ok).toBe(true);
    expect(await rowsOf('Back')).toEqual(before.map((rows) => rows + 16));
  });

  it('a back on the needles gets its new plan in the same save; taken back or left out it stays as it is', async () => {
    await app.store.finishRow(app.back, 1);
    const before = await rowsOf('Back');
    await opened();
    type('Front', 16);
    takeAll();
    expect(editor.value?.history.now.mends).toHaveLength(1);
    undo();
    expect(editor.value?.history.now.mends).toBeUndefined();
    takeAll();
    leaveMends();
    expect(found().length).toBeGreaterThan(0);
    takeAll();
    expect((await saveGarment()).ok).toBe(true);
    expect(await rowsOf('Back')).toEqual(before.map((rows) => rows + 16));
    const place = await app.store.place(app.back);
    expect(place.ok && place.value.rows).toBe(1);
  });
});
