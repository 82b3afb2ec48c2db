import { describe, expect, it } from 'vitest';
import type { Told } from '../../../src/knit/making-up/told.ts';
import type { Said } from '../../../src/knit/written/making-up-sentences.ts';
import { seamsIn, toldBy } from '../../../src/knit/written/told-by.ts';

/** What sentences of the making up tell, each by its key and its figures: what stands behind a title is of that seam, and the first word holds. */
const say = (key: string, values: object = {}): Said => ({ key, values }) as unknown as Said;
const edges = (first: number, second: number) => say('said edges', { first, second });
const told = (...said: readonly Said[]): Omit<Told, 'seams'> => {
  const { seams: _seams, ...rest } = toldBy(said, {});
  return rest;
};

describe('what sentences tell of the making up', () => {
  it.each<[string, readonly Said[], Omit<Told, 'seams'>]>([
    [
      'of both shoulders',
      [say('title both shoulders'), edges(30, 28)],
      { shoulder: { back: 30, front: 28 } },
    ],
    ['of one shoulder', [say('title one shoulder'), edges(30, 28)], { shoulder: { back: 30, front: 28 } }],
    ['of the sides', [say('title side'), edges(60, 62)], { side: { back: 60, front: 62 } }],
    ['of the sleeve', [say('title sleeve'), edges(40, 40)], { sleeveRows: 40 }],
    [
      'that edges are far off is told all the same',
      [say('title side'), say('said edges far off', { first: 60, second: 90 })],
      { side: { back: 60, front: 90 } },
    ],
    ['nothing of figures behind no title', [edges(60, 62)], {}],
    ['nothing of figures behind another', [say('title set in'), edges(60, 62)], {}],
    [
      'of each title its own',
      [say('title side'), edges(60, 62), say('title sleeve'), edges(40, 41)],
      { side: { back: 60, front: 62 }, sleeveRows: 40 },
    ],
    [
      'the first word, not the second',
      [say('title side'), edges(60, 62), edges(1, 2)],
      { side: { back: 60, front: 62 } },
    ],
    [
      'the way of the shoulders',
      [say('title both shoulders'), say('way mattress')],
      { shoulderWay: 'mattress' } as Omit<Told, 'seams'>,
    ],
    ['and of no other seam', [say('title side'), say('way mattress')], {}],
    ['rows at the underarm', [say('said indent', { rows: 5 })], { indentRows: 5 }],
    [
      'none where the sleeve has its own',
      [say('said underarm'), say('said indent', { rows: 5 })],
      { indentRows: 0 },
    ],
    [
      'a sleeve’s edge and its armhole',
      [say('said top and armhole', { width: 400, height: 390 })],
      { top: { sleeveMm: 400, armholeMm: 390 } },
    ],
    [
      'the same, eased in',
      [say('said top eased in', { width: 410, height: 390 })],
      { top: { sleeveMm: 410, armholeMm: 390 } },
    ],
    ['an opening of the back', [say('loop back', { rows: 12 })], { opening: { of: 'back', rows: 12 } }],
    [
      'of a raglan',
      [say('loop raglan', { rows: 8 }), say('loop back', { rows: 12 })],
      { opening: { of: 'raglan', rows: 8 } },
    ],
    ['nothing else', [say('said nothing of the kind', { rows: 8 })], {}],
  ])('%s', (_, said, wanted) => {
    expect(told(...said)).toEqual(wanted);
  });

  it('the shares of bands, each by its name', () => {
    const { shares } = told(
      say('title band', { band: 'neckband' }),
      say('said share', { percent: 90 }),
      say('title band', { band: 'left band' }),
      say('said share', { percent: 95 }),
    );
    expect([...(shares ?? [])]).toEqual([
      ['neckband', 90],
      ['left band', 95],
    ]);
  });

  it('a share behind no title is of a band without a name', () => {
    expect([...(told(say('said share', { percent: 90 })).shares ?? [])]).toEqual([['', 90]]);
    const behindNone = [say('title band'), say('said share', { percent: 90 })];
    expect([...(told(...behindNone).shares ?? [])]).toEqual([['', 90]]);
  });

  it('which seams are named, by a title or plainly', () => {
    const said = ['both shoulders', 'one line', 'raglan', 'set in', 'side', 'sleeve', 'neck'].map((title) =>
      say(`title ${title}`),
    );
    expect(seamsIn(said)).toEqual(['shoulder', 'raglan', 'raglan', 'armhole', 'side', 'sleeve']);
    expect(seamsIn([say('plain', { seam: 'side' }), say('way mattress')])).toEqual(['side']);
    expect(toldBy([say('plain', { seam: 'side' })], { leftFirst: true, topDown: true })).toEqual({
      seams: new Set(['side']),
      leftFirst: true,
      topDown: true,
    });
  });
});
