import { describe, expect, it } from 'vitest';
import { glued } from '../../src/screens/pass-on/glued.ts';

const shown = (text: string, tag: string) => glued(text, tag).replaceAll('\u00a0', '_');

describe('what is shown of a pattern for others', () => {
  it.each([
    [
      'en',
      'Cast on 96 (104, 112) sts with the 3.5 mm needles. Work 18 rows.',
      'Cast on 96 (104, 112)_sts with the 3.5_mm needles. Work 18_rows.',
    ],
    [
      'en',
      'Row 5: k2, ssk. Repeat row 5, rows 7 to 9 and row 12 of 40.',
      'Row_5: k2, ssk. Repeat row_5, rows_7 to 9 and row 12 of 40.',
    ],
    [
      'de',
      '96 M anschlagen, 4 Reihen rechts, ab Reihe 12 zunehmen: 98 Maschen, 12 cm.',
      '96_M anschlagen, 4_Reihen rechts, ab Reihe_12 zunehmen: 98_Maschen, 12_cm.',
    ],
    [
      'fr',
      'Monter 96 m, tric. 4 rangs, puis rang 12 : 98 mailles.',
      'Monter 96_m, tric. 4_rangs, puis rang_12 : 98_mailles.',
    ],
  ] as const)('%s: a number stands on one line with what it counts: %s', (tag, line, held) => {
    expect(shown(line, tag)).toBe(held);
  });

  it('has no other change', () => {
    for (const line of ['k2, ssk, knit to last 4, k2tog', 'XS (S, M, L): 104 of 96', '2 stitching needles'])
      expect(glued(line, 'en')).toBe(line);
  });
});
