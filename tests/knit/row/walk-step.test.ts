import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expandRow } from '../../../src/knit/row/expand.ts';
import { otherSide, type Step } from '../../../src/knit/row/step.ts';
import { runOf, stitchesNamed, stitchOf, takenAndMade } from '../../../src/knit/row/stitches-of-steps.ts';
import { workRow } from '../../../src/knit/row/work.ts';

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((path) =>
  /\.tsx?$/.test(path),
);

/** Files that know steps and look at their fields to tell which case one is; `item` is of the written row. */
const tellsCasesApart = (text: string): boolean =>
  /import [^;]*\bStep\b[^;]*step\.ts'/.test(text) && /'(work|times|repeat|until)' in (?!item\b)/.test(text);

describe('the four cases of a step', () => {
  it('are told apart in one file', () => {
    const found = sources.filter((path) => tellsCasesApart(readFileSync(`src/${path}`, 'utf8')));
    expect(found).toEqual(['knit/row/walk-step.ts']);
  });
});

const k2: Step = { work: 'k', times: 2 };
const toLast2: Step = { work: 'k', until: { left: 2 } };
const lace: Step = {
  repeat: [
    { work: 'yo', times: 1 },
    { repeat: [{ work: 'k2tog', times: 1 }], times: 2 },
  ],
  times: 3,
};

describe('the stitches in a row', () => {
  it('are each named once, also those within repeats', () => {
    const toEnd: Step = { repeat: 'repeat' in lace ? lace.repeat : [], until: { left: 2 } };
    expect(stitchesNamed([k2, toEnd, k2])).toEqual(['k', 'yo', 'k2tog']);
  });

  it('are known of a step that is no repeat', () => {
    expect([k2, toLast2, lace].map(stitchOf)).toEqual(['k', 'k', undefined]);
    expect([k2, toLast2, lace].map(runOf)).toEqual([k2, undefined, undefined]);
  });
});

const stitch = fc.constantFrom('k', 'p', 'k2tog', 'yo', 'kfb', 'bo');
const run: fc.Arbitrary<Step> = fc.record({ work: stitch, times: fc.nat(4) }) as fc.Arbitrary<Step>;
const fixed = fc.array(
  fc.oneof(run, fc.record({ repeat: fc.array(run, { maxLength: 3 }), times: fc.nat(3) })),
  {
    maxLength: 5,
  },
);

describe('what steps take and make', () => {
  it('is what working them takes and makes, stitch by stitch', () => {
    fc.assert(
      fc.property(fixed, (steps) => {
        const count = takenAndMade(steps);
        const worked = workRow(steps, count?.takes ?? -1);
        expect(worked.ok && worked.value.after).toBe(count?.makes);
        expect(takenAndMade(expandRow(steps, count?.takes ?? 0).map((work) => ({ work, times: 1 })))).toEqual(
          count,
        );
      }),
    );
  });

  it('is not known where a step goes on until a count is left', () => {
    expect(takenAndMade([k2, lace])).toEqual({ takes: 14, makes: 11 });
    expect(takenAndMade([k2, toLast2])).toBeUndefined();
    expect(takenAndMade([{ repeat: [toLast2], times: 1 }])).toBeUndefined();
    expect(takenAndMade([{ repeat: [k2], until: { left: 0 } }])).toBeUndefined();
  });
});

describe('the side', () => {
  it('is the other one after a turn', () => {
    expect([otherSide('RS'), otherSide('WS')]).toEqual(['WS', 'RS']);
  });
});
