import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expandRow } from '../../../src/knit/row/expand.ts';
import type { Step } from '../../../src/knit/row/step.ts';
import { workRow } from '../../../src/knit/row/work.ts';
import { stitches, stitchNames } from '../../../src/knit/stitch.ts';
import { share } from '../../by-turns.ts';

const step = (): fc.Arbitrary<Step> =>
  fc.letrec<{ step: Step }>((tie) => ({
    step: fc.oneof(
      { maxDepth: 3, withCrossShrink: true },
      fc.record({ work: fc.constantFrom(...stitchNames), times: fc.integer({ min: 0, max: 6 }) }),
      fc.record({
        work: fc.constantFrom(...stitchNames),
        until: fc.record({ left: fc.integer({ min: 0, max: 6 }) }),
      }),
      fc.record({ repeat: fc.array(tie('step'), { maxLength: 3 }), times: fc.integer({ min: 0, max: 4 }) }),
      fc.record({
        repeat: fc.array(tie('step'), { maxLength: 3 }),
        until: fc.record({ left: fc.integer({ min: 0, max: 6 }) }),
      }),
    ),
  })).step;

describe('working a row', () => {
  it('agrees with the same row worked stitch by stitch, whatever the row', () => {
    let worked = 0;
    fc.assert(
      fc.property(fc.array(step(), { maxLength: 6 }), fc.integer({ min: 0, max: 60 }), (start, onNeedle) => {
        const steps: Step[] = [...start, { work: 'k', until: { left: 0 } }];
        const result = workRow(steps, onNeedle);
        if (!result.ok) return;
        worked += 1;
        const all = expandRow(steps, onNeedle);
        expect(all.reduce((sum, s) => sum + stitches[s].takes, 0)).toBe(onNeedle);
        expect(all.reduce((sum, s) => sum + stitches[s].makes, 0)).toBe(result.value.after);
      }),
      { numRuns: share(7000), seed: 7 },
    );
    expect(worked).toBeGreaterThan(500);
  });

  it('leaves what is left after decreases and increases', () => {
    const neck: Step[] = [
      { work: 'k', times: 2 },
      { work: 'k2tog', times: 1 },
      { work: 'k', until: { left: 0 } },
    ];
    expect(workRow(neck, 50)).toMatchObject({ ok: true, value: { before: 50, after: 49 } });
  });

  it('refuses a row that leaves stitches unworked', () => {
    expect(workRow([{ work: 'k', times: 5 }], 6)).toMatchObject({
      ok: false,
      faults: [{ code: 'stitches left over' }],
    });
  });

  it('refuses a row that asks for more than there is', () => {
    expect(workRow([{ work: 'k2tog', times: 4 }], 7)).toMatchObject({
      ok: false,
      faults: [{ code: 'not enough stitches' }],
    });
  });

  it('refuses a repeat that does not come out', () => {
    const rib: Step[] = [
      {
        repeat: [
          { work: 'k', times: 2 },
          { work: 'p', times: 2 },
        ],
        until: { left: 0 },
      },
    ];
    expect(workRow(rib, 62)).toMatchObject({ ok: false });
    expect(workRow(rib, 64)).toMatchObject({ ok: true });
  });

  it('never hangs on a repeat that uses up no stitch', () => {
    expect(workRow([{ repeat: [{ work: 'yo', times: 1 }], until: { left: 0 } }], 5)).toMatchObject({
      ok: false,
      faults: [{ code: 'endless repeat' }],
    });
  });

  it('nor does spelling it out: what was worked before it stands, and nothing of it', () => {
    const endless = (...inner: readonly Step[]): readonly Step[] => [
      { work: 'k', times: 2 },
      { repeat: inner, until: { left: 0 } },
      { work: 'p', times: 1 },
    ];
    // a round that takes nothing is worked once, and then there is no end of it
    expect(expandRow(endless({ work: 'yo', times: 1 }), 5)).toEqual(['k', 'k', 'yo']);
    expect(expandRow(endless({ work: 'k2tog', times: 1 }, { work: 'k', times: 1 }), 6)).toEqual([
      'k',
      'k',
      'k2tog',
      'k',
    ]);
    expect(
      expandRow(
        [
          { work: 'k2tog', until: { left: 1 } },
          { work: 'k', times: 1 },
        ],
        4,
      ),
    ).toEqual(['k2tog', 'k2tog']);
    expect(
      expandRow(
        [
          { work: 'k', times: 3 },
          { work: 'p', times: 1 },
        ],
        2,
      ),
    ).toEqual(['k', 'k']);
    expect(
      expandRow(
        [
          { work: 'k', until: { left: 3 } },
          { work: 'p', times: 2 },
        ],
        2,
      ),
    ).toEqual([]);
  });

  it('refuses to work up to a place with what uses up no stitch, also where the place is reached already', () => {
    const none: Step[] = [
      { work: 'yo', until: { left: 1 } },
      { repeat: [{ work: 'yo', times: 1 }], until: { left: 1 } },
      { repeat: [{ repeat: [{ work: 'm1', times: 2 }], times: 3 }], until: { left: 1 } },
    ];
    for (const first of none) {
      for (const onNeedle of [1, 2]) {
        expect(workRow([first, { work: 'k', until: { left: 0 } }], onNeedle)).toMatchObject({
          ok: false,
          faults: [{ code: 'endless repeat' }],
        });
      }
    }
  });

  it('works a repeat no times where its place is reached already', () => {
    const row: Step[] = [
      {
        repeat: [
          { work: 'k', times: 1 },
          { work: 'yo', times: 1 },
        ],
        until: { left: 1 },
      },
      { work: 'k', times: 1 },
    ];
    expect(workRow(row, 1)).toMatchObject({ ok: true, value: { after: 1 } });
    expect(workRow(row, 3)).toMatchObject({ ok: true, value: { after: 5 } });
  });

  it('counts what is bound off, cast on and held', () => {
    const row: Step[] = [
      { work: 'bo', times: 5 },
      { work: 'k', times: 10 },
      { work: 'co', times: 3 },
      { work: 'hold', until: { left: 0 } },
    ];
    expect(workRow(row, 20)).toMatchObject({
      ok: true,
      value: { after: 13, boundOff: 5, castOn: 3, held: 5 },
    });
  });

  it.each<[string, readonly Step[], number, string]>([
    [
      'too few for a decrease',
      [{ work: 'k2tog', times: 4 }],
      7,
      'not enough stitches {"needStitches":8,"haveStitches":7}',
    ],
    [
      'too few for a place',
      [
        { work: 'k', times: 3 },
        { work: 'k', until: { left: 3 } },
      ],
      5,
      'not enough stitches {"needStitches":3,"haveStitches":2}',
    ],
    [
      'for the place of a repeat',
      [{ repeat: [{ work: 'k', times: 1 }], until: { left: 6 } }],
      5,
      'not enough stitches {"needStitches":6,"haveStitches":5}',
    ],
    ['left over', [{ work: 'k', times: 5 }], 7, 'stitches left over {"leftStitches":2,"onNeedleStitches":7}'],
    [
      'decreases to a place between two',
      [{ work: 'k2tog', until: { left: 0 } }],
      7,
      'repeat does not come out {"byStitches":2,"spanStitches":7}',
    ],
    [
      'a repeat that runs past its place',
      [
        {
          repeat: [
            { work: 'k', times: 2 },
            { work: 'p', times: 1 },
          ],
          until: { left: 1 },
        },
        { work: 'k', times: 1 },
      ],
      9,
      'repeat does not come out {"byStitches":3,"spanStitches":8}',
    ],
    ['a count that is no whole number', [{ work: 'k', times: 1.5 }], 7, 'bad count {}'],
    ['one below nothing', [{ work: 'k', times: -1 }], 7, 'bad count {}'],
    [
      'more than anybody knits',
      [
        { work: 'yo', times: 100_001 },
        { work: 'k', until: { left: 0 } },
      ],
      7,
      'bad count {}',
    ],
    [
      'so many repeats',
      [
        { repeat: [], times: 100_001 },
        { work: 'k', until: { left: 0 } },
      ],
      7,
      'bad count {}',
    ],
    ['a needle of half a stitch', [{ work: 'k', until: { left: 0 } }], 6.5, 'bad count {}'],
    ['a needle of less than none', [], -1, 'bad count {}'],
  ])('says what cannot be, with its figures: %s', (_, steps, onNeedle, said) => {
    const row = workRow(steps, onNeedle);
    expect(row.ok ? [] : row.faults.map(({ code, figures }) => `${code} ${JSON.stringify(figures)}`)).toEqual(
      [said],
    );
  });

  it('an empty needle is worked, and the longest run there may be', () => {
    expect(workRow([], 0)).toEqual({
      ok: true,
      value: { before: 0, after: 0, boundOff: 0, castOn: 0, held: 0 },
    });
    expect(workRow([{ work: 'co', times: 100_000 }], 0)).toMatchObject({
      value: { after: 100_000, castOn: 100_000 },
    });
    expect(
      workRow(
        [
          { work: 'take', times: 2 },
          { work: 'pu', times: 3 },
        ],
        0,
      ),
    ).toMatchObject({ value: { after: 5, castOn: 5 } });
  });
});
