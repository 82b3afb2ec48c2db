import { describe, expect, it } from 'vitest';
import { isAddress, textOf } from '../../../../src/app/drafts/pattern/handed-text.ts';

describe('a text that came from elsewhere', () => {
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
    expect(await of('{"format":"ridgeline"}')).toBeUndefined();
    expect(await of('1 2 3')).toBeUndefined();
    expect(await of('PK\u0003\u0004 not a text')).toBeUndefined();
    expect(await of(new Uint8Array([0xff, 0xfe, 0x41]))).toBeUndefined();
    expect(await of('a'.repeat(400_001))).toBeUndefined();
  });
});
