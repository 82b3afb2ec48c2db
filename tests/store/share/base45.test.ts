import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase45, toBase45 } from '../../../src/store/share/base45.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const textOf = (bytes: Uint8Array | undefined) => bytes && new TextDecoder().decode(bytes);

describe('bytes in 45 signs', () => {
  // RFC 9285, sections 4.3 and 4.4: the examples of encoding and of decoding
  it.each([
    ['AB', 'BB8'],
    ['Hello!!', '%69 VD92EX0'],
    ['base-45', 'UJCLQE7W581'],
    ['ietf!', 'QED8WEX0'],
  ])('are as RFC 9285 has them: %s', (text, signs) => {
    expect(toBase45(bytesOf(text))).toBe(signs);
    expect(textOf(fromBase45(signs))).toBe(text);
  });

  // section 6: 'GGW' is 65535, ':::' is 91124 and more than two bytes hold; a group of one sign is none
  it.each([':::', 'GGX', 'A', 'BB8A', '::', 'bb8', 'B,8'])('refuses %s', (signs) => {
    expect(fromBase45(signs)).toBeUndefined();
  });

  it('takes the highest two bytes', () => {
    expect(fromBase45('FGW')).toEqual(Uint8Array.of(255, 255));
  });

  it('come back as they were', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(fromBase45(toBase45(bytes))).toEqual(bytes);
      }),
      { endOnFailure: true },
    );
  });
});
