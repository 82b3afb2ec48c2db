import { describe, expect, it } from 'vitest';
import { saysLengthIn } from '../../../src/knit/written/says-length.ts';

/* Centimetres to a half, inches of 25.4 mm to a quarter: as leaflets give them, common practice. */
describe('a length', () => {
  it.each([
    [100, '10 cm', '4 in', '10 cm / 4 in'],
    [101, '10 cm', '4 in', '10 cm / 4 in'],
    // from 102.5 mm on it is nearer to ten and a half; 104.8 mm are four inches and an eighth
    [102.4, '10 cm', '4 in', '10 cm / 4 in'],
    [102.5, '10.5 cm', '4 in', '10.5 cm / 4 in'],
    [104.7, '10.5 cm', '4 in', '10.5 cm / 4 in'],
    [104.8, '10.5 cm', '4.25 in', '10.5 cm / 4.25 in'],
    [112.5, '11.5 cm', '4.5 in', '11.5 cm / 4.5 in'],
    [0, '0 cm', '0 in', '0 cm / 0 in'],
  ])('of %d mm is %s, %s', (mm, cm, inches, both) => {
    expect([saysLengthIn('cm')(mm), saysLengthIn('in')(mm), saysLengthIn('both')(mm)]).toEqual([
      cm,
      inches,
      both,
    ]);
  });

  it('has the decimal mark and the inches of a language', () => {
    expect(saysLengthIn('both', ',', 'Zoll')(104.8)).toBe('10,5 cm / 4,25 Zoll');
    expect(saysLengthIn('cm', ',', 'Zoll')(104.8)).toBe('10,5 cm');
    expect(saysLengthIn('in', ',', 'Zoll')(104.8)).toBe('4,25 Zoll');
  });
});
