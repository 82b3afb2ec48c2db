import { describe, expect, it } from 'vitest';
import {
  blankGarment,
  type GarmentForm,
  garmentToForm,
  gaugedAs,
  mainOf,
  withGauge,
  withNeedle,
} from '../../../../src/app/drafts/editor/garment-form.ts';
import { toSave } from '../../../../src/app/drafts/editor/save.ts';
import { garmentOf } from '../../../../src/app/garments/garment-of.ts';
import type { Result } from '../../../../src/knit/fault.ts';
import { makingUp } from '../../../../src/knit/making-up/making-up.ts';
import type { PieceForm } from '../../../../src/knit/piece/form/form.ts';
import { freshPiece, freshSection } from '../../../../src/knit/piece/form/fresh.ts';
import { loopLengthMm } from '../../../../src/knit/yarn/loop-length.ts';
import { yarnFor } from '../../../../src/knit/yarn/need.ts';
import { told } from '../../../told.ts';

function value<T>(made: Result<T>): T {
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
}

/** Rows of sections as she types them, each in what a new section begins with. */
function piece(form: GarmentForm, name: string, castOn: string, rows: readonly string[]): PieceForm {
  const fresh = gaugedAs(freshPiece(name, [], mainOf(form)), form.gauge);
  const part = fresh.parts[0];
  if (!part) throw new Error('a fresh piece has a part');
  const sections = rows.map((typed) => ({
    ...freshSection(undefined, mainOf(form)),
    name: 'garter',
    rows: typed,
  }));
  return { ...fresh, parts: [{ ...part, start: { kind: 'cast on', stitches: castOn }, sections }] };
}

/** As a new user types it: tension, fabric and needle on the first page, then her pieces. */
function typed(): GarmentForm {
  const named = { ...blankGarment, name: 'Garter pullover' };
  const gauged = withGauge(named, { ...named.gauge, stitches: '22', rows: '40', fabric: 'garter' });
  const form = withNeedle(gauged, '3,5');
  const forms = [
    piece(form, 'Back', '114', ['20', '212']),
    piece(form, 'Front', '114', ['20', '212']),
    piece(form, 'Sleeve', '66', ['160']),
  ];
  return { ...form, pieces: forms.map((one, i) => ({ id: `p${i}`, form: one })) };
}

const saved = () => {
  const found = toSave({ form: typed(), id: 'g', now: 1, old: undefined, begun: new Set() });
  if (!found) throw new Error('nothing to save');
  return found;
};

/** 114 / 22 × 10 cm and (20 + 212) / 40 × 10 cm, by the meaning of a tension alone. */
describe('a tension measured in garter stitch', () => {
  it('114 stitches and 232 rows at 22 and 40 to 10 cm are 51.8 × 58.0 cm from the form to the plan', () => {
    const { plans } = saved();
    const back = plans.find(({ piece: id }) => id === 'p0')?.plan;
    expect(114 * (back?.cells[0]?.width ?? 0)).toBeCloseTo(518.2, 1);
    expect(back?.rows[231]?.height).toBeCloseTo(580, 6);
  });

  it('blocking says the same, and a sleeve 30 cm wide at its top, a stitch of each edge in its seam, has its marker 58 rows below the shoulder', () => {
    const steps = value(makingUp(garmentOf(saved().garment)));
    const block = steps.find((step) => step.kind === 'block');
    expect(block?.widthMm).toBeCloseTo(518.2, 1);
    expect(block?.heightMm).toBeCloseTo(580, 6);
    const sleeve = steps.find((step) => step.kind === 'set in sleeves');
    expect(sleeve).toMatchObject({ markerRows: 58, quarters: [15, 29, 44] });
    // 66 stitches less one of each edge at 22 to 10 cm, half of that in whole rows below the shoulder at 58 cm
    const rows = Math.round(((((66 - 2) * 100) / 22 / 2) * 40) / 100);
    for (const [i, share] of [1, 0.75, 0.5, 0.25].entries())
      expect(sleeve?.marksMm[i]).toBeCloseTo(580 - (share * rows * 100) / 40, 6);
  });

  it('the yarn is that of loops at 22 and 40, not of a row gauge 1.4 times as fine', () => {
    const need = value(yarnFor(garmentOf(saved().garment)));
    const sum = need.makes.flatMap((make) => make.sections).reduce((loops, { loops: n }) => loops + n, 0);
    expect(need.metres).toBeCloseTo((sum * loopLengthMm({ stitches: 22, rows: 40 })) / 1000, 3);
  });

  it('is stored with its fabric and needle and stands in the form again', () => {
    const { garment } = saved();
    const gauge = { stitches: 22, rows: 40, fabric: 'garter', needle: 3.5 };
    expect(garment.pieces.map(({ recipe }) => recipe.gauge)).toEqual([gauge, gauge, gauge]);
    const form = garmentToForm(garment);
    expect(form.gauge).toEqual({ stitches: '22', rows: '40', fabric: 'garter', needle: '3.5' });
    expect(mainOf(form)).toEqual({ fabric: 'garter', needle: '3.5' });
  });

  it('named for a garment already begun it changes no row, and one that was named is not renamed', () => {
    const { garment } = saved();
    const old = {
      ...garment,
      pieces: garment.pieces.map(({ id, recipe }) => ({
        id,
        recipe: { ...recipe, gauge: { stitches: 22, rows: 40 } },
      })),
    };
    const begun = new Set(old.pieces.map(({ id }) => id));
    const unsaid = garmentToForm(old);
    expect(toSave({ form: unsaid, id: 'g', now: 2, old, begun })?.garment.pieces).toEqual(old.pieces);
    const named = withGauge(unsaid, { ...unsaid.gauge, fabric: 'garter' });
    const now = toSave({ form: named, id: 'g', now: 2, old, begun });
    expect(now?.plans).toEqual([]);
    expect(now?.garment.pieces.map(({ recipe }) => recipe.gauge?.fabric)).toEqual([
      'garter',
      'garter',
      'garter',
    ]);
    expect(now?.garment.pieces.map(({ recipe }) => recipe.parts)).toEqual(
      old.pieces.map(({ recipe }) => recipe.parts),
    );
    const again = withGauge(named, { ...named.gauge, fabric: 'moss' });
    const last = toSave({ form: again, id: 'g', now: 3, old: now?.garment, begun });
    expect(last?.garment.pieces[0]?.recipe.gauge?.fabric).toBe('garter');
  });
});
