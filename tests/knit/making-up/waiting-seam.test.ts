import { describe, expect, it } from 'vitest';
import type { SewnBand } from '../../../src/knit/making-up/band-joints.ts';
import { waitingSeam } from '../../../src/knit/making-up/waiting-seam.ts';

/** Where the ends of a neckband meet, by the edges that it is picked up along in turn; common practice, no published source. */
const waits = (...edges: readonly string[]): string => {
  const seam = waitingSeam({ along: edges.map((edge) => ({ edge })) } as unknown as Pick<SewnBand, 'along'>);
  return seam === undefined ? 'none' : `${seam.worn} ${seam.panel}`;
};

describe('the seam that waits until a neckband is done', () => {
  it.each([
    ['front and back', ['left front neck', 'right front neck', 'back neck'], 'left back'],
    ['the whole front at once', ['front neck', 'back neck'], 'left back'],
    [
      'a raglan from the left front on, its sleeves last',
      ['left front neck', 'back neck', 'left sleeve top'],
      'left front',
    ],
    [
      'a raglan with its right sleeve alone named',
      ['left front neck', 'right sleeve top', 'back neck'],
      'left back',
    ],
    [
      'from the right sleeve on',
      ['right sleeve top', 'back neck', 'left sleeve top', 'front neck'],
      'right front',
    ],
    [
      'from the left sleeve on',
      ['left sleeve top', 'front neck', 'right sleeve top', 'back neck'],
      'left back',
    ],
    ['from the back on', ['back neck', 'front neck'], 'right back'],
    ['from the right half of the back on', ['right back neck', 'front neck', 'left back neck'], 'right back'],
    [
      'from the middle of the front on',
      ['middle of the front neck', 'right front neck', 'back neck'],
      'none',
    ],
    ['from the right front on', ['right front neck', 'back neck', 'left front neck'], 'none'],
    ['from the middle of the back on', ['middle of the back neck', 'left back neck', 'front neck'], 'none'],
    ['from the left half of the back on', ['left back neck', 'front neck', 'right back neck'], 'none'],
    ['along what is no neck', ['left armhole'], 'left back'],
  ])('%s', (_, edges, seam) => {
    expect(waits(...edges)).toBe(seam);
  });
});
