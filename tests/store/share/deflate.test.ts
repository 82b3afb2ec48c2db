import { expect, it } from 'vitest';
import { deflated, inflateWithin } from '../../../src/store/share/deflate.ts';

it('what was folded unfolds to itself as far as its bytes go, and no further', async () => {
  const text = 'Größe 38'.repeat(50);
  // ö and ß are two bytes each
  const bytes = 50 * 10;
  const folded = await deflated(text);
  expect(await inflateWithin(folded, bytes)).toBe(text);
  await expect(inflateWithin(folded, bytes - 1)).rejects.toThrow('too large');
  expect(await inflateWithin(await deflated(''), 0)).toBe('');
});
