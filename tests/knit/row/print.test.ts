import { describe, expect, it } from 'vitest';
import { printRow, sayRow } from '../../../src/knit/row/print.ts';
import { englishRowWords } from '../../../src/knit/row/row-words.ts';
import type { Step } from '../../../src/knit/row/step.ts';
import { stepWeight } from '../../../src/knit/row/step-weight.ts';
import type { StitchName } from '../../../src/knit/stitch.ts';

const times = (work: StitchName, n: number): Step => ({ work, times: n });
const to = (work: StitchName, left: number): Step => ({ work, until: { left } });
const [us, full, uk] = [
  englishRowWords(),
  englishRowWords('US', 'full'),
  englishRowWords('UK', 'full'),
] as const;

/* The words are the trade's; common practice, no published source. */
describe('a row in words: abbreviated, in full, and in UK terms', () => {
  it.each<[readonly Step[], string, string, string?]>([
    [[to('k', 0)], 'knit', 'knit'],
    [[to('p', 0)], 'purl', 'purl'],
    [[to('sl', 0)], 'slip', 'slip'],
    [[to('patt', 0)], 'work in pattern', 'work in pattern'],
    [
      [to('bo', 0)],
      'bind off all sts in pattern',
      'bind off all stitches in pattern',
      'cast off all stitches in pattern',
    ],
    [[to('kfb', 0)], '[kfb] to end', '[knit into front and back] to end'],
    [[to('hold', 0)], 'place sts on holder', 'place stitches on holder'],
    [[to('take', 0)], 'take up sts from holder', 'take up stitches from holder'],
    [[to('unworked', 0)], 'leave sts unworked', 'leave stitches unworked'],
    [[to('pu', 0)], 'pick up and knit', 'pick up and knit'],
    [[to('co', 0)], 'cast on', 'cast on'],
    [[times('k', 3)], 'k3', 'knit 3'],
    [[times('p', 1)], 'p1', 'purl 1'],
    [[times('sl', 2)], 'sl2', 'slip 2'],
    [[times('k2tog', 1)], 'k2tog', 'knit 2 together'],
    [[times('k2tog', 3)], '[k2tog] 3 times', '[knit 2 together] 3 times'],
    [[times('bo', 1)], 'bind off 1 st', 'bind off 1 stitch', 'cast off 1 stitch'],
    [[times('bo', 5)], 'bind off 5 sts', 'bind off 5 stitches', 'cast off 5 stitches'],
    [[times('co', 2)], 'cast on 2 sts', 'cast on 2 stitches'],
    [[times('pu', 1)], 'pick up and knit 1 st', 'pick up and knit 1 stitch'],
    [[times('hold', 4)], 'place 4 sts on holder', 'place 4 stitches on holder'],
    [[times('take', 1)], 'take up 1 st from holder', 'take up 1 stitch from holder'],
    [[times('patt', 9)], 'work 9 sts in pattern', 'work 9 stitches in pattern'],
    [[times('unworked', 1)], 'leave 1 st unworked', 'leave 1 stitch unworked'],
    [
      [times('k', 1), to('k', 1), times('p', 1)],
      'k1, knit to last st, p1',
      'knit 1, knit to last stitch, purl 1',
    ],
    [
      [to('p', 4), times('p2tog', 2)],
      'purl to last 4 sts, [p2tog] 2 times',
      'purl to last 4 stitches, [purl 2 together] 2 times',
    ],
    [
      [times('k', 2), to('bo', 0)],
      'k2, bind off to end',
      'knit 2, bind off to end',
      'knit 2, cast off to end',
    ],
    [[times('k', 2), to('unworked', 0)], 'k2, turn', 'knit 2, turn'],
    [
      [times('k', 2), times('wrap next st', 1), to('unworked', 0)],
      'k2, wrap next st, turn',
      'knit 2, wrap next stitch, turn',
    ],
    [
      [times('ds', 1), to('p', 0), times('working each ds as one st', 1)],
      'ds, purl to end, working each ds as one st',
      'double stitch, purl to end, working each double stitch as one stitch',
    ],
    [
      [times('k', 2), to('unworked', 3), times('k', 3)],
      'k2, leave sts unworked to last 3 sts, k3',
      'knit 2, leave stitches unworked to last 3 stitches, knit 3',
    ],
    [
      [times('k1 p1 k1', 1), times('p1 k1 p1', 2)],
      '(k1, p1, k1) in next st, [(p1, k1, p1) in next st] 2 times',
      '(k1, p1, k1) in next stitch, [(p1, k1, p1) in next stitch] 2 times',
    ],
    [
      [times('k1 yo k1', 1), times('inc 2', 1), times('dec 3', 1)],
      '(k1, yo, k1) in next st, inc 2 in next st, dec 3 at once',
      '(k1, yo, k1) in next stitch, inc 2 in next stitch, dec 3 at once',
    ],
    [[times('inc', 1), times('dec', 1)], 'inc, dec', 'increase 1, decrease 1'],
    [
      [{ repeat: [times('k', 1), times('p', 1)], until: { left: 2 } }, times('k', 2)],
      '*k1, p1; repeat from * to last 2 sts, k2',
      '*knit 1, purl 1; repeat from * to last 2 stitches, knit 2',
    ],
    [
      [{ repeat: [times('k', 2), times('m1', 1)], times: 5 }, to('k', 0)],
      '[k2, m1] 5 times, knit to end',
      '[knit 2, make 1] 5 times, knit to end',
    ],
    [
      [{ repeat: [{ repeat: [times('k', 1)], until: { left: 1 } }, times('p', 1)], times: 1 }],
      '[[k1] to last st, p1] 1 times',
      '[[knit 1] to last stitch, purl 1] 1 times',
    ],
  ])('%j', (steps, short, long, british) => {
    expect(printRow(steps)).toBe(short);
    expect(printRow(steps, full)).toBe(long);
    expect(printRow(steps, uk)).toBe(british ?? long);
    expect(printRow(steps, englishRowWords('UK'))).toBe(short.replaceAll('bind off', 'cast off'));
    expect(printRow(steps, us)).toBe(short);
  });

  it.each<[StitchName, string]>([
    ['k', 'knit 1'],
    ['p3tog', 'purl 3 together'],
    ['ssk', 'slip slip knit'],
    ['ssp', 'slip slip purl'],
    ['sssp', 'slip slip slip purl'],
    ['p2tog', 'purl 2 together'],
    ['k3tog', 'knit 3 together'],
    ['sk2p', 'slip 1 knit 2 together pass slipped stitch over'],
    ['s2kp', 'slip 2 together knit 1 pass slipped stitches over'],
    ['s2pp', 'slip 2 together purl 1 pass slipped stitches over'],
    ['m1', 'make 1'],
    ['m1l', 'make 1 left'],
    ['m1r', 'make 1 right'],
    ['m1p', 'make 1 purlwise'],
    ['pfb', 'purl into front and back'],
    ['kfbf', 'knit into front back and front'],
    ['yo', 'yarn over'],
  ])('%s in full is %s', (work, said) => {
    expect(printRow([times(work, 1), times('k', 1)], full)).toBe(`${said}, knit 1`);
  });

  it('is said without what lies before the yarn, which printing tells', () => {
    const short = [times('unworked', 4), times('k', 2), times('unworked', 1), to('k', 0)];
    expect(printRow(short)).toBe('leave 4 sts unworked, k2, leave 1 st unworked, knit to end');
    expect(sayRow(short)).toBe('k2, leave 1 st unworked, knit to end');
    expect(sayRow([to('k', 0)])).toBe('knit');
    expect(sayRow([times('k', 2), to('unworked', 0)])).toBe('k2, turn');
  });
});

describe('what working a row takes at most', () => {
  it('is a step for each stitch and round, and every stitch on the needle for a repeat to a place', () => {
    const inner = [times('k', 9), to('p', 2)];
    expect(stepWeight([], 50)).toBe(0);
    expect(stepWeight(inner, 50)).toBe(2);
    expect(stepWeight([{ repeat: inner, times: 4 }], 50)).toBe(12);
    expect(stepWeight([{ repeat: inner, until: { left: 0 } }], 50)).toBe(150);
    expect(stepWeight([{ repeat: inner, until: { left: 0 } }], 0)).toBe(3);
    expect(stepWeight([{ repeat: [{ repeat: inner, times: 4 }], times: 5 }, times('k', 1)], 50)).toBe(66);
  });
});
