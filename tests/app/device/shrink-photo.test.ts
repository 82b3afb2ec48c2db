import { afterEach, describe, expect, it, vi } from 'vitest';
import { shrinkPhoto } from '../../../src/app/device/shrink-photo.ts';

afterEach(() => vi.unstubAllGlobals());

/** A phone that can draw a picture of the given size; tells what was drawn. */
function phone(width: number, height: number, small: Blob | null = new Blob(['small'])) {
  const told = { asked: undefined as unknown, drawn: [] as unknown[], made: [] as unknown[], closed: 0 };
  const picture = {
    width,
    height,
    close: () => {
      told.closed += 1;
    },
  };
  vi.stubGlobal('createImageBitmap', async (_file: Blob, how: unknown) => {
    told.asked = how;
    return picture;
  });
  const canvas = {
    width: 0,
    height: 0,
    getContext: (kind: string) =>
      kind === '2d' ? { drawImage: (...given: unknown[]) => told.drawn.push(given) } : null,
    toBlob: (take: (blob: Blob | null) => void, type: string, quality: number) => {
      told.made.push({ type, quality });
      take(small);
    },
  };
  vi.stubGlobal('document', { createElement: (tag: string) => (tag === 'canvas' ? canvas : undefined) });
  return { told, canvas, picture };
}

const photo = new Blob(['large']);

describe('a photo that is kept', () => {
  it.each([
    [4000, 3000, 1200, 900],
    [3000, 4000, 900, 1200],
    [1200, 800, 1200, 800],
    [40, 30, 40, 30],
    [24000, 10, 1200, 1],
    [1500, 1001, 1200, 801],
  ])(
    'of %i × %i px is %i × %i px: its longest side no longer, a small one as it is',
    async (w, h, width, height) => {
      const { told, canvas, picture } = phone(w, h);
      expect(await (await shrinkPhoto(photo))?.text()).toBe('small');
      expect([canvas.width, canvas.height]).toEqual([width, height]);
      expect(told.drawn).toEqual([[picture, 0, 0, width, height]]);
      expect(told.closed).toBe(1);
    },
  );

  it('is never without a height or a width, however narrow', async () => {
    const { canvas } = phone(1, 24_000);
    await shrinkPhoto(photo);
    expect([canvas.width, canvas.height]).toEqual([1, 1200]);
  });

  it('stands upright, and is a JPEG file of good but not of full quality', async () => {
    const { told } = phone(4000, 3000);
    await shrinkPhoto(photo);
    expect(told.asked).toEqual({ imageOrientation: 'from-image' });
    expect(told.made).toMatchObject([{ type: 'image/jpeg' }]);
    const [{ quality }] = told.made as [{ quality: number }];
    expect(quality).toBeGreaterThan(0.5);
    expect(quality).toBeLessThan(1);
  });

  it('is none where it cannot be read or cannot be made', async () => {
    phone(4000, 3000, null);
    expect(await shrinkPhoto(photo)).toBeUndefined();
    vi.stubGlobal('createImageBitmap', () => Promise.reject(new Error('no picture')));
    expect(await shrinkPhoto(photo)).toBeUndefined();
  });
});
