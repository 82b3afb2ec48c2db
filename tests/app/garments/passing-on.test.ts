import { afterEach, describe, expect, it, vi } from 'vitest';
import {
  againFor,
  CODE_ROOM,
  codesOf,
  garmentInLink,
  linkFor,
  linkInFile,
} from '../../../src/app/garments/passing-on.ts';
import { parseRoute } from '../../../src/app/routes.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
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
  const link = await linkFor(of, withNotes);
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

  it('tells the yarn, but neither how many balls she has nor their dye lot', async () => {
    const yarns = [{ name: 'Tweed', grams: 50, metres: 120, balls: 11, dyeLot: 'A7' }];
    const { garment } = await linked(false, { ...record, yarns });
    expect(garment.yarns).toEqual([{ name: 'Tweed', grams: 50, metres: 120 }]);
    // hers keeps them
    expect(yarns[0]).toMatchObject({ balls: 11, dyeLot: 'A7' });
  });

  it('is turned to another yarn on the page that opens links, with her notes', async () => {
    const route = parseRoute(await againFor(record));
    const found = await garmentInLink(route?.at.text ?? '').garment;
    expect(route?.screen).toBe('openLink');
    expect(found?.ok && found.value.notes).toBe('soft');
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
