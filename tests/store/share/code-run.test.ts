import fc from 'fast-check';
import jsQR from 'jsqr';
import { encode } from 'uqr';
import { describe, expect, it } from 'vitest';
import {
  codeRun,
  RUN_ROOM,
  type RunCode,
  readRunCode,
  textOfRun,
  withCode,
} from '../../../src/store/share/code-run.ts';
import { isRead } from './photograph.ts';

/** Long enough for several codes: chance letters do not pack. */
const long = fc
  .array(fc.integer({ min: 32, max: 0x2fff }), { minLength: 1500, maxLength: 3000 })
  .map((signs) => String.fromCharCode(...signs));

const run = async (text: string) => (await codeRun(text)) ?? [];
const read = (codes: readonly string[]) =>
  codes.reduce<readonly RunCode[]>((all, text) => {
    const code = readRunCode(text);
    return code ? withCode(all, code) : all;
  }, []);

describe('a run of codes', () => {
  it('comes back in whatever order and however often its codes are read, and not before the last', async () => {
    await fc.assert(
      fc.asyncProperty(long, fc.infiniteStream(fc.nat()), async (text, chances) => {
        const codes = await run(text);
        expect(codes.length).toBeGreaterThan(1);
        const shuffled = codes
          .map((code) => ({ code, at: chances.next().value ?? 0 }))
          .sort((a, b) => a.at - b.at)
          .map(({ code }) => code);
        expect(await textOfRun(read([...shuffled.slice(1), ...shuffled.slice(1)]))).toBeUndefined();
        expect(await textOfRun(read([...shuffled, ...shuffled]))).toBe(text);
      }),
      { endOnFailure: true, numRuns: 20 },
    );
  });

  // ISO/IEC 18004, table 7: 758 alphanumeric characters in version 15 at level L, which is 77 modules wide
  it('has codes that a camera reads from a screen: 77 modules wide at the most, as another library reads them', async () => {
    const [text = ''] = fc.sample(long, { numRuns: 1, seed: 5 });
    for (const code of await run(text)) {
      expect(code.length).toBeLessThanOrEqual(RUN_ROOM);
      const { data, size } = encode(code, { ecc: 'L', border: 4 });
      expect(size).toBeLessThanOrEqual(77 + 8);
      const side = size * 3;
      const pixels = new Uint8ClampedArray(side * side * 4);
      for (let i = 0; i < side * side; i += 1)
        pixels.fill(data[Math.floor(i / side / 3)]?.[Math.floor((i % side) / 3)] ? 0 : 255, i * 4, i * 4 + 4);
      expect(jsQR(pixels, side, side)?.data).toBe(code);
    }
  });

  // a hand moves while the camera looks, some times a second: one picture that is read is enough
  it('is read in two of five blurred pictures at least of a screen at 130 and at 200 mm, straight, turned and tilted as a hand holds it', async () => {
    const [text = ''] = fc.sample(long, { numRuns: 1, seed: 11 });
    const poses = [
      [0, 0],
      [0, 7],
      [10, 0],
      [15, 0],
      [-12, 7],
    ] as const;
    const [code = ''] = await run(text);
    for (const farMm of [130, 200]) {
      let read = 0;
      // a picture costs more than a second: none is taken once two were read
      for (const [tilt, turn] of poses)
        if (read < 2 && isRead(code, { blurs: 1, tilt, turn, farMm })) read += 1;
      expect(read, `${farMm} mm`).toBe(2);
    }
  });

  it('of another text begins anew', async () => {
    const [one = '', other = ''] = fc.sample(long, { numRuns: 2, seed: 7 });
    const first = await run(one);
    const second = await run(other);
    const both = read([...first.slice(1), ...second]);
    expect(await textOfRun(both)).toBe(other);
  });

  it('that was changed on its way is nothing', async () => {
    const codes = await run('a garment');
    const changed = codes.map((code) => code.replace(/.$/, (last) => (last === 'A' ? 'B' : 'A')));
    expect(await textOfRun(read(changed))).toBeUndefined();
  });

  it.each([
    '',
    'https://example.org/#/open/1.abc',
    'RIDGELINE/0123456789ABCD/0/2/ABC',
    'RIDGELINE/0123456789ABCD/3/2/ABC',
    'RIDGELINE/0123456789ABCD/1/301/ABC',
    'RIDGELINE/0123456789ABC/1/2/ABC',
    'RIDGELINE/0123456789ABCD/1/2/abc',
    'RIDGELINE/0123456789ABCD/1/2/',
  ])('takes %j for no code of its own', (text) => {
    expect(readRunCode(text)).toBeUndefined();
  });

  it('is none where it would be endless', async () => {
    let state = 1;
    const noise = Array.from({ length: 400_000 }, () => {
      state = (state * 48_271) % 2_147_483_647;
      return String.fromCharCode(32 + (state % 90));
    }).join('');
    expect(await codeRun(noise)).toBeUndefined();
  });
});
