import { readdirSync, readFileSync } from 'node:fs';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Fault, fault } from '../../src/knit/fault.ts';
import { bodyOfSize } from '../../src/knit/garment/bodies.ts';
import type { Body } from '../../src/knit/garment/design.ts';
import { draft } from '../../src/knit/garment/draft.ts';
import { startingDesign } from '../../src/knit/garment/start.ts';
import { plan } from '../../src/knit/piece/plan.ts';
import { fetchCatalogue } from '../../src/words/catalogues.ts';
import { loadFaults, saysFault } from '../../src/words/fault.ts';
import { faultCatalogues } from '../../src/words/fault-catalogues.ts';
import { loadWords, speak } from '../../src/words/say.ts';
import { plainSpeech } from '../../src/words/settings.ts';

const raglan = startingDesign(
  { kind: 'pullover', armhole: 'raglan', neck: 'round', fit: 'standard' },
  bodyOfSize('women', 'M') as Body,
  'stocking',
  { stitches: 22, rows: 30 },
);

const sources = ['src/knit', 'src/store', 'src/app', 'src/screens']
  .flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((path) => /\.tsx?$/.test(path))
      .map((path) => readFileSync(`${folder}/${path}`, 'utf8')),
  )
  .join('\n');

beforeAll(async () => {
  await loadWords('craft');
  await loadFaults();
});
afterEach(() => speak(plainSpeech));

describe('what can go wrong', () => {
  it('has its sentence in one catalogue only', async () => {
    const codes = await Promise.all(
      faultCatalogues.map(async (name) => Object.keys((await fetchCatalogue(name, 'en')).words)),
    );
    const all = codes.flat();
    expect(all.length).toBeGreaterThan(120);
    expect(all.filter((code, i) => all.indexOf(code) !== i)).toEqual([]);
  });

  it('a raglan whose neck is too narrow is told to make it wider', async () => {
    const made = draft({ ...raglan, neck: { ...raglan.neck, widthMm: 20 } });
    const [found] = made.ok ? [] : made.faults;
    expect(found).toMatchObject({ code: 'raglan neck too narrow', at: { field: 'neck.widthMm' } });
    expect(found && saysFault(found)).toMatch(/4 stitches.*6 or more.*wider/);
    await speak({ language: 'de' });
    expect(found && saysFault(found)).toMatch(/breiter/);
  });

  it('says its lengths in her unit, counts as counts, fabrics by their name', async () => {
    const head = fault('head does not pass', { neckMm: 254, opensMm: 300, headMm: 560 });
    expect(saysFault(head)).toContain('The neck edge is 25.4\u00a0cm');
    await speak({ units: 'in' });
    expect(saysFault(head)).toContain('The neck edge is 10\u00a0in');
    const rib = { stitches: 113, fabric: 'rib 2x2', belowStitches: 112, aboveStitches: 114 } as const;
    expect(saysFault(fault('rib multiple', rib))).toBe(
      '113 stitches do not fit rib, 2 by 2; 112 or 114 would.',
    );
  });

  it('has its row in front where only the place says it, and no row where none is known', () => {
    const shaping = [{ kind: 'middle' as const, from: 0, rows: [3] }];
    const section = { name: 'top', rows: 4, fabric: 'stocking' as const, needle: 4, shaping };
    const part = { name: 'body', from: { castOn: 5 }, end: 'hold' as const, sections: [section] };
    const made = plan({ name: 'Front', makes: 1, parts: [part] });
    const [found] = made.ok ? [] : made.faults;
    expect(found && saysFault(found)).toMatch(/^Row 3: There is no middle stitch/);
    const nowhere: Fault = fault('not enough stitches', { needStitches: 7, haveStitches: 5 });
    expect(saysFault(nowhere)).toMatch(/^This takes 7 stitches/);
  });

  it('is made somewhere: no sentence waits for a code that nothing gives', async () => {
    const codes = await Promise.all(
      faultCatalogues.map(async (name) => Object.keys((await fetchCatalogue(name, 'en')).words)),
    );
    expect(codes.flat().filter((code) => !sources.includes(`'${code}'`))).toEqual([]);
  });
});
