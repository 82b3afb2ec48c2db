import { expect, it } from 'vitest';
import { readOptionsOf, textsOf, wholeText } from '../../../../src/app/drafts/pattern/read-garment.ts';

it('the text of a pattern is kept in lengths of 15 000 characters, and is whole again when they are joined', () => {
  for (const length of [1, 15_000, 15_001, 45_000, 150_001]) {
    const text = Array.from({ length }, (_, i) => String.fromCharCode(97 + (i % 26))).join('');
    const texts = textsOf(text);
    expect(Object.keys(texts)).toEqual(
      Array.from({ length: Math.ceil(length / 15_000) }, (_, i) => `pattern${i + 1}`),
    );
    expect(Math.max(...Object.values(texts).map((one) => one.length))).toBeLessThanOrEqual(15_000);
    expect(wholeText({ texts })).toBe(text);
  }
});

it('a garment that was read from no text has none, whatever else is kept with it', () => {
  expect(textsOf('')).toEqual({});
  expect(wholeText({})).toBeUndefined();
  expect(wholeText({ texts: {} })).toBeUndefined();
  expect(wholeText({ texts: { long: 'Cast on.', pattern2: 'behind' } })).toBeUndefined();
  expect(wholeText({ texts: { pattern1: 'a', pattern3: 'c' } })).toBe('a');
});

it('how a text was read is kept with its garment, and is nothing where it was drafted', async () => {
  const options = { size: 2, gauge: { stitches: 22, rows: 30 } };
  expect(await readOptionsOf({ design: { kind: 'read', version: 1, options } })).toEqual(options);
  expect(await readOptionsOf({ design: { kind: 'drafted' } })).toBeUndefined();
  expect(await readOptionsOf({})).toBeUndefined();
});
