import { afterEach, describe, expect, it, vi } from 'vitest';
import {
  handedText,
  isAddress,
  lookForText,
  textOf,
} from '../../../../src/app/drafts/pattern/handed-text.ts';

describe('a text that came from elsewhere', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
    handedText.value = undefined;
  });

  it('out of another app is shown once, and nothing is where there is none or no keep for it', async () => {
    const handed = new Map([['text', 'BACK: cast on 80.']]);
    vi.stubGlobal('document', { baseURI: 'https://ridgeline.test/' });
    vi.stubGlobal('caches', {
      match: async (name: string) => (handed.has(name) ? new Response(handed.get(name)) : undefined),
      open: async () => ({ delete: async (name: string) => handed.delete(name) }),
    });
    await lookForText();
    expect(handedText.value).toBe('BACK: cast on 80.');
    handedText.value = 'seen';
    await lookForText();
    expect(handedText.value).toBe('seen');
    vi.stubGlobal('caches', { match: async () => Promise.reject(new Error('no keep')) });
    await lookForText();
    expect(handedText.value).toBe('seen');
  });

  it('is an address where it is nothing else', () => {
    expect(isAddress(' https://example.org/a?b=c#d \n')).toBe(true);
    expect(isAddress('http://example.org')).toBe(true);
    expect(isAddress('See https://example.org/a')).toBe(false);
    expect(isAddress('Row 1: k2')).toBe(false);
  });

  it('out of a file is read where a knitter could have typed it', async () => {
    const of = (...parts: BlobPart[]) => textOf(new Blob(parts));
    expect(await of('BACK\r\n\tCast on 80 sts.')).toBe('BACK\r\n\tCast on 80 sts.');
    expect(await of('Rücken: 80 M anschlagen')).toContain('Rücken');
    expect(await of('BACK\n[k2, p2] 10 times {20 sts}')).toContain('[k2, p2]');
    expect(await of('{"format":"ridgeline"}')).toBeUndefined();
    expect(await of('\n  [{"name":"Back"}]')).toBeUndefined();
    expect(await of('1 2 3')).toBeUndefined();
    expect(await of('PK\u0003\u0004 not a text')).toBeUndefined();
    expect(await of(new Uint8Array([0xff, 0xfe, 0x41]))).toBeUndefined();
    expect(await of('a'.repeat(400_001))).toBeUndefined();
  });
});
