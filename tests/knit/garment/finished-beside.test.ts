import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import { type Draft, draft } from '../../../src/knit/garment/draft.ts';
import { finishedBeside } from '../../../src/knit/garment/finished-beside.ts';
import { type Choices, startingDesign } from '../../../src/knit/garment/start.ts';
import { told } from '../../told.ts';

const woman = bodyOfSize('women', 'M');
if (!woman) throw new Error('women have a medium');

/** 20 stitches and 28 rows to 100 mm: a stitch is 5 mm wide. */
const designed = (choices: Partial<Choices>) =>
  startingDesign(
    { kind: 'pullover', armhole: 'drop', neck: 'round', fit: 'standard', ...choices },
    woman,
    'stocking',
    { stitches: 20, rows: 28 },
  );

function beside(choices: Partial<Choices>) {
  const design = designed(choices);
  const made = draft(design);
  if (!made.ok) throw new Error(told(made.faults));
  return { design, draft: made.value, list: finishedBeside(design, made.value) };
}

const names = (choices: Partial<Choices>) => beside(choices).list.map(({ measure }) => measure);

const countAt = ({ roundings }: Draft, measure: string) =>
  roundings.find((rounding) => rounding.measure === measure)?.count ?? 0;

describe('finished measures beside what was asked', () => {
  it('are told of what the garment has', () => {
    const all = ['chest', 'length', 'nape to cuff', 'upper arm', 'wrist', 'neck'];
    expect(names({})).toEqual(all);
    expect(names({ armhole: 'set-in' })).toEqual(all);
    expect(names({ kind: 'vest', armhole: 'set-in' })).toEqual(['chest', 'length', 'neck']);
    expect(names({ kind: 'cardigan' })).not.toContain('neck');
  });

  it('take one stitch of each sewn edge off the round of the body', () => {
    const { design, draft: made, list } = beside({});
    const [chest] = list;
    expect(chest?.askedMm).toBe(design.body.chest + design.ease.chest);
    expect(chest?.madeMm).toBeCloseTo(2 * (countAt(made, 'width at the underarm') - 2) * 5, 6);
  });

  it('hold the neck against the head, and sleeve and wrist against the arm with its ease', () => {
    const { design, list } = beside({ armhole: 'set-in' });
    const asked = Object.fromEntries(list.map(({ measure, askedMm }) => [measure, askedMm]));
    expect(asked.neck).toBe(design.body.head);
    expect(asked['upper arm']).toBe(design.body.upperArm + design.ease.upperArm);
    expect(asked.wrist).toBe(design.body.wrist + design.ease.wrist);
    expect(asked.length).toBe(design.lengthMm);
  });

  it('tell a wrist as it lies and stretched: of a rib that pulls in more than of garter stitch', () => {
    const wrist = (fabric: 'rib 1x1' | 'rib 2x2' | 'garter') => {
      const begun = designed({});
      const design = { ...begun, cuff: { ...begun.cuff, fabric } };
      const made = draft(design);
      if (!made.ok) throw new Error(told(made.faults));
      const found = finishedBeside(design, made.value).find(({ measure }) => measure === 'wrist');
      return (found?.stretchedMm ?? 0) / (found?.madeMm ?? 1);
    };
    expect(wrist('garter')).toBeGreaterThan(1.1);
    expect(wrist('rib 2x2')).toBeGreaterThan(wrist('garter'));
    // as far as rib goes at all, measured on swatches: heathersknittingjournal.com, 'Which is stretchier, 1x1 or 2x2 rib?', Nov. 2020
    expect(wrist('rib 1x1')).toBeLessThan(1.96);
    expect(wrist('rib 2x2')).toBeLessThan(2.233);
    // and no less than a knitted rib of a mill gives: 40 in the hundred (jinxitextile.com, 'Clothing rib')
    expect(wrist('rib 1x1')).toBeGreaterThan(1.4);
    expect(wrist('rib 2x2')).toBeGreaterThan(1.4);
  });

  it('tell a wrist without a cuff by the panels’ own fabric, one with the lowest cuff by that', () => {
    const { design, draft: made } = beside({});
    const stretched = (heightMm: number) => {
      const cuff = { ...design.cuff, fabric: 'rib 2x2' as const, heightMm };
      const found = finishedBeside({ ...design, cuff }, made).find(({ measure }) => measure === 'wrist');
      return (found?.stretchedMm ?? 0) / (found?.madeMm ?? 1);
    };
    expect(stretched(1)).toBe(stretched(60));
    expect(stretched(0)).toBeLessThan(stretched(1));
  });

  it('hold the neck against the head as the caution does', () => {
    const { design, draft: made } = beside({});
    expect(made.head?.headMm).toBe(design.body.head);
    expect((made.head?.opensMm ?? 0) / (made.head?.neckMm ?? 1)).toBeCloseTo(1.4, 6);
    expect(beside({ kind: 'cardigan' }).draft.head).toBeUndefined();
    const wide = { ...design, body: { ...design.body, head: (made.head?.opensMm ?? 0) + 1 } };
    const again = draft(wide);
    expect(again.ok && again.value.warnings.map(({ code }) => code)).toContain('head does not pass');
    expect(again.ok && again.value.head?.opensMm).toBeCloseTo(made.head?.opensMm ?? 0, 6);
  });

  it('are none where a piece cannot be planned', () => {
    const { design, draft: made } = beside({});
    const recipes = made.recipes.map((recipe) => ({ ...recipe, parts: [] }));
    expect(finishedBeside(design, { ...made, recipes })).toEqual([]);
  });
});
