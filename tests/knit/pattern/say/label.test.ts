import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('label, in all its wordings,', () => {
  it.each(
    table(`
      {Row 1: k2|Row 1. k2|Row 1 - k2|Row 1 = k2|Row 1 k2|Row no 1: k2|Row # 1: k2|1st row: k2|First row: k2|Row 1, k2|Row 1:- k2} → row: label {rows [1]}, items 'k ×2'
      {Rows 1 and 2|Rows 1, 2|Rows 1-2|Rows 1 to 2|Rows 1 through 2|Rows nos 1 and 2|1st and 2nd rows|Row 1 and row 2|Rows 1 to row 2|Rows 1 to 2 inclusive|Rows 1 to 2 incl|Rows 1, and 2|1st to 2nd rows} : k2 → row: label {rows [1; 2]}, items 'k ×2'
      Rows 1, 3 and 5-8 : k2 → row: label {rows [1; 3; 5; 6; 7; 8]}, items 'k ×2'
      {2nd row|Second row} : k2 → row: label {rows [2]}, items 'k ×2'
      {3rd row|Third row} : k2 → row: label {rows [3]}, items 'k ×2'
      {4th row|Fourth row} : k2 → row: label {rows [4]}, items 'k ×2'
      {Row 1 (RS)|Row 1 [RS]|Row 1, RS|Row 1 - RS|Row 1 RS|Row 1 (right side)|Row 1 (on RS)|Row 1 (RS facing)|Row 1 (RS row)|Row 1 (RS side)|1st row (right side)} : k2 → row: label {rows [1], side RS}, items 'k ×2'
      Row 1 (RS) k2 → row: label {rows [1], side RS}, items 'k ×2'
      Row 1: (RS) k2 → row: label {rows [1], side RS}, items 'k ×2'
      Row 1: RS k2 → row: label {rows [1], side RS}, items 'k ×2'
      Row 1 {(WS)|WS|(wrong side)} : k2 → row: label {rows [1], side WS}, items 'k ×2'
      Rows 1 (RS) and 3: k2 → row: label {rows [1; 3]}, items 'k ×2'
      Rows 1 (RS row), 3: k2 → row: label {rows [1; 3]}, items 'k ×2'
      Row 2 {and every alt row|and every foll alt row|and all WS rows|and every other row|and each alt row|and all RS rows|and all even rows|and all odd rows|and every 2nd row|and all p rows|and all wrong side rows|and all right side rows|and all even numbered rows|and all odd numbered rows|and all even-numbered rows|, and every alt row|and all other rows|and all subsequent alt rows|and all rem alt rows|and foll alt rows} : k2 → row: label {rows [2], everyOther}, items 'k ×2'
      2nd {and every alt|and all WS} row: k2 → row: label {rows [2], everyOther}, items 'k ×2'
      2nd row and {every alt row|all WS rows} : k2 → row: label {rows [2], everyOther}, items 'k ×2'
      Next row: k2 → row: label {rows []}, items 'k ×2'
      {Next row is a buttonhole row|The next row is the buttonhole row|Make next row a buttonhole row|Work the next row a buttonhole row} : k2 → row: label {rows [], name buttonhole}, items 'k ×2'
      {Next 4 rows|Foll 4 rows} : k2 → row: label {rows [], next 4}, items 'k ×2'
      Next row {(RS)|RS} : k2 → row: label {rows [], side RS}, items 'k ×2'
      Next RS row : k2 → row: label {rows [], side RS}, items 'k ×2'
      Next WS row: k2 → row: label {rows [], side WS}, items 'k ×2'
      Next 3 WS rows: k2 → row: label {rows [], next 3, side WS}, items 'k ×2'
      {Dec row|Decrease row|Decreasing row} : k2 → row: label {rows [], name dec}, items 'k ×2'
      {Inc row|Increase row} (WS): k2 → row: label {rows [], name inc, side WS}, items 'k ×2'
      {Set-up row|Set up row} : k2 → row: label {rows [], name set}, items 'k ×2'
      Buttonhole row (RS): k2 → row: label {rows [], name buttonhole, side RS}, items 'k ×2'
      Foundation long wide row: k2 → row: label {rows [], name foundation}, items 'k ×2'
      Row 1 {p|purl} : k2 → row: label {rows [1]}, items 'p, k ×2'
      Row 1 yo, k2 → row: label {rows [1]}, items 'yo, k ×2'
      Row 1 {inc, k2|inc k2} → row: label {rows [1]}, items 'inc, k ×2'
      Row 1 *k2, p2* to end → row: label {rows [1]}, items '(k ×2, p ×2) to {left 0}'
      Row 1 (k2, p2) to end → row: label {rows [1]}, items '(k ×2, p ×2) to {left 0}'
      Row 1 [k2, p2] to end → row: label {rows [1]}, items '(k ×2, p ×2) to {left 0}'
      Row 1 {bo 2, k to end|bind off 2, k to end} → row: label {rows [1]}, items 'bo ×2, k to {left 0}'
      Row 1 sl 1, k2 → row: label {rows [1]}, items 'sl, k ×2'
      Row 1 slip 1, k2 → row: label {rows [1]}, items 'sl, k ×2'
      Row 1 ssk, k2 → row: label {rows [1]}, items 'ssk, k ×2'
      Row 1 skp, k2 → row: label {rows [1]}, items 'skp, k ×2'
      Row 1 knit → row: label {rows [1]}, items 'k to {left 'what follows'}'
      Row 1 purl → row: label {rows [1]}, items 'p to {left 'what follows'}'
      Row 1 dec, k2 → row: label {rows [1]}, items 'dec, k ×2'
      Row 1 work to end → row: label {rows [1]}, items 'patt to {left 0}'
      Row 1 as row 2 → row: label {rows [1]}, items '', like 2
      Row 3 same as row 2 → row: label {rows [3]}, items '', like 2
      Row 3 rep row 2 → row: label {rows [3]}, items '', like 2
      Row 2 cast on 2, k2 → row: label {rows [2]}, items 'co ×2, k ×2'
      Row 5000: k2 → row: label {rows [5000]}, items 'k ×2'
      Row 1: - k2 → row: label {rows [1]}, items 'k ×2'
      First row k2 → row: label {rows [1]}, items 'k ×2'
      Row 1 {(right-side)|(R S)|(right s)} : k2 → row: label {rows [1], side RS}, items 'k ×2'
      Row 1 {(wrong-side)|(W S)|(wrong s)} : k2 → row: label {rows [1], side WS}, items 'k ×2'
      Rows 1 to 2 and 4: k2 → row: label {rows [1; 2; 4]}, items 'k ×2'
      Rows 2 and 4 to 6 inclusive: k2 → row: label {rows [2; 4; 5; 6]}, items 'k ×2'
      Big row (RS): k2 → row: label {rows [], name big, side RS}, items 'k ×2'
      Big good new row: k2 → row: label {rows [], name big}, items 'k ×2'
      Rows 2-2: k2 → row: label {rows [2]}, items 'k ×2'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Row 2 all sts k → ✗ stitch or repeat expected @7
      Rows 400-801: k2 → ✗ stitch or repeat expected @10
      Row 5001: k2 → ✗ stitch or repeat expected @5
      Row 0: k2 → ✗ stitch or repeat expected @5
      Row 1½: k2 → ✗ stitch or repeat expected @5
      Rows 3-1: k2 → ✗ stitch or repeat expected @8
      Row 1 wibble → ✗ stitch or repeat expected @5
      Row wibble: k2 → ✗ stitch or repeat expected @5
      Next k2 → row: items 'k ×2'
      One two three four five row: k2 → ✗ stitch or repeat expected @1
      K row: k2 → row: items 'k, k ×2'
      P row: k2 → row: items 'p, k ×2'
      {Work|Every|Each|At|Until|Bind|Cast} row: k2 → ✗ stitch or repeat expected @1
      Rep row: k2 → ✗ nothing before the repeat @5
      Set dec row: k2 → ✗ stitch or repeat expected @1
      Set row k2 → ✗ stitch or repeat expected @1
      First k2 → ✗ stitch or repeat expected @1
      Big good new old fine row: k2 → ✗ stitch or repeat expected @1
      Next 4 k2 → ✗ stitch or repeat expected @6
      Row 1 (RS k2 → row: label {rows [1], side RS}, items 'k ×2'
      Rows 1 and k2 → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
