import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CODE_ROOM } from '../../../src/app/garments/passing-on.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { garmentToLink, linkToGarment } from '../../../src/store/share/link.ts';
import { joinParts, partsOfLink, readPart } from '../../../src/store/share/link-parts.ts';
import { isRead } from './photograph.ts';

/** An address as a phone has it, before the part. */
const ADDRESS = 'https://knitting.example.org/ridgeline/#/open/';

const link = await garmentToLink(sampleGarment);

describe('a link in several codes', () => {
  it('of the sample is read from a blurred picture at 200 mm, each of them; in one code it is not', async () => {
    const parts = partsOfLink(link, CODE_ROOM - ADDRESS.length) ?? [];
    expect(parts.length).toBeGreaterThan(1);
    expect(parts.map((part) => isRead(ADDRESS + part, { blurs: 1 }))).toEqual(parts.map(() => true));
    expect(isRead(ADDRESS + link, { blurs: 1 })).toBe(false);
    const read = joinParts(parts.flatMap((part) => readPart(part) ?? []));
    expect((await linkToGarment(read ?? '')).ok).toBe(true);
  });

  it('comes together in whatever order it is read, and never while one is missing or of another link', () => {
    fc.assert(
      fc.property(
        fc.stringMatching(/^[\w.-]{50,900}$/),
        fc.integer({ min: 45, max: 300 }),
        fc.nat(),
        (text, room, seed) => {
          const parts = partsOfLink(text, room);
          if (parts === undefined || parts.length < 2) return;
          for (const part of parts) expect(part.length).toBeLessThanOrEqual(room);
          const read = parts.flatMap((part) => readPart(part) ?? []);
          const turn = seed % read.length;
          const turned = [...read.slice(turn), ...read.slice(0, turn)];
          expect(joinParts(turned)).toBe(text);
          expect(joinParts(turned.slice(1))).toBeUndefined();
          expect(
            joinParts(turned.map((one, i) => (i === 0 ? { ...one, text: `${one.text}x` } : one))),
          ).toBeUndefined();
        },
      ),
      { numRuns: 200, endOnFailure: true },
    );
  });

  /** As version 0.1 sent them: a phone that shows them may be older than the one that reads them, or newer. */
  it('is sent and read as it was sent before, to the letter', () => {
    const text = `1.${'stitch-by_stitch.'.repeat(6)}`;
    const sent = [
      'P.1.3.1skmoh61e4.1.stitch-by_stitch.stitch-by_stitch.stitc',
      'P.2.3.1skmoh61e4.h-by_stitch.stitch-by_stitch.stitch-by_st',
      'P.3.3.1skmoh61e4.itch.stitch-by_stitch.',
    ];
    expect(partsOfLink(text, 60)).toEqual(sent);
    expect(joinParts(sent.flatMap((part) => readPart(part) ?? []))).toBe(text);
  });

  it('takes forty codes at the most, the last of them full to the last sign', () => {
    const room = 60;
    // 'P.40.40.' with ten signs of the sum and their point: nineteen
    const most = 'x'.repeat(40 * (room - 19));
    const parts = partsOfLink(most, room) ?? [];
    expect(parts.length).toBe(40);
    expect(parts.at(-1)).toHaveLength(room);
    expect(joinParts(parts.flatMap((part) => readPart(part) ?? []))).toBe(most);
    expect(partsOfLink(`${most}x`, room)).toBeUndefined();
    expect(readPart('P.40.40.ab.x')).toMatchObject({ n: 40, of: 40 });
    expect(readPart('P.41.41.ab.x')).toBeUndefined();
  });

  it('of which one has another text in it than was sent is not read, whatever its length', () => {
    const parts = (partsOfLink('abcdefghij'.repeat(8), 60) ?? []).flatMap((part) => readPart(part) ?? []);
    const [first, ...rest] = parts;
    expect(joinParts(parts)).toBe('abcdefghij'.repeat(8));
    expect(joinParts([{ ...(first as (typeof parts)[0]), text: `b${first?.text.slice(1)}` }, ...rest])).toBe(
      undefined,
    );
    expect(joinParts([])).toBeUndefined();
  });

  it('is one where it has room in one, and none where it would take more than forty', () => {
    expect(partsOfLink('1.abc', 300)).toEqual(['1.abc']);
    expect(partsOfLink('x'.repeat(50_000), 300)).toBeUndefined();
    for (const text of ['1.abc', 'P.0.2.ab.x', 'P.3.2.ab.x', 'P.1.99.ab.x', 'P.1.2..x', ''])
      expect(readPart(text)).toBeUndefined();
  });
});
