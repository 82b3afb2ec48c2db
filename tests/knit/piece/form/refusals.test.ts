import { describe, expect, it } from 'vitest';
import type { PartForm, PieceForm } from '../../../../src/knit/piece/form/form.ts';
import { formToRecipe, readPiece } from '../../../../src/knit/piece/form/read-piece.ts';

const body: PartForm = {
  name: 'Body',
  start: { kind: 'cast on', stitches: '80' },
  sections: [{ name: 'Rib', rows: '12', fabric: 'rib 1x1', needle: '3.25', shaping: [] }],
  end: 'split',
};

const piece = (...parts: readonly PartForm[]): PieceForm => ({ name: 'Front', makes: '1', parts });

const faultsOf = (form: PieceForm) => {
  const read = formToRecipe(form);
  return read.ok ? [] : read.faults.map((f) => [f.code, f.at.part, f.at.sectionIndex, f.at.field]);
};

describe('what a form cannot say', () => {
  it('a split and a pick-up without their stitches are told at the field of each', () => {
    const side: PartForm = {
      ...body,
      name: 'Side',
      start: { kind: 'split', part: 'Body', stitches: '', edge: 'right' },
    };
    const band: PartForm = {
      ...body,
      name: 'Band',
      start: {
        kind: 'pick up',
        edges: [
          { along: 'neck', stitches: '12' },
          { along: 'neck', stitches: '' },
        ],
      },
    };
    expect(faultsOf(piece(body, side, band))).toEqual([
      ['blank', 'Side', undefined, 'stitches'],
      ['blank', 'Band', undefined, 'pick up 2'],
    ]);
  });

  it('a blank field and a word for a number are told at their fields, all at once', () => {
    const rows = { ...body.sections[0], rows: '', needle: 'thick' } as PartForm['sections'][number];
    expect(
      faultsOf(piece({ ...body, start: { kind: 'cast on', stitches: '8o' }, sections: [rows] })),
    ).toEqual([
      ['not a whole number', 'Body', undefined, 'cast on'],
      ['blank', 'Body', 0, 'rows'],
      ['not a measure', 'Body', 0, 'needle'],
    ]);
  });

  it('a shaping entry is told by its number and field', () => {
    const rhythm = [{ every: '', times: '4' }];
    const section = {
      ...body.sections[0],
      shaping: [
        { kind: 'across', change: 'increase', stitches: '8', row: '1' },
        {
          kind: 'edge',
          edge: 'left',
          change: 'decrease',
          by: '1',
          inset: '1',
          lean: 'mirrored',
          first: '3',
          rhythm,
        },
      ],
    } as PartForm['sections'][number];
    expect(faultsOf(piece({ ...body, sections: [section] }))).toEqual([
      ['blank', 'Body', 0, 'shaping 2 rhythm 1 every'],
    ]);
  });

  it('two parts of one name, a nameless one, and stitches from a part that does not come before', () => {
    const shoulder: PartForm = {
      ...body,
      start: { kind: 'split', part: 'Yoke', stitches: '30', edge: 'right' },
    };
    expect(faultsOf(piece(body, shoulder, { ...body, name: ' ' }))).toEqual([
      ['part name twice', 'Body', undefined, 'name'],
      ['no such part', 'Body', undefined, 'from'],
      ['no name', ' ', undefined, 'name'],
    ]);
  });

  it('what can be read is read, beside what cannot', () => {
    const { recipe, faults } = readPiece({ ...piece(body), makes: 'two' });
    expect(faults).toHaveLength(1);
    expect(recipe.parts[0]?.from).toEqual({ castOn: 80 });
  });

  it('a fault in a list of groups names the word that is wrong', () => {
    const section = {
      ...body.sections[0],
      shaping: [{ kind: 'bind off', edge: 'right', first: '1', every: '2', groups: '4, x, 2' }],
    } as PartForm['sections'][number];
    const read = formToRecipe(piece({ ...body, sections: [section] }));
    expect(!read.ok && read.faults[0]).toMatchObject({
      code: 'not a whole number',
      figures: { typedText: 'x' },
      at: { field: 'shaping 1 groups' },
    });
  });
});
