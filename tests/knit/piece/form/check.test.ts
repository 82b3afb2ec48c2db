import { describe, expect, it } from 'vitest';
import { checkPiece } from '../../../../src/knit/piece/form/check.ts';
import type { PartForm, PieceForm, SectionForm, ShapingForm } from '../../../../src/knit/piece/form/form.ts';

const section = (rows: string, ...shaping: readonly ShapingForm[]): SectionForm => ({
  name: 'Body',
  rows,
  fabric: 'stocking',
  needle: '4',
  shaping,
});

const part = (castOn: string, ...sections: readonly SectionForm[]): PartForm => ({
  name: 'Front',
  start: { kind: 'cast on', stitches: castOn },
  sections,
  end: 'bind off',
});

const piece = (...parts: readonly PartForm[]): PieceForm => ({ name: 'Front', makes: '1', parts });

const edge = (first: string, every: string, times: string): ShapingForm => ({
  kind: 'edge',
  edge: 'both',
  change: 'decrease',
  by: '1',
  inset: '1',
  lean: 'mirrored',
  first,
  rhythm: [{ every, times }],
});

const groups = (where: 'right' | 'left' | 'both', first: string, list: string): ShapingForm => ({
  kind: 'bind off',
  edge: where,
  first,
  every: '2',
  groups: list,
});

const places = (form: PieceForm) =>
  checkPiece(form).faults.map(({ fault, ...place }) => ({ code: fault.code, ...place }));

describe('a fault is said at the field that it comes from', () => {
  it('a piece without fault has its plan', () => {
    const check = checkPiece(piece(part('40', section('20', edge('1', '4', '5')))));
    expect(check.faults).toEqual([]);
    expect(check.plan?.parts[0]?.rows).toHaveLength(21);
  });

  it('how often it is made and what it is called: at the piece, and at none of its parts', () => {
    const form = piece(part('40', section('20')), { ...part('20', section('4')), name: 'Back' });
    const at = (over: Partial<PieceForm>) =>
      places({ ...form, ...over }).map(({ code: _code, ...place }) => place);
    expect(at({ makes: '' })).toEqual([{ field: 'makes' }]);
    expect(at({ name: '' })).toEqual([{ field: 'name' }]);
  });

  it('more decreases than stitches: at the shaping that asks for them', () => {
    const form = piece(part('8', section('4'), section('20', edge('1', '2', '9'))));
    expect(places(form)).toEqual([
      { code: 'shaping needs more stitches', part: 0, section: 1, field: 'shaping 1' },
    ]);
  });

  it('shaping rows that do not fit: at the second entry, though the first is two shapings of the recipe', () => {
    const form = piece(part('60', section('20', groups('both', '1', '3, 2'), edge('5', '4', '9'))));
    expect(places(form)).toEqual([
      { code: 'shaping outside the section', part: 0, section: 0, field: 'shaping 2' },
    ]);
  });

  it('a group where the other edge begins the row: at that group', () => {
    const form = piece(part('60', section('20', groups('left', '1', '3, 2'), edge('1', '4', '2'))));
    expect(places(form)).toEqual([
      { code: 'group on the wrong side', part: 0, section: 0, field: 'shaping 1' },
    ]);
  });

  it('and of several entries at the one that has that row: the last of them, groups before all else', () => {
    const left = groups('left', '1', '3, 2');
    const wrong = (...entries: Parameters<typeof section>[1][]) =>
      places(piece(part('60', section('20', ...entries))));
    const at = (field: string) => [{ code: 'group on the wrong side', part: 0, section: 0, field }];
    expect(wrong(edge('1', '4', '2'), left)).toEqual(at('shaping 2'));
    expect(wrong(groups('both', '5', '3, 2'), edge('1', '4', '2'), left)).toEqual(at('shaping 3'));
    expect(wrong(left, groups('both', '5', '3, 2'), edge('1', '4', '2'))).toEqual(at('shaping 1'));
  });

  it('an odd count where the rib needs an even one: at the fabric of that section', () => {
    const form = piece(part('41', { ...section('8'), fabric: 'rib 1x1' }));
    expect(places(form)).toEqual([{ code: 'fabric multiple', part: 0, section: 0, field: 'fabric' }]);
  });

  it('a split that leaves stitches over: at the end of the part that is split', () => {
    const shoulder: PartForm = {
      ...part('', section('4')),
      name: 'Shoulder',
      start: { kind: 'split', part: 'Front', stitches: '15', edge: 'right' },
    };
    const form = piece({ ...part('40', section('4')), end: 'split' }, shoulder);
    expect(places(form)).toEqual([{ code: 'split does not share', part: 0, field: 'end' }]);
  });

  it('of two parts with one name, at the later one', () => {
    const form = piece(part('40', section('4')), part('40', section('4')));
    expect(places(form)).toEqual([{ code: 'part name twice', part: 1, field: 'name' }]);
  });

  it('counts stand beside an unreadable field', () => {
    const check = checkPiece(piece(part('40', section('20', edge('1', '4', '5')), section(''))));
    expect(check.counts[0]?.sections.map(({ before, after }) => [before, after])).toEqual([
      [40, 30],
      [30, undefined],
    ]);
    expect(check.plan).toBeUndefined();
  });
});

describe('a piece that is larger than anything knitted by hand', () => {
  it('is not worked with every letter that is typed: it says that it is too much', () => {
    expect(places(piece(part('2000', section('1000'))))).toMatchObject([{ code: 'too much to plan' }]);
    expect(places(piece(part('600', section('900'))))).toEqual([]);
  });
});
