import { describe, expect, it } from 'vitest';
import { contentHash } from '../../src/store/content-hash.ts';
import { grouped } from '../../src/store/grouped.ts';

describe('the name of a text by what it says', () => {
  // names of plans lie in boxes, backups and logs: they are never to be others; written down when these were in use
  it('never becomes another', () => {
    expect(contentHash('')).toBe('0z816x21jiy3us');
    expect(contentHash('Moorland scarf')).toBe('0ym0jkh0mpqxbh');
    expect(contentHash('ä\u{1F9F6}')).toBe('0ixxoqx19y8edq');
  });

  it('is fourteen letters and digits, another for each of 20,000 texts', () => {
    const names = Array.from({ length: 20_000 }, (_, i) => contentHash(`row ${i}`));
    expect(names.every((name) => /^[0-9a-z]{14}$/.test(name))).toBe(true);
    expect(new Set(names).size).toBe(20_000);
  });
});

describe('items in groups', () => {
  it('lie in their order under what each belongs to', () => {
    expect([...grouped(['ant', 'bee', 'ape', 'asp'], ([first = '']) => first)]).toEqual([
      ['a', ['ant', 'ape', 'asp']],
      ['b', ['bee']],
    ]);
  });
});
