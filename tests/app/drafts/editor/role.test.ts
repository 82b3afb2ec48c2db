import { describe, expect, it } from 'vitest';
import {
  blankGarment,
  type GarmentForm,
  garmentToForm,
} from '../../../../src/app/drafts/editor/garment-form.ts';
import { toSave } from '../../../../src/app/drafts/editor/save.ts';
import { garmentOf } from '../../../../src/app/garments/garment-of.ts';
import { demoGarment, demoNames } from '../../../../src/knit/garment/demo.ts';
import { sampleGarment } from '../../../../src/knit/garment/sample.ts';
import { makingUp } from '../../../../src/knit/making-up/making-up.ts';
import { proposedRole } from '../../../../src/knit/making-up/role.ts';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { freshPiece } from '../../../../src/knit/piece/form/fresh.ts';
import { type StarterWords, starter, starterNames } from '../../../../src/knit/piece/form/starters.ts';
import type { PieceRole, Recipe } from '../../../../src/knit/piece/recipe.ts';
import type { GarmentRecord } from '../../../../src/store/records.ts';

/** As it was stored before pieces stated what they are. */
const untold = ({ role: _role, ...recipe }: Recipe): Recipe => recipe;

const stored: GarmentRecord = {
  ...sampleGarment,
  id: 'g1',
  createdAt: 5,
  changedAt: 6,
  pieces: sampleGarment.pieces.map((recipe, i) => ({ id: `p${i}`, recipe: untold(recipe) })),
  ticked: ['block Back', 'shoulders'],
  taken: [{ piece: 'Back', make: 1, grams: 120 }],
};

const rename = (form: GarmentForm, id: string, name: string): GarmentForm => ({
  ...form,
  pieces: form.pieces.map((entry) => (entry.id === id ? { ...entry, form: { ...entry.form, name } } : entry)),
});

const saved = (form: GarmentForm, begun: readonly string[] = [], old: GarmentRecord | undefined = stored) =>
  toSave({ form, id: 'g1', now: 9, old, begun: new Set(begun) })?.garment as GarmentRecord;

const kindsOf = (garment: GarmentRecord) => {
  const steps = makingUp(garmentOf(garment));
  return steps.ok ? steps.value.map((step) => step.kind) : [];
};

const rolesOf = (recipes: readonly Recipe[]): readonly (PieceRole | undefined)[] =>
  recipes.map(({ role }) => role);

describe('what a piece is in the garment', () => {
  it.each([[], ['p0']])('stays when Back is called Grey panel, begun or not (%j)', (...begun) => {
    const garment = saved(rename(garmentToForm(stored), 'p0', 'Grey panel'), begun);
    expect(garment.pieces[0]?.recipe).toMatchObject({ name: 'Grey panel', role: 'back' });
    expect(kindsOf(garment)).toEqual(kindsOf(stored));
    expect(kindsOf(stored)).toContain('side seams');
  });

  it('stays through two names, and keeps its ticks and what it weighed', () => {
    const once = saved(rename(garmentToForm(stored), 'p0', 'Front of the back'));
    const twice = saved(rename(garmentToForm(once), 'p0', 'Sleeveless'), [], once);
    expect(twice.pieces[0]?.recipe.role).toBe('back');
    expect(twice.ticked).toEqual(['block Sleeveless', 'shoulders']);
    expect(twice.taken).toEqual([{ piece: 'Sleeveless', make: 1, grams: 120 }]);
  });

  it('is not written into an old garment of which no piece is renamed', () => {
    expect(saved({ ...garmentToForm(stored), name: 'Blue' }).pieces).toEqual(stored.pieces);
  });

  it('is proposed from the name of a new piece, and holds from then on', () => {
    const piece = { ...freshPiece('Rücken', [], { fabric: 'garter', needle: '4' }), makes: '1' };
    const filled = {
      ...piece,
      parts: piece.parts.map((part) => ({
        ...part,
        start: { kind: 'cast on' as const, stitches: '20' },
        sections: part.sections.map((section) => ({ ...section, rows: '8' })),
      })),
    };
    const form: GarmentForm = { ...blankGarment, name: 'Vest', pieces: [{ id: 'p1', form: filled }] };
    const made = toSave({ form, id: 'g2', now: 9, old: undefined, begun: new Set() })?.garment;
    expect(made?.pieces[0]?.recipe.role).toBe('back');
  });

  it('is what she chose, whatever the name says', () => {
    const form = garmentToForm(stored);
    const pieces = form.pieces.map((entry) => ({
      ...entry,
      form: { ...entry.form, role: 'other' as const },
    }));
    expect(rolesOf(saved({ ...form, pieces }, ['p0']).pieces.map(({ recipe }) => recipe))).toEqual([
      'other',
      'other',
      'other',
      'other',
    ]);
  });

  it('is stated by the sample, the drafts, the starters and the reader', () => {
    expect(rolesOf(sampleGarment.pieces)).toEqual(['back', 'front', 'sleeve', 'neckband']);
    for (const name of demoNames) {
      const made = demoGarment(name);
      expect(made.ok && made.value.pieces.every(({ role }) => role !== undefined)).toBe(true);
    }
    const words = new Proxy({}, { get: (_, word) => `x${String(word)}` }) as StarterWords;
    const wish = { gauge: { stitches: 20, rows: 28 }, needle: 4, words };
    expect(starterNames.map((name) => starter(name, wish).role)).toEqual(starterNames);
    const text = 'LEFT FRONT\nCast on 20 sts.\nWork 4 rows in garter st.\nBind off all sts.\n';
    expect(rolesOf(readPattern(text).pieces.map(({ recipe }) => recipe))).toEqual(['left front']);
  });

  // the words are those of the pieces in the published patterns of tests/outside, and common German ones
  it.each([
    ['Left front', 'left front'],
    ['RIGHT FRONT', 'right front'],
    ['Linkes Vorderteil', 'left front'],
    ['rechtes Vorderteil', 'right front'],
    ['Front', 'front'],
    ['Button band', 'front band'],
    ['Collar', 'neckband'],
    ['Grey panel', 'other'],
  ] as const)('%s is proposed to be the %s', (name, role) => {
    expect(proposedRole(name)).toBe(role);
  });
});
