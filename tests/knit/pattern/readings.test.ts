import { describe, expect, it } from 'vitest';
import { nearestReadings } from '../../../src/knit/pattern/readings.ts';
import { nearWords, slipsBetween } from '../../../src/knit/pattern/text/near-words.ts';

/** A back of our own; the line in question stands fourth. */
const readings = (line: string, ...after: readonly string[]) =>
  nearestReadings(
    ['BACK', 'Cast on 80 sts.', 'Work 6 rows in stocking stitch.', line, ...after].join('\n'),
    4,
  ).map(({ text, without, rows, before, after: left }) => ({
    text,
    without,
    rows: rows.length,
    before,
    after: left,
  }));

describe('the nearest readings of a line', () => {
  it('have a slip of the pen put right, and nothing left out', () => {
    expect(readings('Next row: K2, k2tgo, knit to last 4 sts, ssk, k2. 78 sts.')[0]).toEqual({
      text: 'Next row: K2, k2tog, knit to last 4 sts, ssk, k2. 78 sts.',
      without: '',
      rows: 1,
      before: 80,
      after: 78,
    });
    expect(readings('Decr 1 st each end of the next and evry 4th row 3 times. 74 sts.')[0]).toMatchObject({
      text: 'Decr 1 st each end of the next and every 4th row 3 times. 74 sts.',
      without: '',
      rows: 9,
      after: 74,
    });
  });

  it('are none where the line is understood as it stands', () => {
    expect(readings('Knit 1 row.')).toEqual([]);
    expect(readings('Next row: K2, k2tog, knit to end. 79 sts.')).not.toContainEqual(
      expect.objectContaining({ without: '' }),
    );
  });

  it('leave out a remark, and say which', () => {
    expect(readings('Work 10 rows in stocking stitch taking care of the fringe.')).toEqual([
      {
        text: 'Work 10 rows in stocking stitch.',
        without: 'taking care of the fringe',
        rows: 10,
        before: 80,
        after: 80,
      },
    ]);
    expect(readings('Next row: K2, frumple the fringe, knit to end.')[0]).toMatchObject({
      text: 'Next row: K2, knit to end.',
      without: 'frumple the fringe',
    });
  });

  it('keep the count that the line states: none that contradicts it is offered', () => {
    for (const { after } of readings('Next row: K2, frumple the fringe, k2tog, knit to end. (79 sts)'))
      expect(after).toBe(79);
  });

  it('that go with what follows stand first', () => {
    const [first] = readings(
      'Next row: K2tog, frumple the fringe, knit to last 2 sts, k2tog.',
      'Next row: purl all sts. (78 sts)',
    );
    expect(first).toMatchObject({ without: 'frumple the fringe', after: 78 });
  });

  it('are three at the most, each other rows than the next', () => {
    const found = readings('Next row: K2, yo, frumple the fringe, k2tog, twiddle, knit to end.');
    expect(found.length).toBeGreaterThan(0);
    expect(found.length).toBeLessThanOrEqual(3);
  });

  it('are none where nothing of it can be understood, or there is no such line', () => {
    expect(readings('Frumple.')).toEqual([]);
    expect(nearestReadings('BACK\nCast on 80 sts.', 9)).toEqual([]);
  });
});

describe('slips of the pen', () => {
  it('are counted letter by letter: left out, put in, changed, two the wrong way round', () => {
    expect(slipsBetween('knit', 'knit')).toBe(0);
    expect(slipsBetween('knt', 'knit')).toBe(1);
    expect(slipsBetween('knnit', 'knit')).toBe(1);
    expect(slipsBetween('knot', 'knit')).toBe(1);
    expect(slipsBetween('kint', 'knit')).toBe(1);
    // the worked example of two words that the field gives most often: three changes
    expect(slipsBetween('kitten', 'sitting')).toBe(3);
    expect(slipsBetween('', 'row')).toBe(3);
  });

  it('lead to words that the reader knows, nearest first', () => {
    expect(nearWords('evry', 1)).toEqual(['every']);
    expect(nearWords('stokinette', 1)).toEqual(['stockinette']);
    expect(nearWords('frumple', 3)).toEqual([]);
  });
});
