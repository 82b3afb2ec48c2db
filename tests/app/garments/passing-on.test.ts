import { afterEach, describe, expect, it, vi } from 'vitest';
import { type DesignForm, designOf, newForm } from '../../../src/app/drafts/design/form.ts';
import { fitPassed, isChanged } from '../../../src/app/garments/fit-passed.ts';
import { inGauge } from '../../../src/app/garments/in-gauge.ts';
import {
  againFor,
  CODE_ROOM,
  codesOf,
  garmentInLink,
  linkFor,
  linkInFile,
} from '../../../src/app/garments/passing-on.ts';
import { numbered } from '../../../src/app/garments/save-new.ts';
import { type SizeSet, usualSet } from '../../../src/app/garments/size-set.ts';
import { stripesLaid } from '../../../src/app/garments/stripes-laid.ts';
import { parseRoute } from '../../../src/app/routes.ts';
import { bodyTables } from '../../../src/knit/garment/bodies.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { GarmentRecord } from '../../../src/store/records.ts';
import { joinParts, readPart } from '../../../src/store/share/link-parts.ts';
import { given } from '../../store/scenario.ts';
import '../tasks-here.ts';

afterEach(() => vi.unstubAllGlobals());

const record: GarmentRecord = {
  ...sampleGarment,
  id: 'sample',
  createdAt: 1,
  changedAt: 1,
  notes: 'soft',
  pieces: sampleGarment.pieces.map((recipe, i) => ({ id: `p${i}`, recipe })),
} as GarmentRecord;

const linked = async (withNotes: boolean, of = record) => {
  vi.stubGlobal('location', { origin: 'https://example.org', pathname: '/knits/app/' });
  vi.stubGlobal('document', { baseURI: 'https://example.org/knits/app/' });
  const link = await linkFor(of, { withNotes });
  const [address = '', hash = ''] = link.split('#');
  const route = parseRoute(`#${hash}`);
  const garment = await garmentInLink(route?.at.text ?? '').garment;
  if (garment === undefined) throw new Error('stopped');
  return { link, address, screen: route?.screen, garment: given(garment) };
};

describe('a garment that is passed on', () => {
  it('is all behind the sign that no browser sends, at the address of this copy of the app', async () => {
    const { address, screen, garment } = await linked(false);
    expect(address).toBe('https://example.org/knits/app/');
    expect(screen).toBe('openLink');
    expect(garment.name).toBe(sampleGarment.name);
    expect(garment.pieces).toEqual(sampleGarment.pieces);
  });

  const stripes = [
    { colour: 'woad', rows: 2 },
    { colour: 'sand', rows: 4 },
  ];
  const [first, second] = record.pieces.map(({ id }) => id);
  const striped: GarmentRecord = {
    ...record,
    stripes,
    striped: { [`${first}`]: { first: 21, at: 1 } },
    restriped: [{ piece: `${second}`, make: 1, part: 0, row: 43, at: 3, stripes }],
  } as never;

  it('brings its stripes, those changed from a row on too, under the ids that its pieces get in a workbasket', async () => {
    const { link, garment } = await linked(false, striped);
    // an app that knows none in links says that it is too old
    expect(link).toContain('#/open/3.');
    expect(garment.stripes).toEqual(stripes);
    expect(numbered(garment.pieces).map(({ id }) => id)).toEqual(
      garment.pieces.map((_, i) => `piece${i + 1}`),
    );
    expect(garment.striped).toEqual({ piece1: { first: 21, at: 1 } });
    expect(garment.restriped).toEqual([{ piece: 'piece2', make: 1, part: 0, row: 43, at: 3, stripes }]);
    expect(Object.keys((await linked(false)).garment)).not.toContain('stripes');
  });

  it('has its stripes where they lie while it has its rows, and laid through its pieces anew in another gauge', async () => {
    const { garment } = await linked(false, striped);
    expect(stripesLaid(garment, garment)).toBe(garment);
    const asked = garment.pieces[0]?.gauge;
    if (!asked) throw new Error('without a gauge');
    const mine = given(inGauge(garment, asked, { ...asked, rows: asked.rows * 1.25 }));
    const here = stripesLaid(garment, mine);
    expect(here.stripes).toEqual(stripes);
    expect(here.restriped).toBeUndefined();
    // from the first row above the rib, and in no piece that was not striped
    expect(Object.keys(here.striped ?? {})).toEqual(['piece1']);
    const rib = mine.pieces[0]?.parts[0]?.sections[0]?.rows ?? 0;
    expect(here.striped?.piece1).toMatchObject({ first: rib + 1 });
    expect(rib).toBeGreaterThan(garment.pieces[0]?.parts[0]?.sections[0]?.rows ?? 0);
  });

  it('tells the yarn, but neither how many balls she has nor their dye lot', async () => {
    const yarns = [{ name: 'Tweed', grams: 50, metres: 120, balls: 11, dyeLot: 'A7' }];
    const { garment } = await linked(false, { ...record, yarns });
    expect(garment.yarns).toEqual([{ name: 'Tweed', grams: 50, metres: 120 }]);
    // hers keeps them
    expect(yarns[0]).toMatchObject({ balls: 11, dyeLot: 'A7' });
  });

  it('is turned to another yarn on the page that opens links, with her notes', async () => {
    const route = parseRoute(await againFor({ garment: record, pieces: [] }));
    const found = await garmentInLink(route?.at.text ?? '').garment;
    expect(route?.screen).toBe('openLink');
    expect(found?.ok && found.value.notes).toBe('soft');
  });

  it('is begun anew with what was planned anew on the way: a longer back would not meet the front that was changed to match', async () => {
    const [back] = record.pieces;
    const [body, ...others] = back?.recipe.parts ?? [];
    if (!back || !body) throw new Error('the sample has no back');
    const [first, ...above] = body.sections;
    if (!first) throw new Error('the back has no rows');
    const longer = {
      ...back.recipe,
      parts: [{ ...body, sections: [{ ...first, rows: first.rows + 20 }, ...above] }, ...others],
    };
    const parts = given(plan(longer)).parts.map((one, i) =>
      i === 0 ? { ...one, recipe: longer.parts[0] } : one,
    );
    const view = { garment: record, pieces: [{ id: back.id, makes: [{ parts }] }] } as never;
    const found = await garmentInLink(parseRoute(await againFor(view))?.at.text ?? '').garment;
    expect(found?.ok && found.value.pieces[0]?.parts[0]?.sections[0]?.rows).toBe(first.rows + 20);
    expect(found?.ok && found.value.pieces.slice(1)).toEqual(sampleGarment.pieces.slice(1));
  });

  it('has her notes only where she says so', async () => {
    expect((await linked(true)).garment.notes).toBe('soft');
    expect((await linked(false)).garment).not.toHaveProperty('notes');
  });

  it('is one code where that is not too dense, else several at the same address that make the whole text', () => {
    const address = 'https://example.org/knits/app/#/open/';
    const link = (length: number) => address + 'aB-9_'.repeat(1000).slice(0, length);
    const room = CODE_ROOM - address.length;
    expect(codesOf(link(room))).toEqual([link(room)]);
    for (const length of [room + 1, 3000]) {
      const codes = codesOf(link(length)) ?? [];
      expect(codes.length).toBeGreaterThan(1);
      for (const code of codes) {
        expect(code.startsWith(address)).toBe(true);
        expect(code.length).toBeLessThanOrEqual(CODE_ROOM);
      }
      const parts = codes.map((code) => readPart(parseRoute(code.slice(code.indexOf('#')))?.at.text ?? ''));
      expect(joinParts(parts.flatMap((part) => part ?? []))).toBe(link(length).slice(address.length));
    }
    // 40 codes are more than anyone takes: each holds less than its room
    expect(codesOf(address + 'a'.repeat(40 * CODE_ROOM))).toBeUndefined();
  });

  it('is found in a file of it by its link, and in no other file', async () => {
    const { link } = await linked(false);
    const found = await linkInFile(new Blob([`Harbour\n${link}\n(open it in the app)`]));
    expect(found).toBe(link.slice(link.indexOf('#')));
    expect(await linkInFile(new Blob(['{"format":"ridgeline-backup"}']))).toBeUndefined();
    // a backup in which a note of hers has the link
    expect(await linkInFile(new Blob([JSON.stringify({ notes: link })]))).toBeUndefined();
    expect(await linkInFile(new Blob([link, ' '.repeat(100_000 - link.length)]))).toBe(found);
    expect(await linkInFile(new Blob([link, ' '.repeat(100_001 - link.length)]))).toBeUndefined();
  });
});

describe('a design that is passed on', () => {
  const person = { name: 'Ida', table: 'women', size: 'M' } as const;
  const form = { ...newForm(), name: 'For Ida', person };
  const made = draft(designOf(form));
  if (!made.ok) throw new Error('not drafted');
  const sizes: SizeSet = {
    ...usualSet(form),
    people: [{ name: 'Ida', body: form.body }],
    adjusted: [
      { path: 'lengthMm', mm: 640 },
      { path: 'lengthMm', mm: 700, size: 'Ida' },
    ],
  };
  const rowNotes = [
    { piece: 'Back', part: 'Back', row: 7, text: 'loosely', address: 'https://example.org/how' },
  ];
  const drafted = {
    ...record,
    design: form,
    sizes,
    rowNotes,
    pieces: made.value.recipes.map((recipe, i) => ({ id: `p${i}`, recipe })),
    joints: made.value.joints,
  } as unknown as GarmentRecord;

  const openedWith = async (to: object) => {
    vi.stubGlobal('location', { origin: 'https://example.org', pathname: '/' });
    const link = await linkFor(drafted, { withNotes: false, ...to });
    const text = parseRoute(link.slice(link.indexOf('#')))?.at.text ?? '';
    const found = await garmentInLink(text).garment;
    if (found === undefined) throw new Error('stopped');
    return { text, passed: given(found) };
  };

  it('goes along where she says so, without anybody’s name or the measures of other people', async () => {
    const { text, passed } = await openedWith({ withDesign: true });
    expect(text.startsWith('2.')).toBe(true);
    expect(passed.design).toMatchObject({ name: '', person: { table: 'women', size: 'M' }, body: form.body });
    expect(passed.sizes).toMatchObject({ people: [], adjusted: [{ path: 'lengthMm', mm: 640 }] });
    expect(JSON.stringify(passed)).not.toContain('Ida');
    expect(passed).not.toHaveProperty('rowNotes');
  });

  it('stays at home where she does not; then any app opens it', async () => {
    const { text, passed } = await openedWith({});
    expect(text.startsWith('1.')).toBe(true);
    expect(passed).not.toHaveProperty('design');
    expect(passed).not.toHaveProperty('sizes');
  });

  it('has her notes at their rows where she wants it', async () => {
    const { passed } = await openedWith({ withRowNotes: true });
    expect(passed.rowNotes).toEqual(rowNotes);
  });

  it('is drafted in another size and swatch, with what its maker set for all, and her notes as far up', async () => {
    const { passed } = await openedWith({ withDesign: true, withRowNotes: true });
    const body = bodyTables.women[4]?.body ?? form.body;
    const fitted = fitPassed(
      passed,
      {
        form: passed.design as DesignForm,
        set: passed.sizes as SizeSet,
        asked: { stitches: 21, rows: 28 },
        gauge: { stitches: 18, rows: 25 },
        who: { person: { table: 'women', size: 'XL' }, body },
      },
      (name) => `${name}*`,
    );
    const { garment, worked, kept } = given(fitted);
    expect(kept).toEqual([{ path: 'lengthMm', mm: 640 }]);
    expect(worked?.finished.chest).toBeGreaterThan(body.chest);
    expect(Math.abs((worked?.finished.length ?? 0) - 640)).toBeLessThan(8);
    expect(garment.pieces[0]?.gauge).toMatchObject({ stitches: 18, rows: 25 });
    expect(garment.rowNotes).toMatchObject([{ piece: 'Back*', part: 'Back*', text: 'loosely' }]);
    // 7 of 172 rows
    expect(garment.rowNotes?.[0]?.row).toBeGreaterThan(4);
    expect(garment.rowNotes?.[0]?.row).toBeLessThan(9);
    expect(worked?.made.troubles).toEqual([]);
  });

  it('is as it was planned where nothing else is asked for', async () => {
    const { passed } = await openedWith({ withDesign: true });
    const wish = {
      form,
      set: undefined,
      asked: { stitches: 21, rows: 28 },
      gauge: { stitches: 21, rows: 28 },
    };
    const { garment, worked } = given(fitPassed(passed, wish, (name) => name));
    expect(worked).toBeUndefined();
    expect(garment.pieces).toEqual(passed.pieces);
    expect(isChanged(passed, form)).toBe(false);
    expect(isChanged({ ...passed, pieces: passed.pieces.slice(1) }, form)).toBe(true);
  });

  it('that cannot be in her swatch, says what she can do; a swatch that is not typed yet is asked for alone', async () => {
    const { passed } = await openedWith({ withDesign: true });
    const codes = (gauge: { stitches?: number; rows?: number }) => {
      const fitted = fitPassed(
        passed,
        {
          form: passed.design as DesignForm,
          set: undefined,
          asked: { stitches: 21, rows: 28 },
          gauge,
          who: { person: { table: 'women', size: 'XL' }, body: bodyTables.women[4]?.body ?? form.body },
        },
        (name) => name,
      );
      return fitted.ok ? [] : fitted.faults.map(({ code }) => code);
    };
    expect(codes({ stitches: 21, rows: 3 }).length).toBeGreaterThan(1);
    expect(codes({ stitches: 21, rows: 3 }).at(-1)).toBe('not as asked');
    expect(codes({ stitches: 21 })).not.toContain('not as asked');
  });
});
