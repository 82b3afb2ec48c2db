import { describe, expect, it } from 'vitest';
import { mendIn } from '../../../../src/knit/pattern/text/mend.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';

const mend = (text: string) => {
  const found = mendIn(lex(text));
  return found && [found.rows, found.stitches, lex(text)[found.from]?.column];
};

/** Written behind a line by the app, or by hand. */
describe('what she says herself of a line', () => {
  it.each([
    ['Work the wibble. [no rows]', [0, undefined, 18]],
    ['Work the wibble [1 row]', [1, undefined, 17]],
    ['Wibble [2 rows]', [2, undefined, 8]],
    ['Work the wibble. [6 rows]', [6, undefined, 18]],
    ['Work the wibble. [6 rows, 24 sts]', [6, 24, 18]],
    ['Work the wibble (RS) [ 6 Rows, 1 st ]', [6, 1, 22]],
  ])('is read: %s', (text, wanted) => {
    expect(mend(text)).toEqual(wanted);
  });

  it.each([
    'Work [6 rows] of wibble.',
    '[6 rows]',
    'Work 6 rows',
    'K2 [24 sts]',
    'K2 [6 rows, 24]',
    'K2 [6 rows 24 sts]',
    'K2 [6 rows, 24 sts, 3]',
    'K2 [some rows]',
    'K2 [6½ rows]',
    'Cast on 20 [24, 28] sts',
  ])('is not read where it is none: %s', (text) => {
    expect(mend(text)).toBeUndefined();
  });
});
