import { describe, expect, it } from 'vitest';
import { type Finger, isTap } from '../../src/ui/pad/finger.ts';

/** Common practice, no published source: how far and how long a thumb may rest and still mean a tap. */
describe('a finger', () => {
  const down: Finger = { x: 100, y: 700, at: 1000 };
  const lifted = (change: Partial<Finger>): boolean => isTap(down, { ...down, at: 1080, ...change });

  it('that is lifted where it came down has tapped', () => {
    expect(lifted({})).toBe(true);
    expect(lifted({ x: 104, y: 692 })).toBe(true);
  });

  it('that has moved or rested has not', () => {
    expect(lifted({ y: 670 })).toBe(false);
    expect(lifted({ x: 108, y: 708 })).toBe(false);
    expect(lifted({ at: 1900 })).toBe(false);
  });
});
