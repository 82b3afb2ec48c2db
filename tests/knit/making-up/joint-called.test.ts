import { describe, expect, it } from 'vitest';
import type { Joint, Stretch } from '../../../src/knit/making-up/joint.ts';
import { jointCalled } from '../../../src/knit/making-up/joint-called.ts';

const stretch = (piece: string, more: Partial<Stretch> = {}): Stretch => ({
  piece,
  part: `${piece} part`,
  make: 1,
  edge: 'left',
  ...more,
});

const seam = {
  kind: 'seam',
  of: 'side',
  how: 'mattress',
  a: [stretch('Back', { sections: ['Hem', 'Body'] })],
  b: [stretch('Front')],
} as const satisfies Joint;
const pickUp = {
  kind: 'pick up',
  piece: 'Band',
  make: 1,
  along: [
    { line: [stretch('Back')], stitches: 20 },
    { line: [stretch('Front', { sections: ['Neck'] })], stitches: 30 },
  ],
} as const satisfies Joint;
const free = { kind: 'left free', line: [stretch('Back')], as: 'hem' } as const satisfies Joint;

describe('a joint whose pieces are called otherwise', () => {
  const louder = {
    piece: (name: string) => `P ${name}`,
    part: (name: string) => `Q ${name}`,
    section: (name: string) => `S ${name}`,
  };
  const loud = (piece: string, more: Partial<Stretch> = {}) => ({
    ...stretch(piece),
    piece: `P ${piece}`,
    part: `Q ${piece} part`,
    ...more,
  });

  it('has the new names at each of its stretches, and nothing else is changed', () => {
    expect(jointCalled(seam, louder)).toEqual({
      ...seam,
      a: [loud('Back', { sections: ['S Hem', 'S Body'] })],
      b: [loud('Front')],
    });
    expect(jointCalled(pickUp, louder)).toEqual({
      ...pickUp,
      piece: 'P Band',
      along: [
        { line: [loud('Back')], stitches: 20 },
        { line: [loud('Front', { sections: ['S Neck'] })], stitches: 30 },
      ],
    });
    expect(jointCalled(free, louder)).toEqual({ ...free, line: [loud('Back')] });
  });
});
