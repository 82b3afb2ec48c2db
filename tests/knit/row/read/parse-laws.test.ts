import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printRow } from '../../../../src/knit/row/print.ts';
import { normalForm } from '../../../../src/knit/row/read/normal-form.ts';
import { parseRow } from '../../../../src/knit/row/read/parse.ts';
import { englishRowWords } from '../../../../src/knit/row/row-words.ts';
import type { Step } from '../../../../src/knit/row/step.ts';
import { workRow } from '../../../../src/knit/row/work.ts';
import { stitchNames } from '../../../../src/knit/stitch.ts';
import { rowSteps, workableRow } from '../../../arbitraries/row-steps.ts';
import { share } from '../../../by-turns.ts';
import { told } from '../../../told.ts';

const wordings = [
  ['US, abbreviated', englishRowWords('US', 'abbreviated')],
  ['UK, abbreviated', englishRowWords('UK', 'abbreviated')],
  ['US, in full', englishRowWords('US', 'full')],
  ['UK, in full', englishRowWords('UK', 'full')],
] as const;

/** 'knit to end, knit to end': what goes on behind the end, however far, is another row, and is not read as this one. */
function goesOnBehindEnd(steps: readonly Step[]): boolean {
  const end = steps.findIndex((step) => 'until' in step && step.until.left === 0);
  return end >= 0 && steps.slice(end + 1).some((step) => 'until' in step);
}

describe.each(wordings)('a row printed in %s words', (name, words) => {
  it('reads back to the same steps', () => {
    fc.assert(
      fc.property(rowSteps(), (steps) => {
        const normal = normalForm(steps);
        fc.pre(normal.length > 0 && !goesOnBehindEnd(normal));
        const text = printRow(normal, words);
        const back = parseRow(text);
        expect(back.ok ? back.value : `${text}: ${told(back.faults)}`).toEqual(normal);
      }),
      // other rows in each of the wordings
      { numRuns: share(600), seed: name.length },
    );
  }, 60_000);

  it.each(stitchNames)('reads ‘%s’ back, once, several times and to the last stitches', (work) => {
    for (const step of [
      { work, times: 1 },
      { work, times: 3 },
      { work, until: { left: 2 } },
    ]) {
      const text = printRow([step, { work: 'k', times: 2 }], words);
      const back = parseRow(text);
      expect(back.ok ? back.value : `${text}: ${told(back.faults)}`).toEqual([step, { work: 'k', times: 2 }]);
    }
  });
});

describe('a row that goes on behind its end', () => {
  it.each([
    'knit to end, knit to end',
    'knit to end, k1, knit to last 2 sts',
    '*k2; repeat from * to end, knit to end',
  ])('is refused: %s', (text) => {
    expect(parseRow(text).ok).toBe(false);
  });
});

describe('a row that comes out', () => {
  it('leaves the same count when it was printed and read', () => {
    fc.assert(
      fc.property(workableRow, ({ steps, onNeedle }) => {
        const read = parseRow(printRow(steps));
        expect(read.ok).toBe(true);
        if (read.ok) expect(workRow(read.value, onNeedle)).toEqual(workRow(steps, onNeedle));
      }),
      { seed: 4 },
    );
  });
});
