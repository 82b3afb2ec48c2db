import { expect, it } from 'vitest';
import { emptyDraft } from '../../../src/app/drafts/pattern/draft.ts';
import { makeGarment } from '../../../src/app/drafts/pattern/make-garment.ts';
import * as reader from '../../../src/app/drafts/pattern/reader.ts';
import { openMake } from '../../../src/app/in-hand/open-make.ts';
import { lengthen } from '../../../src/app/in-hand/stretch-in-hand.ts';
import { given } from '../../store/scenario.ts';
import { openApp } from '../open-app.ts';

it('a stretch given as a length gets two rows more while it is knitted', async () => {
  const { store } = await openApp();
  const text = 'SCARF\nCast on 20 sts.\nWork in garter stitch until piece measures 10 cm.\nBind off.';
  reader.pattern.value = { ...emptyDraft, text, gauge: { stitches: 20, rows: 30 } };
  const garment = given(await makeGarment('Scarf'));
  const [make] = given(await store.placesOf(garment));
  if (make === undefined) throw new Error('the scarf has no make');
  for (let row = 1; row <= 3; row += 1) given(await store.finishRow(make.id, row));
  await openMake(make.id);
  expect(await lengthen()).toEqual({ ok: true, value: true });
  expect(given(await store.place(make.id))).toMatchObject({ rows: 3, total: make.total + 2 });
});
