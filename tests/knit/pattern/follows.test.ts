import { describe, expect, it } from 'vitest';
import { isToLookAt } from '../../../src/app/drafts/pattern/to-look-at.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';

/** Line, and the line that it follows from; of those that are wrong. */
const wrong = (text: string) =>
  readPattern(text)
    .lines.filter(({ faults }) => faults.length > 0)
    .map(({ line, follows }) => [line, follows]);

describe('what follows from a line that was not understood', () => {
  it('is told as following from it, and waits for nothing itself', () => {
    const text = `BACK
Cast on 60 sts.
Frumple 3 sts of each row.
Next row: k10, k2tog, k8.
Bind off 20 sts at beg of next 4 rows.
Bind off.`;
    expect(wrong(text)).toEqual([
      [3, undefined],
      [4, 3],
      [6, 3],
    ]);
    expect(
      readPattern(text)
        .lines.filter(isToLookAt)
        .map(({ line }) => line),
    ).toEqual([3]);
  });

  it('is none in a piece of its own', () => {
    const text = `BACK
Cast on 60 sts.
Frumple 3 sts of each row.
Bind off.
SLEEVE
Cast on 20 sts.
Next row: k10, k2tog, k6.
Bind off.`;
    expect(wrong(text)).toEqual([
      [3, undefined],
      [7, undefined],
    ]);
  });

  it('is none behind a count that shows that all is well', () => {
    const text = `BACK
Cast on 60 sts.
Frumple 3 sts of each row. 50 sts.
Knit 2 rows. 50 sts.
Next row: k10, k2tog, k8.
Bind off.`;
    expect(wrong(text)).toEqual([
      [3, undefined],
      [5, undefined],
    ]);
  });

  it('is no line that says something else wrong of its own', () => {
    const text = `BACK
Cast on 60 sts.
Frumple 3 sts of each row.
Next row: k10, k2tog, k8. Wibble 3 sts of each row.
Bind off.`;
    expect(wrong(text)).toEqual([
      [3, undefined],
      [4, undefined],
    ]);
  });
});
