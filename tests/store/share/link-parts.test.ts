import fc from 'fast-check';
import jsQR from 'jsqr';
import { encode } from 'uqr';
import { describe, expect, it } from 'vitest';
import { CODE_ROOM } from '../../../src/app/garments/passing-on.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { garmentToLink, linkToGarment } from '../../../src/store/share/link.ts';
import { joinParts, partsOfLink, readPart } from '../../../src/store/share/link-parts.ts';

/** An address as a phone has it, before the part. */
const ADDRESS = 'https://knitting.example.org/ridgeline/#/open/';

/**
 * A code of 60 mm on a phone's screen, photographed from 200 mm: a camera that sees 65° on 1,080 px has 4.2 px to the
 * millimetre there, so 254 px for the whole code with its margin; the lens and the hand blur each by its neighbours.
 */
const CODE_PX = 254;

/** Greys of the photograph, 20 px of light around the code. */
function photograph(
  text: string,
  blurs: number,
): { readonly pixels: Uint8ClampedArray; readonly side: number } {
  const { data, size } = encode(text, { ecc: 'L', border: 4 });
  const side = CODE_PX + 40;
  const grains = 4;
  let grey = new Float64Array(side * side).fill(255);
  const at = (pixel: number, grain: number) =>
    Math.floor(((pixel + (grain + 0.5) / grains) / CODE_PX) * size);
  for (let y = 0; y < CODE_PX; y += 1)
    for (let x = 0; x < CODE_PX; x += 1) {
      let light = 0;
      for (let j = 0; j < grains; j += 1)
        for (let i = 0; i < grains; i += 1) light += data[at(y, j)]?.[at(x, i)] ? 0 : 255;
      grey[(y + 20) * side + x + 20] = light / grains ** 2;
    }
  for (let blur = 0; blur < blurs; blur += 1) grey = blurred(grey, side);
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [i, value] of grey.entries()) pixels.fill(value, 4 * i, 4 * i + 3);
  return { pixels, side };
}

/** Each pixel the mean of the nine around it. */
function blurred(grey: Float64Array<ArrayBuffer>, side: number): Float64Array<ArrayBuffer> {
  const next = new Float64Array(grey);
  for (let y = 1; y < side - 1; y += 1)
    for (let x = 1; x < side - 1; x += 1) {
      let sum = 0;
      for (let j = -1; j <= 1; j += 1)
        for (let i = -1; i <= 1; i += 1) sum += grey[(y + j) * side + x + i] ?? 255;
      next[y * side + x] = sum / 9;
    }
  return next;
}

const isRead = (text: string): boolean => {
  const { pixels, side } = photograph(text, 1);
  return jsQR(pixels, side, side)?.data === text;
};

const link = await garmentToLink(sampleGarment);

describe('a link in several codes', () => {
  it('of the sample is read from a blurred picture at 200 mm, each of them; in one code it is not', async () => {
    const parts = partsOfLink(link, CODE_ROOM - ADDRESS.length) ?? [];
    expect(parts.length).toBeGreaterThan(1);
    expect(parts.map((part) => isRead(ADDRESS + part))).toEqual(parts.map(() => true));
    expect(isRead(ADDRESS + link)).toBe(false);
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
