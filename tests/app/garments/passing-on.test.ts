import { afterEach, describe, expect, it, vi } from 'vitest';
import { garmentInLink, linkFor, linkInFile } from '../../../src/app/garments/passing-on.ts';
import { parseRoute } from '../../../src/app/routes.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import type { GarmentRecord } from '../../../src/store/records.ts';
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

const linked = async (withNotes: boolean) => {
  vi.stubGlobal('location', { origin: 'https://example.org', pathname: '/knits/app/' });
  vi.stubGlobal('document', { baseURI: 'https://example.org/knits/app/' });
  const link = linkFor(record, withNotes);
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

  it('has her notes only where she says so', async () => {
    expect((await linked(true)).garment.notes).toBe('soft');
    expect((await linked(false)).garment).not.toHaveProperty('notes');
  });

  it('is found in a file of it by its link, and in no other file', async () => {
    const { link } = await linked(false);
    const found = await linkInFile(new Blob([`Harbour\n${link}\n(open it in the app)`]));
    expect(found).toBe(link.slice(link.indexOf('#')));
    expect(await linkInFile(new Blob(['{"format":"ridgeline-backup"}']))).toBeUndefined();
    expect(await linkInFile(new Blob([link, ' '.repeat(100_000 - link.length)]))).toBe(found);
    expect(await linkInFile(new Blob([link, ' '.repeat(100_001 - link.length)]))).toBeUndefined();
  });
});
