import { describe, expect, it } from 'vitest';
import type { Joint, Stretch } from '../../../src/knit/making-up/joint.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { PieceRole, Recipe, Section } from '../../../src/knit/piece/recipe.ts';
import { rowsBeside, stripedThrough } from '../../../src/knit/yarn/striped-through.ts';
import { given } from '../../store/scenario.ts';

/*
 * Small garments whose rows are counted by hand. Row 1 of the stripes lies on the first row above the rib of the piece that
 * comes first; what is sewn to it has the same colour row by row.
 */

type Stretches = readonly (readonly [rows: number, fabric: 'rib 1x1' | 'stocking' | 'garter'])[];

const sections = (of: Stretches): Section[] =>
  of.map(([rows, fabric], i) => ({ name: `s${i}`, rows, fabric, needle: 4, shaping: [] }));

const piece = (name: string, role: PieceRole, of: Stretches, castOn = 20): Recipe => ({
  name,
  makes: 1,
  role,
  parts: [{ name, from: { castOn }, sections: sections(of), end: 'bind off' }],
});

const edge = (name: string, at: 'left' | 'right', over: Partial<Stretch> = {}): Stretch => ({
  piece: name,
  make: 1,
  part: name,
  edge: at,
  ...over,
});
const seam = (of: 'side' | 'sleeve' | 'raglan' | 'shoulder' | 'other', a: Stretch, b: Stretch): Joint => ({
  kind: 'seam',
  of,
  how: 'mattress',
  a: [a],
  b: [b],
});

const striped = (pieces: readonly Recipe[], joints: readonly Joint[] = []) =>
  Object.fromEntries(stripedThrough(given(asPlanned({ name: 'any', pieces, joints }))));

const back = piece('Back', 'back', [
  [6, 'rib 1x1'],
  [20, 'stocking'],
]);
const front = piece('Front', 'front', [
  [4, 'rib 1x1'],
  [22, 'stocking'],
]);
const side = (over: Partial<Stretch> = {}) =>
  seam('side', edge('Back', 'left'), edge('Front', 'right', over));

describe('stripes laid through a garment', () => {
  it('begin with the first row above the rib of a piece that is sewn to none', () => {
    const alone = (of: Recipe): Recipe => ({ ...of, role: 'other' });
    expect(striped([alone(back), alone(front)])).toMatchObject({
      Back: { first: 7, at: 1 },
      Front: { first: 5, at: 1 },
    });
  });

  it('go on across a side seam row by row, whichever of the two pieces comes first', () => {
    // row 7 of either is row 1 of the stripes: the front begins two rows below it
    expect(striped([back, front], [side()])).toMatchObject({
      Back: { first: 7, at: 1 },
      Front: { first: 5, at: -1 },
    });
    // row 5 of either is row 1: the back begins with row 3 of the stripes
    expect(striped([front, back], [side()])).toMatchObject({
      Front: { first: 5, at: 1 },
      Back: { first: 7, at: 3 },
    });
    for (const { back: isBack } of Object.values(striped([back, front], [side()])))
      expect(isBack).toBeUndefined();
  });

  it('run backwards on a piece that is knitted from the other end', () => {
    const rows = 26;
    const turned = [side({ reversed: true })];
    // its row 5 lies beside row 22 (26 + 1 − 5), which is row 16 of the stripes
    const found = striped([back, front], turned);
    expect(found).toMatchObject({ Back: { at: 1 }, Front: { first: 5, at: rows + 1 - 5 - 6, back: true } });
    // its row 7 lies beside row 20 of the front, which is row 16 of the front's stripes
    expect(striped([front, back], turned)).toMatchObject({
      Back: { first: 7, at: rows + 1 - 7 - 4, back: true },
    });
  });

  it('go on along a raglan too, and over several seams, each the right way', () => {
    const sleeve = piece('Sleeve', 'sleeve', [
      [2, 'rib 1x1'],
      [24, 'stocking'],
    ]);
    const raglan = (over: Partial<Stretch> = {}) =>
      seam('raglan', edge('Front', 'left'), edge('Sleeve', 'right', over));
    // row 7 of each is row 1 of the stripes; the sleeve begins with row 3, which is row −3
    expect(striped([back, front, sleeve], [raglan(), side()])).toMatchObject({
      Sleeve: { first: 3, at: -3 },
    });
    // turned twice it runs upwards again
    const twice = [side({ reversed: true }), raglan({ reversed: true })];
    expect(striped([back, front, sleeve], twice)).toMatchObject({
      Front: { back: true },
      Sleeve: { first: 3, at: -3 },
    });
    expect(striped([back, front, sleeve], twice).Sleeve).not.toHaveProperty('back');
  });

  it('do not go on where rows do not lie beside rows: an uneven seam, a shoulder, anything sewn on', () => {
    const longer = piece('Front', 'front', [
      [4, 'rib 1x1'],
      [24, 'stocking'],
    ]);
    expect(striped([back, longer], [side()])).toMatchObject({ Front: { first: 5, at: 1 } });
    for (const of of ['shoulder', 'other'] as const) {
      const pocket = piece('Pocket', 'other', [
        [4, 'rib 1x1'],
        [10, 'stocking'],
      ]);
      const joints = [side(), seam(of, edge('Pocket', 'left'), edge('Back', 'right'))];
      expect(striped([back, front, pocket], joints)).toMatchObject({ Pocket: { first: 5, at: 1 } });
    }
  });

  it('meet the body at the underarm: the last row of a sleeve’s own seam lies beside the last of the side seam', () => {
    const sleeve = piece('Sleeve', 'sleeve', [
      [4, 'rib 1x1'],
      [30, 'stocking'],
    ]);
    const own = seam('sleeve', edge('Sleeve', 'left'), edge('Sleeve', 'right'));
    // the last row of the back, 26, is row 20 of the stripes; so is row 34 of the sleeve, and row 5 is 29 rows before
    expect(striped([back, front, sleeve], [side(), own])).toMatchObject({
      Sleeve: { first: 5, at: 20 - 29 },
    });
    // without a side seam there is no underarm
    expect(striped([back, front, sleeve], [own])).toMatchObject({ Sleeve: { first: 5, at: 1 } });
    const down = seam(
      'sleeve',
      edge('Sleeve', 'left', { reversed: true }),
      edge('Sleeve', 'right', { reversed: true }),
    );
    // knitted from the top down: its row 1 lies at the underarm, row 5 four rows below it
    expect(striped([back, front, sleeve], [side(), down])).toMatchObject({
      Sleeve: { first: 5, at: 20 - 4, back: true },
    });
  });

  it('lie between the borders of a piece, be these at its beginning or at its end', () => {
    const of = (...stretches: Stretches) => striped([piece('Back', 'back', stretches)]).Back;
    expect(of([6, 'rib 1x1'], [20, 'stocking'], [4, 'rib 1x1'])).toMatchObject({ first: 7, last: 26, at: 1 });
    expect(of([20, 'stocking'], [4, 'garter'])).toMatchObject({ first: 1, last: 20, at: 1 });
    expect(of([0, 'stocking'], [4, 'rib 1x1'], [20, 'stocking'], [4, 'rib 1x1'])).toMatchObject({
      first: 5,
      last: 24,
      at: 1,
    });
    // a single row counts, one without rows does not, and what lies between is striped with the rest
    expect(of([1, 'stocking'], [4, 'rib 1x1'], [20, 'stocking'])).toMatchObject({ first: 1, at: 1 });
    expect(
      of([4, 'rib 1x1'], [20, 'stocking'], [1, 'garter'], [1, 'stocking'], [3, 'rib 1x1']),
    ).toMatchObject({
      first: 5,
      last: 26,
    });
    expect(of([20, 'stocking'])).toMatchObject({ first: 1, at: 1 });
  });

  it('know a border by what most stitches of the garment are, not most of the piece', () => {
    const cuff = piece('Sleeve', 'sleeve', [
      [30, 'rib 1x1'],
      [10, 'stocking'],
    ]);
    expect(striped([back, front, cuff])).toMatchObject({ Sleeve: { first: 31 } });
    expect(striped([cuff])).toMatchObject({ Sleeve: { first: 1, last: 30 } });
    // as many rows of either: the wider one has more stitches
    const wide = piece('Wide', 'back', [[20, 'garter']], 60);
    const narrow = piece('Narrow', 'front', [
      [10, 'garter'],
      [40, 'stocking'],
    ]);
    expect(striped([narrow, wide])).toMatchObject({ Narrow: { first: 1, last: 10 } });
  });

  it('begin with the first row of a piece that has nothing of the fabric of the garment', () => {
    const pocket = piece('Pocket', 'other', [[10, 'garter']], 10);
    expect(striped([back, front, pocket], [side()])).toMatchObject({ Pocket: { first: 1, at: 1 } });
  });

  it('begin with the first row of a piece of which nothing is planned', () => {
    const pieces = [{ recipe: back, makes: [] }];
    expect(Object.fromEntries(stripedThrough({ name: 'any', pieces }))).toEqual({
      Back: { first: 1, at: 1 },
    });
  });

  it('are on no band', () => {
    const bands = (['neckband', 'front band', 'armhole band'] as const).map((role) =>
      piece(role, role, [[8, 'stocking']]),
    );
    expect(Object.keys(striped([back, ...bands, front]))).toEqual(['Back', 'Front']);
  });
});

describe('the pieces that go on with one, and how many more rows they have up to what lies beside it', () => {
  const own = (over: Partial<Stretch> = {}) =>
    seam('sleeve', edge('Sleeve', 'left', over), edge('Sleeve', 'right', over));
  const sleeve = piece('Sleeve', 'sleeve', [[34, 'stocking']]);
  const beside = (name: string, ...joints: readonly Joint[]) =>
    Object.fromEntries(
      [...rowsBeside(given(asPlanned({ name: 'any', pieces: [back, front, sleeve], joints })), name)].map(
        ([other, rows]) => [other, rows + 0],
      ),
    );

  it('are those along its seams, and the sleeve by what it is longer up to the underarm; never itself', () => {
    // row 34 of the sleeve lies beside row 26 of the body
    expect(beside('Back', side(), own())).toEqual({ Front: 0, Sleeve: 8 });
    expect(beside('Sleeve', side(), own())).toEqual({ Back: -8, Front: -8 });
    expect(beside('Sleeve', own())).toEqual({});
  });

  it('are not those that are knitted the other way round', () => {
    expect(beside('Back', side({ reversed: true }), own({ reversed: true }))).toEqual({});
  });
});
