import fc from 'fast-check';
import { deflateSync, strToU8 } from 'fflate';
import jsQR from 'jsqr';
import { encode } from 'uqr';
import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { garmentToLink, LONGEST_LINK, linkToGarment } from '../../../src/store/share/link.ts';
import { knittableRecipe } from '../../arbitraries/knittable-recipe.ts';
import { share } from '../../by-turns.ts';
import { told } from '../../told.ts';

const packed = (value: unknown): string =>
  `1.${Buffer.from(deflateSync(strToU8(typeof value === 'string' ? value : JSON.stringify(value)))).toString('base64url')}`;

describe('a garment passed on as a link', () => {
  it('comes out of its link as it went in, but for the notes, which stay at home', async () => {
    const { notes, ...rest } = sampleGarment;
    expect(notes).toBeTruthy();
    expect(await linkToGarment(await garmentToLink(sampleGarment))).toEqual({ ok: true, value: rest });
    expect(await linkToGarment(await garmentToLink(sampleGarment, { withNotes: true }))).toEqual({
      ok: true,
      value: sampleGarment,
    });
  });

  it('comes out the same for every garment that can be knitted', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(knittableRecipe(), { minLength: 1, maxLength: 4 }), async (made) => {
        const garment = { name: 'Any', pieces: made.map((m) => m.recipe) };
        expect(await linkToGarment(await garmentToLink(garment))).toEqual({ ok: true, value: garment });
      }),
      { numRuns: share(100) },
    );
  });

  it('of a garment of usual size fits in 2,000 characters', async () => {
    expect((await garmentToLink(sampleGarment)).length).toBeLessThanOrEqual(2000);
  });

  it('can be read back from its QR code by another library', async () => {
    const link = `https://example.org/ridgeline/#/open/${await garmentToLink(sampleGarment)}`;
    const { data, size } = encode(link, { ecc: 'L' });
    const scale = 4;
    const side = size * scale;
    const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
    for (let y = 0; y < side; y += 1) {
      for (let x = 0; x < side; x += 1) {
        if (data[Math.floor(y / scale)]?.[Math.floor(x / scale)])
          pixels.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
      }
    }
    expect(jsQR(pixels, side, side)?.data).toBe(link);
  });
});

describe('a foreign or damaged link', () => {
  const codeOf = async (text: string) => {
    const read = await linkToGarment(text);
    return read.ok ? 'ok' : read.faults[0]?.code;
  };

  it('is refused in words, whatever it holds', async () => {
    expect(await codeOf('')).toBe('link damaged');
    expect(await codeOf('nonsense')).toBe('link damaged');
    expect(await codeOf('1.')).toBe('link damaged');
    expect(await codeOf('1.%%%')).toBe('link damaged');
    expect(await codeOf('7.abc')).toBe('link version');
    expect(await codeOf(`1.${'A'.repeat(LONGEST_LINK)}`)).toBe('link too long');
    expect(await codeOf(packed('not json'))).toBe('link damaged');
    expect(await codeOf(packed({ name: 'x' }))).toBe('link not a garment');
    expect(await codeOf(packed('{"name":"x","pieces":[],"__proto__":{"polluted":1}}'))).toBe(
      'link not a garment',
    );
    expect(await codeOf(packed({ name: 'x', pieces: [], extra: 1 }))).toBe('link not a garment');
  });

  it('of 2,100 characters that asks for 8 million rows is refused once its budget of stitches is used up', async () => {
    const parts = Array.from({ length: 40 }, (_, i) => ({
      name: `p${i}`,
      from: { castOn: 40 },
      sections: [{ name: '', rows: 5000, fabric: 'moss', needle: 4, shaping: [] }],
      end: 'hold',
    }));
    const pieces = Array.from({ length: 40 }, () => ({ name: 'p', makes: 1, parts }));
    const link = packed({ name: 'x', pieces });
    expect(link.length).toBeLessThan(2100);
    expect(await codeOf(link)).toBe('too much to plan');
  });

  it('that nests repeats in every row is refused by the same budget', async () => {
    const pair = [
      { work: 'k', times: 1 },
      { work: 'p', times: 1 },
    ];
    const row = [{ repeat: [{ repeat: pair, times: 20 }], times: 20 }];
    const linkOf = (rows: number) => {
      const sections = [{ name: '', rows, fabric: 'moss', needle: 4, shaping: [], words: [row] }];
      const parts = [{ name: 'p', from: { castOn: 800 }, sections, end: 'hold' }];
      return packed({ name: 'x', pieces: [{ name: 'p', makes: 1, parts }] });
    };
    expect(await codeOf(linkOf(1000))).toBe('ok');
    expect(await codeOf(linkOf(5000))).toBe('too much to plan');
  });

  it('that unfolds without end is given up', async () => {
    expect(await codeOf(packed(`"${'a'.repeat(5_000_000)}"`))).toBe('link damaged');
  });

  it('with a piece that cannot be knitted says what is wrong with it', async () => {
    const bad = {
      name: 'x',
      pieces: [
        { name: 'Back', makes: 1, parts: [{ name: 'b', from: { castOn: 0 }, sections: [], end: 'hold' }] },
      ],
    };
    expect(await codeOf(packed(bad))).toBe('bad stitches');
  });

  it('never throws, however it is mutated', async () => {
    const good = await garmentToLink(sampleGarment);
    await fc.assert(
      fc.asyncProperty(
        fc.nat(good.length - 1),
        fc.string({ maxLength: 5 }),
        fc.nat(20),
        async (at, put, cut) => {
          const text = good.slice(0, at) + put + good.slice(at + cut);
          const read = await linkToGarment(text);
          if (!read.ok) expect(told(read.faults)).toBeTruthy();
        },
      ),
      { numRuns: share(2000) },
    );
  });
});
