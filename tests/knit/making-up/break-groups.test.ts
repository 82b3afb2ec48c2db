import { describe, expect, it } from 'vitest';
import type { Break, Consequence } from '../../../src/knit/making-up/break.ts';
import {
  atOnce,
  changedBy,
  type Group,
  isCounted,
  longerBy,
  offBy,
  together,
} from '../../../src/knit/making-up/break-groups.ts';
import { alike } from '../../../src/knit/making-up/consequences.ts';

/* What a change breaks, in figures that can be reckoned in the head. */

type Seam = Extract<Consequence, { kind: 'seam' }>;
type Level = Extract<Consequence, { kind: 'level' }>;

const apart = { piece: 'Back', to: 'Front', was: 40, now: 44, other: 40, longerMm: 12 };
const seam = (more: Partial<Seam> = {}): Seam => ({
  ...apart,
  kind: 'seam',
  of: 'side',
  unit: 'rows',
  ...more,
});
const level = (more: Partial<Level> = {}): Level => ({
  ...apart,
  kind: 'level',
  of: 'above the underarm',
  ...more,
});
const pickUp = (band: string): Consequence => ({
  kind: 'pick up',
  band,
  along: 0,
  stitches: 20,
  fit: 24,
  longerMm: 12,
});
const pair: Consequence = { kind: 'pair', piece: 'Sleeve', was: 60, now: 64, other: 60 };
const unjoined: Consequence = { kind: 'unjoined', piece: 'Pocket', make: 1 };

/** A line of a piece, as long and as high as is said. */
const line = (piece: string, mm: number, rows = 0) => ({ laid: [{ stretch: { piece } }], mm, rows });

const broken = (what: Consequence, more: object = {}): Break =>
  ({ key: JSON.stringify(what), what, ...more }) as Break;

const names = (groups: readonly Group[]) => groups.map((group) => group.map(({ what }) => what));

describe('rows or stitches that an edge is off by', () => {
  it('are counted where a seam is held to them, and where two edges lie beside each other', () => {
    expect(isCounted(broken(level()))).toBe(true);
    expect(isCounted(broken(seam()))).toBe(true);
    expect(isCounted(broken(seam({ of: 'shoulder', unit: 'stitches' })))).toBe(true);
    // what curves is held to its length, what is picked up to its room
    expect(isCounted(broken(seam({ of: 'armhole', unit: 'mm' })))).toBe(false);
    expect(isCounted(broken(pickUp('Collar')))).toBe(false);
    expect(isCounted(broken(pair))).toBe(false);
    expect(isCounted(broken(unjoined))).toBe(false);
  });

  it('are those between the changed edge and its other, either way', () => {
    expect(offBy(broken(seam()))).toBe(4);
    expect(offBy(broken(seam({ now: 37 })))).toBe(3);
    expect(offBy(broken(pickUp('Collar')))).toBe(0);
  });

  it('are, of two that lie beside each other, what the first has more than it is meant to have', () => {
    const lines = [line('Back', 0, 50), line('Front', 0, 42)];
    expect(offBy(broken(level(), { worked: { lines } }))).toBe(8);
    expect(offBy(broken(level(), { worked: { lines }, meant: 6 }))).toBe(2);
    expect(offBy(broken(level(), { worked: { lines }, meant: 11 }))).toBe(3);
  });
});

describe('how much longer an edge is', () => {
  it('is what it is longer than its other, where none of it is eased in', () => {
    expect(longerBy(broken(seam()))).toBe(12);
    expect(longerBy(broken(level()))).toBe(0);
    expect(longerBy(undefined)).toBe(0);
  });

  it('leaves out the ease that the other is meant to have', () => {
    // a cap of 420 mm over an armhole of 400 mm with 4 %: 416 mm would be right
    const worked = {
      joint: { kind: 'seam', of: 'armhole', ease: 4 },
      lines: [line('Sleeve', 420), line('Back', 400)],
    };
    expect(longerBy(broken(seam({ piece: 'Sleeve', longerMm: 20 }), { worked }))).toBeCloseTo(4, 9);
    // as the armhole has it, it is too short by as much
    expect(longerBy(broken(seam({ piece: 'Back', longerMm: -20 }), { worked }))).toBeCloseTo(-4, 9);
  });
});

describe('breaks that are mended by one and the same', () => {
  it('are those of one band, and of both armholes that are too long for their sleeves', () => {
    const armhole = (sleeve: string, mm: number, piece: string) =>
      broken(seam({ of: 'armhole', unit: 'mm', piece, longerMm: mm - 400 }), {
        worked: { lines: [line(sleeve, mm), line(piece, 400)] },
      });
    const [one, other] = [armhole('Sleeve', 410, 'Back'), armhole('Sleeve', 410, 'Front')];
    const short = armhole('Sleeve', 390, 'Back');
    const another = armhole('Second sleeve', 410, 'Back 2');
    expect(names(together([one, short, another, other]))).toEqual([
      [one.what, other.what],
      [short.what],
      [another.what],
    ]);
    const [neck, edge, cuff] = [pickUp('Band'), { ...pickUp('Band'), along: 1 }, pickUp('Cuff')];
    expect(names(together([neck, cuff, edge].map((what) => broken(what))))).toEqual([[neck, edge], [cuff]]);
  });

  it('come in the order in which they hang on each other: rows beside each other, counts, lengths, bands', () => {
    const length = seam({ of: 'armhole', unit: 'mm' });
    const order = [level(), seam(), length, pickUp('Collar')];
    for (const some of [order, [...order].reverse()])
      expect(names(together(some.map((what) => broken(what)))).flat()).toEqual(order);
    // what is worn as a pair is counted too: before lengths
    expect(names(together([broken(length), broken(pair)])).flat()).toEqual([pair, length]);
  });

  it('are said to be of the piece that was changed', () => {
    expect(changedBy(seam())).toBe('Back');
    expect(changedBy(level({ piece: 'Front' }))).toBe('Front');
    expect(changedBy(pickUp('Collar'))).toBeUndefined();
    expect(changedBy(pair)).toBeUndefined();
  });
});

describe('a body that is no longer level', () => {
  const groups = (...of: readonly Consequence[]): Group[] => of.map((what) => [broken(what)]);
  const armhole = seam({ of: 'armhole', unit: 'mm' });

  it('is mended with its armholes in one, before all else', () => {
    const found = atOnce(groups(seam(), level(), pickUp('Collar'), armhole));
    expect(found.map(names).map((some) => some.flat())).toEqual([
      [level(), armhole],
      [seam()],
      [pickUp('Collar')],
    ]);
  });

  it('is none where only the bands over it, or its armholes alone, are off', () => {
    for (const some of [
      [seam(), armhole],
      [armhole, level({ of: 'bands' })],
    ])
      expect(
        atOnce(groups(...some))
          .map(names)
          .map((one) => one.flat()),
      ).toEqual(some.map((one) => [one]));
  });
});

describe('an eased edge along two pieces', () => {
  // 100 mm, a tenth eased into 90 are 99 mm: 1 mm longer than it is meant to be; from the other side 1 mm shorter
  const eased = (changed: string) => {
    const [a, b] = [
      { laid: [{ stretch: { piece: 'Back' } }, { stretch: { piece: 'Front' } }], mm: 100, rows: 0 },
      line('Sleeve', 90),
    ];
    const joint = { kind: 'seam', of: 'armhole', ease: 10 };
    return longerBy(broken(seam({ piece: changed }), { worked: { joint, lines: [a, b] } }));
  };

  it('is longer by what is over on its side, whichever of the two was changed', () => {
    expect(eased('Back')).toBeCloseTo(1, 6);
    expect(eased('Front')).toBeCloseTo(1, 6);
    expect(eased('Sleeve')).toBeCloseTo(-1, 6);
  });
});

describe('breaks that are said in one sentence', () => {
  const said = (...of: readonly Consequence[]): number => alike(of.map((what) => broken(what))).length;

  it('are both sides of a body, though a row apart; not one that is too long and one too short by as much', () => {
    expect(said(level({ was: 10, now: 14, other: 10 }), level({ was: 11, now: 15, other: 10 }))).toBe(1);
    expect(said(level({ was: 10, now: 14, other: 10 }), level({ was: 10, now: 14, other: 18 }))).toBe(2);
    expect(said(level({ was: 10, now: 14 }), level({ was: 10, now: 16 }))).toBe(2);
    expect(said(level(), level({ piece: 'Front', to: 'Back' }), level({ of: 'bands' }))).toBe(3);
  });

  it('are shoulders by their stitches and armholes by whether they are too long', () => {
    const shoulder = { of: 'shoulder', unit: 'stitches' } as const;
    expect(said(seam({ ...shoulder, longerMm: 12 }), seam({ ...shoulder, longerMm: 14 }))).toBe(1);
    expect(said(seam({ ...shoulder, now: 44 }), seam({ ...shoulder, now: 45 }))).toBe(2);
    const armhole = { of: 'armhole', unit: 'mm' } as const;
    expect(said(seam({ ...armhole, longerMm: 12 }), seam({ ...armhole, now: 46, longerMm: 18 }))).toBe(1);
    expect(said(seam({ ...armhole, longerMm: 12 }), seam({ ...armhole, longerMm: -12 }))).toBe(2);
    expect(said(seam({ longerMm: 12 }), seam({ longerMm: 15 }))).toBe(2);
  });
});
