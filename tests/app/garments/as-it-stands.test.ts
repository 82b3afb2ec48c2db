import { describe, expect, it } from 'vitest';
import { asItStands, inHandAsItStands } from '../../../src/app/garments/as-it-stands.ts';
import { keepGarment } from '../../../src/app/garments/keep-garment.ts';
import { nameGauge } from '../../../src/app/garments/name-gauge.ts';
import { openGarment, openGarmentInHand } from '../../../src/app/garments/open-garments.ts';
import { takePlans } from '../../../src/app/in-hand/count.ts';
import { openMake } from '../../../src/app/in-hand/knit.ts';
import { type GarmentView, garmentInHand, garmentShown, inHand } from '../../../src/app/state.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { rework } from '../../../src/knit/piece/rework.ts';
import { alike } from '../../../src/knit/piece/standing.ts';
import { yarnOf } from '../../../src/knit/yarn/need.ts';
import type { MakeKey } from '../../../src/progress/log.ts';
import { shapeOfPiece } from '../../../src/ui/panel-map/outline-of.ts';
import { told } from '../../told.ts';
import { type OpenApp, openApp } from '../open-app.ts';

const shown = async (id = 'sample'): Promise<GarmentView> => {
  await openGarment(id);
  const view = garmentShown.value;
  if (!view) throw new Error(`no garment ${id}`);
  return view;
};

const steps = (view: GarmentView) => makingUpOf(asItStands(view)).steps;

/** What the making up says of the blocked piece, by the numbers of its makes. */
const blocked = (view: GarmentView, piece: string) =>
  steps(view).flatMap((step) => (step.kind === 'block' && step.piece === piece ? [step] : []));

/** As the schematic and the panel map draw it. */
const drawn = (view: GarmentView, piece: string, make = 1) =>
  shapeOfPiece(view.pieces.find(({ name }) => name === piece)?.makes[make - 1]?.parts ?? []).box;

const need = (view: GarmentView) => {
  const found = yarnOf(asItStands(view));
  if (!found.ok) throw new Error(told(found.faults));
  return found.value;
};

const yarn = (view: GarmentView, piece: string, make = 1): number =>
  need(view).makes.find((one) => one.piece === piece && one.make === make)?.metres ?? 0;

const metresALoop = (view: GarmentView, section: string): number => {
  const found = need(view)
    .makes.flatMap(({ sections }) => sections)
    .find(({ name }) => name === section);
  return (found?.metres ?? 0) / (found?.loops ?? 1);
};

/** Knits some rows of the make and plans the rest of a section anew, so many rows longer. */
async function longer({ store }: OpenApp, make: MakeKey, section: string, by: number): Promise<void> {
  const moved = await store.goTo(make, 30, 'place');
  expect(moved.ok).toBe(true);
  await openMake(make);
  const now = inHand.value;
  if (!now) throw new Error(`no make ${make}`);
  await openGarmentInHand(now.place.garment);
  const piece = garmentInHand.value?.pieces.find(({ id }) => id === now.place.piece);
  const recipe = piece?.makes.find((one) => one.make === now.place.make)?.recipe as Recipe;
  const at = now.part.sections.findIndex(({ name }) => name === section);
  const { first = 1, last = 0 } = now.part.sections[at] ?? {};
  const rows = last - first + 1 + by;
  const made = rework(recipe, now.place.part, now.part, now.place.rows, { kind: 'rows', section: at, rows });
  if (!made.ok) throw new Error(told(made.faults));
  expect(await takePlans(made.value.parts)).toBe(true);
}

/** The sample's tension is 28 rows to 10 cm: 12 rows are 42.86 mm. */
const TWELVE_ROWS_MM = (12 * 100) / 28;

describe('what is shown of a garment of which a piece was planned anew', () => {
  it('a back twelve rows longer is as much longer in drawing and making up, with the yarn of its rows', async () => {
    const app = await openApp();
    const before = await shown();
    await longer(app, app.back, 'body', 12);
    const after = await shown();
    const [was] = blocked(before, 'Back');
    const [now] = blocked(after, 'Back');
    expect(now?.heightMm).toBeCloseTo((was?.heightMm ?? 0) + TWELVE_ROWS_MM, 6);
    expect(now?.heightMm).toBeCloseTo(drawn(after, 'Back').height, 6);
    expect(now?.widthMm).toBeCloseTo(drawn(after, 'Back').width, 6);
    // 118 stitches on each of the twelve rows, each with as much yarn as the body's other stitches
    const more = 12 * 118 * metresALoop(before, 'Back: body');
    expect(yarn(after, 'Back') - yarn(before, 'Back')).toBeCloseTo(more, 6);
    expect(yarn(after, 'Front')).toBe(yarn(before, 'Front'));
    const seam = steps(after).find((step) => step.kind === 'side seams');
    expect(seam).toMatchObject({ rows: { difference: 12 } });
  });

  it('what is knitted on top of a longer part lies higher with it, in drawing and making up alike', async () => {
    const app = await openApp();
    const before = await shown();
    await longer(app, 'sample/front/0/1', 'body', 12);
    const after = await shown();
    const [now] = blocked(after, 'Front');
    expect(now?.heightMm).toBeCloseTo((blocked(before, 'Front')[0]?.heightMm ?? 0) + TWELVE_ROWS_MM, 6);
    expect(now?.heightMm).toBeCloseTo(drawn(after, 'Front').height, 6);
    expect(drawn(after, 'Front').width).toBeCloseTo(drawn(before, 'Front').width, 6);
  });

  it('of two sleeves the one that was planned anew has measures, seam and yarn of its own', async () => {
    const app = await openApp();
    const before = await shown();
    expect(blocked(before, 'Sleeve')).toMatchObject([{ makes: 2 }]);
    await longer(app, 'sample/sleeve/0/2', 'sleeve', 12);
    const after = await shown();
    const [first, second] = blocked(after, 'Sleeve');
    expect([first?.nos, second?.nos]).toEqual([[1], [2]]);
    expect(first).toMatchObject({ id: 'block Sleeve', heightMm: blocked(before, 'Sleeve')[0]?.heightMm });
    expect(second?.heightMm).toBeCloseTo((first?.heightMm ?? 0) + TWELVE_ROWS_MM, 6);
    expect(second?.heightMm).toBeCloseTo(drawn(after, 'Sleeve', 2).height, 6);
    expect(yarn(after, 'Sleeve', 1)).toBe(yarn(before, 'Sleeve', 1));
    expect(yarn(after, 'Sleeve', 2)).toBeGreaterThan(1.05 * yarn(before, 'Sleeve', 2));
    const seams = steps(after).flatMap((step) => (step.kind === 'sleeve seams' ? [step.rows] : []));
    expect(seams[1]).toBe((seams[0] ?? 0) + 12);
    const sheets = alike(after.pieces.find(({ name }) => name === 'Sleeve')?.makes ?? []);
    expect(sheets.map((makes) => makes.map(({ make }) => make))).toEqual([[1], [2]]);
    expect(new Set(steps(after).map(({ id }) => id)).size).toBe(steps(after).length);
  });

  it('both sleeves planned anew alike are one step again', async () => {
    const app = await openApp();
    await longer(app, 'sample/sleeve/0/1', 'sleeve', 12);
    await longer(app, 'sample/sleeve/0/2', 'sleeve', 12);
    expect(blocked(await shown(), 'Sleeve')).toMatchObject([{ makes: 2 }]);
  });
});

const garter: Recipe = {
  name: 'Back',
  makes: 1,
  gauge: { stitches: 22, rows: 40 },
  parts: [
    {
      name: 'Body',
      from: { castOn: 114 },
      sections: [{ name: 'all', rows: 212, fabric: 'garter', needle: 3.5, shaping: [] }],
      end: 'split',
    },
    ...(['right', 'left'] as const).map((edge) => ({
      name: edge,
      from: { part: 'Body', stitches: 57, edge },
      sections: [{ name: 'top', rows: 20, fabric: 'garter' as const, needle: 3.5, shaping: [] }],
      end: 'bind off' as const,
    })),
  ],
};

describe('a tension kept from before fabrics were named', () => {
  it('once she says that it was garter stitch, every figure follows and no row of a plan, begun or not', async () => {
    const { store } = await openApp();
    const kept = await keepGarment({ name: 'Old', pieces: [garter, { ...garter, name: 'Front' }] });
    if (!kept.ok) throw new Error(told(kept.faults));
    const id = kept.value;
    const before = await shown(id);
    await store.goTo(before.pieces[0]?.makes[0]?.places[0]?.id ?? 'no/place/0/1', 30, 'place');
    // as stocking stitch, as it always was taken
    expect(blocked(before, 'Back')[0]?.widthMm).toBeCloseTo(545.5, 1);
    expect(await nameGauge(id, 'garter')).toBe(true);
    const after = await shown(id);
    for (const name of ['Back', 'Front']) {
      const [step] = blocked(after, name);
      expect(step?.widthMm).toBeCloseTo(518.2, 1);
      expect(step?.heightMm).toBeCloseTo(580, 6);
      expect(drawn(after, name).width).toBeCloseTo(518.2, 1);
      expect(drawn(after, name).height).toBeCloseTo(580, 6);
    }
    const rows = (view: GarmentView) =>
      view.pieces.map(({ makes }) =>
        makes.map(({ parts }) => parts.map((part) => part.rows.map((row) => ({ ...row, height: 0 })))),
      );
    expect(rows(after)).toEqual(rows(before));
    expect(after.pieces[0]?.makes[0]?.places[0]?.rows).toBe(30);
    expect(yarn(after, 'Back')).toBeGreaterThan(1.1 * yarn(before, 'Back'));
    // the tools that find a place by its height see the same: 30 rows at 40 to 10 cm
    await openMake(before.pieces[0]?.makes[0]?.places[0]?.id ?? 'no/place/0/1');
    await openGarmentInHand(id);
    const now = inHand.value && inHandAsItStands(inHand.value, garmentInHand.value);
    expect(now?.part.rows[29]?.height).toBeCloseTo(75, 6);
    expect(inHand.value?.part.rows[29]?.height).toBeLessThan(60);
  });

  it('is asked in vain of a garment that is not there, and of one in hand it is read again', async () => {
    const { back } = await openApp();
    expect(await nameGauge('nowhere', 'garter')).toBe(false);
    await openMake(back);
    await openGarmentInHand('sample');
    const before = garmentInHand.value;
    expect(await nameGauge('sample', 'garter')).toBe(true);
    expect(garmentInHand.value).not.toBe(before);
    expect(garmentInHand.value?.garment.pieces[0]?.recipe.gauge?.fabric).toBeDefined();
    const kept = await keepGarment({ name: 'Old', pieces: [garter] });
    const held = garmentInHand.value;
    expect(await nameGauge(kept.ok ? kept.value : '', 'garter')).toBe(true);
    expect(garmentInHand.value).toBe(held);
  });

  it('once she says that it was not, everything is as before', async () => {
    await openApp();
    const kept = await keepGarment({ name: 'Old', pieces: [garter] });
    if (!kept.ok) throw new Error(told(kept.faults));
    const before = await shown(kept.value);
    expect(await nameGauge(kept.value, 'stocking')).toBe(true);
    const after = await shown(kept.value);
    expect(after.pieces.map(({ makes }) => makes.map(({ parts }) => parts))).toEqual(
      before.pieces.map(({ makes }) => makes.map(({ parts }) => parts)),
    );
    expect(after.garment.pieces[0]?.recipe.gauge).toEqual({ stitches: 22, rows: 40, fabric: 'stocking' });
  });
});
