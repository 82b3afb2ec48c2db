import { describe, expect, it } from 'vitest';
import { keptByName, roleShown, withRole } from '../../../../src/app/drafts/editor/renaming.ts';
import type { PieceForm } from '../../../../src/knit/piece/form/form.ts';
import type { Recipe } from '../../../../src/knit/piece/recipe.ts';
import type { GarmentRecord } from '../../../../src/store/records.ts';

const recipe = (name: string, over: Partial<Recipe> = {}): Recipe => ({ name, makes: 1, parts: [], ...over });
const garment = (over: Partial<GarmentRecord>) => over as GarmentRecord;
const form = (name: string, over: Partial<PieceForm> = {}): PieceForm => ({
  name,
  makes: '1',
  parts: [],
  ...over,
});

describe('what a piece is', () => {
  it('is written down for a new one, and for one that is called otherwise: what its name said before', () => {
    expect(withRole(recipe('Back'), undefined)).toMatchObject({ role: 'back' });
    expect(withRole(recipe('Grey'), recipe('Sleeve'))).toMatchObject({ role: 'sleeve' });
    expect(withRole(recipe('Sleeve'), recipe('Sleeve'))).not.toHaveProperty('role');
    expect(withRole(recipe('Grey', { role: 'front' }), recipe('Sleeve'))).toMatchObject({ role: 'front' });
  });

  it('is shown as she chose, else as its stored name says, else as it is called now', () => {
    const stored = garment({ pieces: [{ id: 'p', recipe: recipe('Sleeve') }] });
    const shown = (id: string, piece: PieceForm, of: GarmentRecord | undefined = stored) =>
      roleShown({ id, form: piece }, of);
    expect(shown('p', form('Back', { role: 'front' }))).toBe('front');
    expect(shown('p', form('Back'))).toBe('sleeve');
    expect(shown('q', form('Back'))).toBe('back');
    expect(roleShown({ id: 'p', form: form('Back') }, undefined)).toBe('back');
  });
});

describe('what is kept under the name of a piece', () => {
  const stretch = (piece: string) => ({ piece, part: piece, make: 1, edge: 'left' }) as const;
  const old = garment({
    pieces: [
      { id: 'p', recipe: recipe('Back') },
      { id: 'q', recipe: recipe('Front') },
    ],
    taken: [
      { piece: 'Back', grams: 80 },
      { piece: 'Front', grams: 90 },
    ] as unknown as NonNullable<GarmentRecord['taken']>,
    joints: [
      { kind: 'seam', of: 'side', how: 'mattress', a: [stretch('Back')], b: [stretch('Front')] },
    ] as NonNullable<GarmentRecord['joints']>,
  });

  it('goes with the piece when it is called otherwise, and nothing else is touched', () => {
    const kept = keptByName(old, [
      { id: 'p', recipe: recipe('Grey') },
      { id: 'q', recipe: recipe('Front') },
      { id: 'new', recipe: recipe('Back') },
    ]);
    expect(kept.taken).toMatchObject([{ piece: 'Grey' }, { piece: 'Front' }]);
    expect(kept.joints).toEqual([
      {
        kind: 'seam',
        of: 'side',
        how: 'mattress',
        // the parts keep their own names
        a: [{ ...stretch('Back'), piece: 'Grey' }],
        b: [stretch('Front')],
      },
    ]);
    expect(kept).not.toHaveProperty('ticked');
    expect(kept).not.toHaveProperty('byHand');
  });

  it('is a seam of her own and a tick as well', () => {
    const byHand = [{ id: 'x', a: [stretch('Back')], b: [stretch('Front')], how: 'mattress' }] as never;
    const kept = keptByName(garment({ pieces: old.pieces, byHand, ticked: ['block Back', 'ends'] }), [
      { id: 'p', recipe: recipe('Grey') },
      { id: 'q', recipe: recipe('Front') },
    ]);
    expect(kept.byHand).toMatchObject([{ id: 'x', a: [{ piece: 'Grey' }], b: [{ piece: 'Front' }] }]);
    expect(kept.ticked).toEqual(['block Grey', 'ends']);
    expect(Object.keys(kept).sort()).toEqual(['byHand', 'ticked']);
  });

  it('stays as it is stored where no piece is called otherwise', () => {
    expect(keptByName(old, old.pieces)).toEqual({});
    expect(keptByName(old, [{ id: 'new', recipe: recipe('Other') }])).toEqual({});
  });
});
