import { describe, expect, it } from 'vitest';
import { garmentToForm } from '../../../../src/app/drafts/editor/garment-form.ts';
import { formOf } from '../../../../src/app/drafts/editor/older-draft.ts';
import { toSave } from '../../../../src/app/drafts/editor/save.ts';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import type { SectionForm } from '../../../../src/knit/piece/form/form.ts';
import type { Section } from '../../../../src/knit/piece/recipe.ts';
import type { GarmentRecord } from '../../../../src/store/records.ts';

const text = `SCARF
With 4 mm needles, cast on 44 sts.
Row 1 (RS): knit the wishes of the season into it as you please.
Work in st st until piece measures 38 cm.
Bind off all sts.
`;

const copied: GarmentRecord = {
  id: 'g1',
  name: 'Scarf',
  createdAt: 5,
  changedAt: 6,
  pieces: readPattern(text).pieces.map(({ recipe }, i) => ({ id: `p${i}`, recipe })),
};

const saved = (form: ReturnType<typeof garmentToForm>): GarmentRecord | undefined =>
  toSave({ form, id: 'g1', now: 9, old: copied, begun: new Set() })?.garment;

const sectionsOf = (garment: GarmentRecord | undefined): readonly Section[] =>
  garment?.pieces[0]?.recipe.parts[0]?.sections ?? [];

/** The form with each section of the first part changed. */
function withSections(change: (section: SectionForm, index: number) => SectionForm) {
  const form = garmentToForm(copied);
  const pieces = form.pieces.map((entry) => {
    const parts = entry.form.parts.map((part) => ({ ...part, sections: part.sections.map(change) }));
    return { ...entry, form: { ...entry.form, parts } };
  });
  return { ...form, pieces };
}

const WORDS = 'knit the wishes of the season into it as you please';

describe('a garment copied from a pattern, changed in the editor', () => {
  it('keeps the words that nobody understood and the length that the text gives, when it is renamed', () => {
    const garment = saved({ ...garmentToForm(copied), name: 'Blue scarf' });
    expect(garment?.pieces).toEqual(copied.pieces);
    expect(sectionsOf(garment)[0]?.own?.[1]).toContain(WORDS);
    expect(sectionsOf(garment)[1]?.length?.mm).toBe(380);
  });

  it('keeps the length when its rows are counted otherwise: it is still to measure so much', () => {
    const form = withSections((section, i) => (i === 1 ? { ...section, rows: '90' } : section));
    expect(sectionsOf(saved(form))[1]).toMatchObject({ rows: 90, length: { mm: 380 } });
  });

  it('leaves out the words of a row that is no more, and has them again with the row', () => {
    const shorter = withSections((section, i) => (i === 0 ? { ...section, rows: '0' } : section));
    expect(sectionsOf(saved(shorter))[0]).not.toHaveProperty('own');
    const again = withSections((section, i) => (i === 0 ? { ...section, rows: '1' } : section));
    expect(sectionsOf(saved(again))[0]?.own?.[1]).toContain(WORDS);
  });

  it('has what a draft of the older kind did not carry, where the section still stands', () => {
    const form = withSections(({ own: _own, length: _length, ...section }, i) =>
      i === 1 ? { ...section, rows: '90' } : section,
    );
    const draft = { version: 1, garment: 'g1', at: 7, form } as const;
    const sections = sectionsOf(saved(formOf(draft, copied)));
    expect(sections[0]?.own?.[1]).toContain(WORDS);
    expect(sections[1]).toMatchObject({ rows: 90, length: { mm: 380 } });
    expect(sectionsOf(saved(formOf({ ...draft, version: 2 }, copied)))[0]).not.toHaveProperty('own');
  });
});
