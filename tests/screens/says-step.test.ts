import { beforeAll, describe, expect, it } from 'vitest';
import { easeOf } from '../../src/knit/making-up/step.ts';
import { saysStep } from '../../src/screens/making-up/says-step.ts';
import { loadWords } from '../../src/words/say.ts';

beforeAll(() => loadWords('makingUp', 'craft'));

const side = (back: number, front: number) =>
  saysStep({ id: 'side seams', kind: 'side seams', back: 'Back', front: 'Front', rows: easeOf(back, front) })
    .lines[0];

const shoulders = (back: number, front: number) =>
  saysStep({
    id: 'shoulders',
    kind: 'shoulders',
    back: 'Back',
    front: 'Front',
    stitches: easeOf(back, front),
    seams: 2,
    how: 'sewn',
  }).lines[0];

describe('edges of different length', () => {
  it('are eased where one more now and then does it', () => {
    expect(side(104, 100)).toBe(
      '104 rows on the Back, 100 on the Front: take one more of the longer edge after every 25.',
    );
    expect(side(100, 100)).toContain('row to row');
  });

  it('are said not to match where it would be every stitch or every second one', () => {
    expect(side(100, 164)).toContain('100 on the one, 164 on the other: these do not match.');
    expect(shoulders(20, 42)).toContain('20 on the one, 42 on the other: these do not match.');
    expect(shoulders(30, 40)).toContain('take one more of the longer edge after every 3');
  });
});
