import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';

/** A back of our own, with lines that no reader can know; each line's counts, what is asked, and its faults. */
const read = (...lines: readonly string[]) =>
  readPattern(['BACK', 'Cast on 80 sts.', 'Work 6 rows in stocking stitch.', ...lines].join('\n'))
    .lines.slice(3)
    .map(({ before, after, asksCount, countedBy, faults }) => ({
      counts: [before, after],
      asks: asksCount,
      by: countedBy,
      faults: faults.map(({ code }) => code),
    }));

const unread = ['stitch or repeat expected'];

describe('a count that is stated behind what was not understood', () => {
  it('closes the gap in the next sentence', () => {
    expect(
      read('Next row: K2, frumple the fringe, knit to end. 78 sts.', 'Work 4 rows in stocking stitch.'),
    ).toEqual([
      { counts: [80, 78], asks: false, by: { stitches: 78, line: 4 }, faults: unread },
      { counts: [78, 78], asks: false, by: undefined, faults: [] },
    ]);
  });

  it('closes it some lines on, by what is worked between', () => {
    expect(
      read(
        'Next row: K2, frumple the fringe, knit to end.',
        'Next row: P.',
        'Next row: K2tog, knit to last 2 sts, k2tog. 74 sts.',
      ),
    ).toEqual([
      { counts: [80, 76], asks: false, by: { stitches: 76, line: 6 }, faults: unread },
      { counts: [76, 76], asks: false, by: undefined, faults: [] },
      { counts: [76, 74], asks: false, by: undefined, faults: [] },
    ]);
  });

  it('says too that the count had not changed', () => {
    expect(
      read('Next row: K2, frumple the fringe, knit to end.', 'Next row: P across. 80 sts.')[0],
    ).toMatchObject({
      counts: [80, 80],
      asks: false,
      by: { stitches: 80, line: 5 },
    });
  });

  it('closes the nearest of several: what is before it is still asked', () => {
    const [first, second] = read(
      'Next row: K2, frumple the fringe, knit to end.',
      'Next row: P2, frumple the fringe, purl to end. 70 sts.',
    );
    expect(first).toMatchObject({ counts: [80, 80], asks: true, by: undefined });
    expect(second).toMatchObject({ counts: [80, 70], asks: false, by: { stitches: 70, line: 5 } });
  });

  it('closes one after the other', () => {
    const lines = read(
      'Next row: K2, frumple the fringe, knit to end. 76 sts.',
      'Next row: P2, frumple the fringe, purl to end. 70 sts.',
      'Next row: K2, frumple the fringe, knit to end. 71 sts.',
    );
    expect(lines.map(({ counts }) => counts)).toEqual([
      [80, 76],
      [76, 70],
      [70, 71],
    ]);
    expect(lines.every(({ asks, faults }) => !asks && faults.length === 1)).toBe(true);
  });

  it('is a contradiction where every line is understood, as ever', () => {
    expect(read('Next row: K2, k2tog, knit to end. 77 sts.')[0]).toMatchObject({
      counts: [80, 79],
      by: undefined,
      faults: ['count contradicts'],
    });
  });

  it('closes none where the stitches would be fewer than one', () => {
    const [first, second] = read(
      'Next row: K2, frumple the fringe, knit to end.',
      'Next row: Cast on 90 sts at the end of the row, knit all. 60 sts.',
    );
    expect(first).toMatchObject({ asks: true });
    expect(second?.faults.length).toBeGreaterThan(0);
  });
});
