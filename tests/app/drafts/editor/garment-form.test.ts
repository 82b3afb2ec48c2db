import { describe, expect, it } from 'vitest';
import {
  besideForm,
  blankGarment,
  type GarmentForm,
  garmentToForm,
  gaugedAs,
  mainOf,
  readGarment,
  withGauge,
  withNeedle,
  type YarnForm,
  yarnToForm,
} from '../../../../src/app/drafts/editor/garment-form.ts';
import type { Yarn } from '../../../../src/knit/piece/garment.ts';
import type { Recipe } from '../../../../src/knit/piece/recipe.ts';
import type { GarmentRecord } from '../../../../src/store/records.ts';

/** A garment as it stands in the fields of a form, and as it is read out of them. */

const piece = (
  name: string,
  over: Partial<Recipe> = {},
  needles: readonly [number, number][] = [[4, 10]],
): Recipe => ({
  name,
  makes: 1,
  parts: [
    {
      name,
      from: { castOn: 20 },
      end: 'bind off',
      sections: needles.map(([needle, rows], i) => ({
        name: `section ${i}`,
        rows,
        fabric: 'stocking',
        needle,
        shaping: [],
      })),
    },
  ],
  ...over,
});

const record = (pieces: readonly Recipe[], over: Partial<GarmentRecord> = {}): GarmentRecord =>
  ({
    id: 'g',
    name: 'Wren',
    pieces: pieces.map((recipe, i) => ({ id: `piece${i}`, recipe })),
    ...over,
  }) as GarmentRecord;

const yarn: Required<Omit<Yarn, 'strands'>> = {
  name: 'Hollin',
  fibre: 'wool',
  colour: 'moss',
  dyeLot: '17b',
  grams: 50,
  metres: 120.5,
  balls: 3,
};

const typed = (over: Partial<GarmentForm>): GarmentForm => ({ ...blankGarment, name: 'Wren', ...over });
const fieldsOf = (form: GarmentForm) => readGarment(form).faults.map(({ at }) => at.field);

describe('yarn in the fields of a form', () => {
  it('has a field for each thing that is known, and is read out of them as it was', () => {
    const form = yarnToForm(yarn);
    expect(form).toEqual({
      name: 'Hollin',
      fibre: 'wool',
      colour: 'moss',
      dyeLot: '17b',
      grams: '50',
      metres: '120.5',
      balls: '3',
    });
    expect(readGarment(typed({ yarn: form })).yarn).toEqual(yarn);
  });

  it.each(Object.keys(yarn) as (keyof YarnForm)[])(
    'of which nothing but %s is known has nothing else',
    (field) => {
      const only = field === 'name' ? { name: 'Hollin' } : { name: '', [field]: yarn[field] };
      const form = yarnToForm(only as Yarn);
      expect(Object.entries(form).filter(([, text]) => text !== '')).toEqual([
        [field, String(only[field as 'name'])],
      ]);
      expect(readGarment(typed({ yarn: form })).yarn).toEqual(only);
    },
  );

  it('is none where nothing is typed, or nothing but spaces, which are never kept', () => {
    expect(readGarment(typed({})).yarn).toBeUndefined();
    expect(yarnToForm(undefined)).toEqual(blankGarment.yarn);
    expect(readGarment(typed({ yarn: { ...blankGarment.yarn, colour: '  ' } })).yarn).toBeUndefined();
    expect(
      readGarment(typed({ yarn: { ...blankGarment.yarn, name: ' Hollin ', colour: ' moss ' } })).yarn,
    ).toEqual({
      name: 'Hollin',
      colour: 'moss',
    });
  });

  it.each(['grams', 'metres', 'balls'] as const)('whose %s are no number says so at that field', (field) => {
    expect(fieldsOf(typed({ yarn: { ...blankGarment.yarn, [field]: 'many' } }))).toEqual([`yarn ${field}`]);
  });

  it('has whole balls, and grams and metres with a fraction as either land writes it', () => {
    const with_ = (over: Partial<YarnForm>) => typed({ yarn: { ...blankGarment.yarn, ...over } });
    expect(fieldsOf(with_({ balls: '2.5' }))).toEqual(['yarn balls']);
    expect(readGarment(with_({ grams: '2.5', metres: '7,5' })).yarn).toMatchObject({
      grams: 2.5,
      metres: 7.5,
    });
  });

  it('keeps what no field shows', () => {
    expect(besideForm({ ...yarn, strands: 2 })).toEqual({ strands: 2 });
    expect(besideForm(yarn)).toEqual({});
  });
});

describe('a garment in the fields of a form', () => {
  it('must have a name and a needle; notes of nothing are none', () => {
    expect(fieldsOf(typed({ name: '  ' }))).toEqual(['name']);
    expect(fieldsOf(typed({ needle: 'thick' }))).toEqual(['needle']);
    expect(readGarment(typed({ name: ' Wren ', notes: ' \n' }))).toMatchObject({
      name: 'Wren',
      notes: undefined,
    });
    expect(readGarment(typed({ notes: ' a\n' })).notes).toBe(' a\n');
  });

  it('has a tension once one of its numbers is typed, and both must be there', () => {
    const gauge = (stitches: string, rows: string) =>
      typed({ gauge: { ...blankGarment.gauge, stitches, rows } });
    expect(readGarment(gauge('', ' ')).gauge).toBeUndefined();
    expect(readGarment(gauge('20', '28')).gauge).toMatchObject({ stitches: 20, rows: 28, needle: 4 });
    expect(fieldsOf(gauge('20', ''))).toEqual(['gauge rows']);
    expect(fieldsOf(gauge('', '28'))).toEqual(['gauge stitches']);
  });

  it('shows the tension of the first piece that has one, and the needle that it was measured with', () => {
    const gauge = { stitches: 20, rows: 40, fabric: 'garter', needle: 3.5 } as const;
    const form = garmentToForm(record([piece('cord'), piece('back', { gauge })], { notes: 'soft' }));
    expect(form).toMatchObject({ name: 'Wren', notes: 'soft', needle: '3.5', yarn: blankGarment.yarn });
    expect(form.gauge).toMatchObject({ stitches: '20', rows: '40', fabric: 'garter', needle: '3.5' });
    expect(form.pieces.map(({ id }) => id)).toEqual(['piece0', 'piece1']);
  });

  it('without a tension begins with the needle of most of its rows, be they in many sections', () => {
    const needle = (...needles: readonly [number, number][]) =>
      garmentToForm(record([piece('x', {}, needles)])).needle;
    expect(needle([3, 10], [4, 8], [4.5, 9])).toBe('3');
    expect(needle([3, 10], [4, 8], [4.5, 9], [4, 3])).toBe('4');
    expect(garmentToForm(record([])).needle).toBe('4');
    expect(garmentToForm(record([])).notes).toBe('');
  });

  it('begins new sections in the fabric and needle of the tension', () => {
    const { fabric: _, ...bare } = blankGarment.gauge;
    expect(mainOf({ gauge: { ...bare, fabric: 'garter' }, needle: '5' })).toEqual({
      fabric: 'garter',
      needle: '5',
    });
    expect(mainOf({ gauge: bare, needle: '5' })).toEqual({ fabric: 'stocking', needle: '5' });
  });
});

describe('another tension for a garment', () => {
  const gauge = { stitches: 20, rows: 28, fabric: 'stocking', needle: 4 } as const;
  const form = garmentToForm(
    record([piece('back', { gauge }), piece('cord'), piece('edging', { gauge: { ...gauge, rows: 30 } })]),
  );
  const next = { ...form.gauge, stitches: '22' };
  const stitches = (of: GarmentForm) => of.pieces.map((entry) => entry.form.gauge?.stitches);

  it('goes to the pieces that had the one before or none; a piece with its own keeps it', () => {
    const after = withGauge(form, next);
    expect(after.gauge).toEqual(next);
    expect(stitches(after)).toEqual(['22', '22', '20']);
  });

  it.each(['stitches', 'rows', 'needle'] as const)('leaves a piece alone whose %s alone differ', (field) => {
    const own = { ...form.gauge, [field]: '9' };
    const [back] = form.pieces;
    if (back === undefined) throw new Error('no piece');
    const mixed = { ...form, pieces: [{ ...back, form: { ...back.form, gauge: own } }] };
    expect(withGauge(mixed, next).pieces[0]?.form.gauge).toEqual(own);
  });

  it('that is blank is none: the pieces that follow have none either', () => {
    const blank = { ...form.gauge, stitches: ' ', rows: '' };
    expect(stitches(withGauge(form, blank))).toEqual([undefined, undefined, '20']);
    expect(gaugedAs({ name: 'x', makes: '1', parts: [] } as never, blank)).not.toHaveProperty('gauge');
    const half = { ...blank, rows: '28' };
    expect(gaugedAs({ name: 'x', makes: '1', parts: [] } as never, half)).toHaveProperty('gauge', half);
  });

  it('by another needle is a needle for new sections as well', () => {
    const after = withNeedle(form, '5');
    expect(after.needle).toBe('5');
    expect(after.gauge.needle).toBe('5');
    expect(after.pieces.map((entry) => entry.form.gauge?.needle)).toEqual(['5', '5', '4']);
  });
});

describe('the yarn of a form', () => {
  const empty: YarnForm = { name: '', fibre: '', colour: '', dyeLot: '', grams: '', metres: '', balls: '' };
  const read = (typed: Partial<YarnForm>) =>
    readGarment({ ...blankGarment, name: 'Wren', yarn: { ...empty, ...typed } });

  it('is none where nothing was typed, and has only what was', () => {
    expect(read({}).yarn).toBeUndefined();
    expect(read({ name: '  ', balls: ' ' }).yarn).toBeUndefined();
    expect(read({ name: ' Hollin ', fibre: ' wool ' }).yarn).toEqual({ name: 'Hollin', fibre: 'wool' });
    expect(read({ colour: 'moss' }).yarn).toEqual({ name: '', colour: 'moss' });
    expect(read({ dyeLot: '17b', balls: '3' }).yarn).toEqual({ name: '', dyeLot: '17b', balls: 3 });
    expect(read({ grams: '50', metres: '120.5' }).yarn).toEqual({ name: '', grams: 50, metres: 120.5 });
  });

  it('has whole balls, and parts of grams and metres', () => {
    const fieldsOf = (typed: Partial<YarnForm>) => read(typed).faults.map(({ at }) => at.field);
    expect(fieldsOf({ balls: '2.5' })).toEqual(['yarn balls']);
    expect(fieldsOf({ grams: '2.5', metres: '2.5' })).toEqual([]);
    expect(fieldsOf({ grams: 'x', metres: 'y' })).toEqual(['yarn grams', 'yarn metres']);
  });
});

describe('what a form says of its garment', () => {
  it('is a name without the blanks around it, and notes as they were typed', () => {
    const read = (of: Partial<GarmentForm>) => readGarment({ ...blankGarment, ...of });
    expect(read({ name: ' Wren ' }).name).toBe('Wren');
    expect(read({ name: '  ' }).faults.map(({ code, at }) => [code, at.field])).toContainEqual([
      'no name',
      'name',
    ]);
    expect(read({ name: 'Wren', notes: ' ' }).notes).toBeUndefined();
    expect(read({ name: 'Wren', notes: ' soft ' }).notes).toBe(' soft ');
    expect(read({ name: 'Wren' }).gauge).toBeUndefined();
  });
});
