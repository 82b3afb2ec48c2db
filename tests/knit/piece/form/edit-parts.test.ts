import { describe, expect, it } from 'vitest';
import {
  duplicatePart,
  mirrorPart,
  removePart,
  renamePart,
  splitPart,
} from '../../../../src/knit/piece/form/edit-parts.ts';
import type { PartForm, PieceForm } from '../../../../src/knit/piece/form/form.ts';
import { freeName, moved } from '../../../../src/knit/piece/form/list.ts';
import { formToRecipe } from '../../../../src/knit/piece/form/read-piece.ts';
import { plan } from '../../../../src/knit/piece/plan.ts';

const body: PartForm = {
  name: 'Body',
  start: { kind: 'cast on', stitches: '60' },
  sections: [{ name: 'Plain', rows: '10', fabric: 'stocking', needle: '4', shaping: [] }],
  end: 'bind off',
};

const piece = (...parts: readonly PartForm[]): PieceForm => ({ name: 'Front', makes: '1', parts });

const wish = {
  right: { name: 'Left shoulder', stitches: '25' },
  left: { name: 'Right shoulder', stitches: '25' },
  middle: { name: 'Centre neck', stitches: '10', end: 'hold' },
} as const;

const shaped: PartForm = {
  name: 'Left shoulder',
  start: { kind: 'split', part: 'Body', stitches: '30', edge: 'right' },
  sections: [
    {
      name: 'Neck',
      rows: '20',
      fabric: 'stocking',
      needle: '4',
      shaping: [
        {
          kind: 'edge',
          edge: 'left',
          change: 'decrease',
          by: '1',
          inset: '2',
          lean: 'mirrored',
          first: '1',
          rhythm: [{ every: '2', times: '8' }],
        },
        { kind: 'bind off', edge: 'right', first: '15', every: '2', groups: '6, 5, 5' },
      ],
    },
  ],
  end: 'bind off',
};

describe('changing the parts of a piece', () => {
  it('a part that is renamed goes on giving its stitches to the parts after it', () => {
    const renamed = renamePart(splitPart(piece(body), 0, wish), 0, 'Lower front');
    expect(renamed.parts.map((p) => p.start.kind === 'split' && p.start.part)).toEqual([
      false,
      'Lower front',
      'Lower front',
      'Lower front',
    ]);
  });

  it('a split makes two shoulders and the middle between them, and can be knitted', () => {
    const split = splitPart(piece(body), 0, wish);
    expect(split.parts.map((p) => [p.name, p.end])).toEqual([
      ['Body', 'split'],
      ['Left shoulder', 'bind off'],
      ['Centre neck', 'hold'],
      ['Right shoulder', 'bind off'],
    ]);
    expect(split.parts.slice(1).map(({ start }) => start.kind === 'split' && start.edge)).toEqual([
      'right',
      'middle',
      'left',
    ]);
    const read = formToRecipe(split);
    expect(read.ok && plan(read.value).ok).toBe(true);
  });

  it('a split with nothing between makes two parts only', () => {
    const split = splitPart(piece(body), 0, { ...wish, middle: { ...wish.middle, stitches: '' } });
    expect(split.parts).toHaveLength(3);
  });

  it('the other shoulder has its edges exchanged and its groups a row later, with a row more for the last one', () => {
    const twin = mirrorPart(piece({ ...body, end: 'split' }, shaped), 1, 'Right shoulder').parts[2];
    expect(twin?.start).toMatchObject({ edge: 'left' });
    expect(twin?.sections[0]?.rows).toBe('20');
    expect(twin?.sections[0]?.shaping).toMatchObject([
      { kind: 'edge', edge: 'right', first: '1' },
      { kind: 'bind off', edge: 'left', first: '16', groups: '6, 5, 5' },
    ]);
  });

  it('a mirror image fills the other side where that is still empty, under its own name, and is no third part', () => {
    const empty: PartForm = {
      ...shaped,
      name: 'Mine',
      start: { kind: 'split', part: 'Body', stitches: '', edge: 'left' },
      sections: [
        { ...(shaped.sections[0] as PartForm['sections'][number]), name: '', rows: '', shaping: [] },
      ],
    };
    const filled = mirrorPart(piece({ ...body, end: 'split' }, shaped, empty), 1, 'Right shoulder');
    expect(filled.parts.map(({ name }) => name)).toEqual(['Body', shaped.name, 'Mine']);
    expect(filled.parts[2]?.sections[0]?.rows).toBe('20');
    expect(filled.parts[2]?.start).toMatchObject({ edge: 'left', part: 'Body' });
    // what was typed there is not overwritten
    const begun = { ...empty, sections: empty.sections.map((section) => ({ ...section, rows: '4' })) };
    expect(
      mirrorPart(piece({ ...body, end: 'split' }, shaped, begun), 1, 'Right shoulder').parts,
    ).toHaveLength(4);
  });

  it('a mirror image that is a part more stands right behind its own, before all others', () => {
    const parts = [{ ...body, end: 'split' as const }, shaped, { ...body, name: 'Pocket' }];
    const names = (index: number, wanted: string) =>
      mirrorPart(piece(...parts), index, wanted).parts.map(({ name }) => name);
    expect(names(1, 'Other')).toEqual(['Body', shaped.name, 'Other', 'Pocket']);
    expect(names(0, 'Other')).toEqual(['Body', 'Other', shaped.name, 'Pocket']);
    expect(names(2, 'Body')).toEqual(['Body', shaped.name, 'Pocket', freeName('Body', ['Body', 'Pocket'])]);
    expect(names(3, 'Other')).toEqual(['Body', shaped.name, 'Pocket']);
  });

  it.each([
    // left to right a row earlier, later where there is no earlier one; right to left later; what is no number stays
    ['left', '1', '2'],
    ['left', '2', '1'],
    ['left', '3', '2'],
    ['right', '1', '2'],
    ['right', '2', '3'],
    ['left', 'x', 'x'],
    ['right', '1.5', '1.5'],
  ] as const)(
    'groups at the %s edge from row %s on lie from row %s on at the other',
    (edge, first, moved) => {
      const group = { kind: 'bind off', edge, first, every: '2', groups: '3; 2 + 2' } as const;
      const [section] = shaped.sections;
      const other = (rows: string) =>
        mirrorPart(
          piece(body, { ...shaped, sections: section ? [{ ...section, rows, shaping: [group] }] : [] }),
          1,
          'Right shoulder',
        ).parts[2]?.sections[0];
      expect(other('10')).toMatchObject({
        rows: '10',
        shaping: [{ edge: edge === 'left' ? 'right' : 'left', first: moved }],
      });
      // the last of three groups lies four rows after the first
      const last = Number(moved) + 4;
      if (Number.isInteger(last)) expect(other('3')?.rows).toBe(String(last));
    },
  );

  it('both shoulders, one the mirror of the other, can be knitted', () => {
    const both = mirrorPart(piece({ ...body, end: 'split' }, shaped), 1, 'Right shoulder');
    const read = formToRecipe(both);
    const planned = read.ok && plan(read.value);
    expect(planned && !planned.ok ? planned.faults : []).toEqual([]);
  });

  it('a copy has a free name; removing takes one part only', () => {
    const twice = duplicatePart(duplicatePart(piece(body), 0), 0);
    expect(twice.parts.map((p) => p.name)).toEqual(['Body', 'Body 3', 'Body 2']);
    expect(removePart(twice, 1).parts.map((p) => p.name)).toEqual(['Body', 'Body 2']);
  });

  it('a name that is taken counts on from its own number', () => {
    expect(freeName('Sleeve 2', ['Sleeve', 'Sleeve 2', 'Sleeve 3'])).toBe('Sleeve 4');
  });

  it('nothing moves past the ends of a list', () => {
    expect(moved(['a', 'b', 'c'], 0, -1)).toEqual(['a', 'b', 'c']);
    expect(moved(['a', 'b', 'c'], 1, 1)).toEqual(['a', 'c', 'b']);
  });
});
