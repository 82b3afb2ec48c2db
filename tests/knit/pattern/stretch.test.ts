import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { restretch } from '../../../src/knit/pattern/stretch.ts';
import { canEndHere, stretchAt } from '../../../src/knit/pattern/stretch-at.ts';
import { told } from '../../told.ts';

const text = `BACK
Cast on 40 sts.
Work in k2, p2 rib for 4 rows.
Work in st st until piece measures 30 cm, ending with a WS row.
BO 3 sts at beg of next 2 rows.
Dec 1 st at each end of every RS row 4 times.
BO.`;

function open() {
  const [piece] = readPattern(text).pieces;
  if (!piece?.plan.ok) throw new Error('not a plan');
  const planned = piece.plan.value.parts[0];
  if (!planned) throw new Error('no part');
  return planned;
}

/** At the end of the open stretch, all six rows worked. */
function wishAtEnd() {
  const planned = open();
  const stretch = stretchAt(planned, 6);
  if (!stretch) throw new Error('no stretch');
  return { text, options: {}, piece: 0, part: 0, stretch, parts: [planned], worked: 6 };
}

describe('a stretch given as a length', () => {
  it('is known while she is in it, and at its end, and nowhere else', () => {
    const part = open();
    expect(stretchAt(part, 2)).toBeUndefined();
    expect(stretchAt(part, 4)).toMatchObject({
      id: 'back/1',
      mm: 300,
      open: true,
      endSide: 'WS',
      worked: 0,
    });
    expect(stretchAt(part, 6)).toMatchObject({ worked: 2, left: 0 });
    expect(stretchAt(part, 7)).toBeUndefined();
  });

  it('can end only where the next row begins on the side that was planned for it', () => {
    const wish = wishAtEnd();
    const longer = restretch({ ...wish, rows: 8 });
    const part = longer.ok ? longer.value[0] : undefined;
    const ends = [4, 5, 6, 7, 8].map((worked) => {
      const stretch = part && stretchAt(part, worked);
      return stretch !== undefined && canEndHere(stretch);
    });
    // none is worked yet, or an odd number is left
    expect(ends).toEqual([false, false, true, false, true]);
  });

  it('grows two rows at a time until it is long enough; what follows stays as it was', () => {
    const wish = wishAtEnd();
    const longer = restretch({ ...wish, rows: 84 });
    if (!longer.ok) throw new Error(told(longer.faults));
    const part = longer.value[0];
    const before = wish.parts[0]?.rows ?? [];
    expect(part?.rows.slice(0, 6)).toEqual(before.slice(0, 6));
    expect(part?.rows.length).toBe(before.length + 82);
    const tail = (rows: typeof before) =>
      rows.slice(-11).map(({ side, steps, after }) => ({ side, steps, after }));
    expect(tail(part?.rows ?? [])).toEqual(tail(before));
    expect(part && stretchAt(part, 6)).toMatchObject({ worked: 2, left: 82 });
  });

  it('ends where she says so, but not before the rows that she has worked, nor on the other side', () => {
    const wish = wishAtEnd();
    const code = (rows: number) => {
      const done = restretch({ ...wish, rows });
      return done.ok ? 'done' : done.faults[0]?.code;
    };
    expect(code(2)).toBe('done');
    expect(code(0)).toBe('rows already worked');
    expect(code(5)).toBe('side of the last row');
  });
});
