import { describe, expect, it } from 'vitest';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { PartRecipe, Recipe, Section } from '../../../src/knit/piece/recipe.ts';
import { stripedThrough } from '../../../src/knit/yarn/striped-through.ts';
import type { StripesOf } from '../../../src/knit/yarn/stripes.ts';
import { type Identified, stripesAgain } from '../../../src/knit/yarn/stripes-again.ts';

const section = (name: string, rows: number, fabric: Section['fabric'] = 'garter'): Section => ({
  name,
  rows,
  fabric,
  needle: 4,
  shaping: [],
});

const straight = (name: string, stitches: number, sections: readonly Section[]): Recipe => {
  const part: PartRecipe = { name, from: { castOn: stitches }, sections, end: 'bind off' };
  return { name, makes: name === 'Sleeve' ? 2 : 1, parts: [part] };
};

/** Back and sleeves with a rib, of so many rows of rib and of garter. */
const garment = (rib: number, body: number, sleeve: number, ids = ['b', 's']): Identified => {
  const pieces = [
    straight('Back', 40, [section('rib', rib, 'rib 1x1'), section('body', body)]),
    straight('Sleeve', 20, [section('cuff', rib, 'rib 1x1'), section('sleeve', sleeve)]),
  ];
  const planned = asPlanned({ name: 'g', pieces });
  if (!planned.ok) throw new Error(JSON.stringify(planned.faults));
  return { garment: planned.value, ids };
};

const stripes = [
  { colour: 'woad', rows: 2 },
  { colour: 'sand', rows: 4 },
];
const was = garment(10, 60, 50);
const asThey = (of: StripesOf, now: Identified) =>
  stripesAgain(of, was, now, (id) => ({ b2: 'b', s2: 's' })[id]);
const larger = garment(14, 80, 20, ['b2', 's2']);

describe('the stripes of a garment in another size', () => {
  it('keep the rows of each colour, and are laid through it where they lay through the other', () => {
    const lies = stripedThrough(was.garment);
    const striped = { b: lies.get('Back'), s: lies.get('Sleeve') } as NonNullable<StripesOf['striped']>;
    expect(striped.b).toEqual({ first: 11, at: 1 });
    expect(asThey({ stripes, striped }, larger)).toEqual({
      stripes,
      striped: { b2: { first: 15, at: 1 }, s2: stripedThrough(larger.garment).get('Sleeve') },
      lost: [],
    });
  });

  it('are hers where they differ in one thing from where they would lie: another stripe, an end, or the other way round', () => {
    const through = { first: 11, at: 1 };
    expect(stripedThrough(was.garment).get('Back')).toEqual(through);
    for (const [own, again] of [
      [
        { ...through, at: 3 },
        { first: 15, at: 3 },
      ],
      [
        { ...through, last: 70 },
        { first: 15, last: 94, at: 1 },
      ],
      [
        { ...through, back: true },
        { first: 15, at: 1, back: true },
      ],
      [
        { ...through, first: 12 },
        { first: 16, at: 1 },
      ],
    ] as const)
      expect(asThey({ stripes, striped: { b: own } }, larger).striped?.b2, JSON.stringify(own)).toEqual(
        again,
      );
  });

  it('begin and end in the same sections where she chose their rows, as many rows into them', () => {
    // the 5th to the last of the body's rows; from the cuff's 3rd to the 10th of the sleeve's
    const striped = { b: { first: 15, last: 70, at: 3 }, s: { first: 3, last: 20, at: 1 } };
    expect(asThey({ stripes, striped }, larger).striped).toEqual({
      b2: { first: 19, last: 94, at: 3 },
      s2: { first: 3, last: 24, at: 1 },
    });
    // the sleeve has four rows above its cuff: they end with them
    expect(asThey({ striped }, garment(14, 80, 4, ['b2', 's2'])).striped?.s2).toEqual({
      first: 3,
      last: 18,
      at: 1,
    });
  });

  it('that she changed from a row on are changed as far into that section, in the same copy', () => {
    const one = { part: 0, at: 2, stripes: [{ colour: 'madder', rows: 6 }] };
    const restriped = [
      { ...one, piece: 'b', make: 1, row: 31 },
      { ...one, piece: 's', make: 2, row: 12 },
    ];
    expect(asThey({ restriped }, larger)).toEqual({
      restriped: [
        { ...one, piece: 'b2', make: 1, row: 35 },
        { ...one, piece: 's2', make: 2, row: 16 },
      ],
      lost: [],
    });
  });

  it('are said to be lost by piece and row where the section has no such row', () => {
    const restriped = [
      { piece: 's', make: 1, part: 0, row: 41, at: 1, stripes },
      { piece: 'b', make: 1, part: 0, row: 41, at: 1, stripes },
    ];
    const striped = { b: { first: 1, at: 1 }, s: { first: 31, at: 1 } };
    const found = asThey({ striped, restriped }, larger);
    expect(found.lost).toEqual([
      { piece: 'Sleeve', row: 31 },
      { piece: 'Sleeve', row: 41 },
    ]);
    expect(found.striped).toEqual({ b2: { first: 1, at: 1 } });
    expect(found.restriped).toMatchObject([{ piece: 'b2', row: 45 }]);
  });

  it('stay where they begin anew with each part, and of a piece that is none of the other there are none', () => {
    expect(asThey({ stripes }, larger)).toEqual({ stripes, lost: [] });
    const striped = { b: { first: 1, at: 1 } };
    expect(stripesAgain({ stripes, striped }, was, larger, () => undefined)).toEqual({
      stripes,
      striped: {},
      lost: [],
    });
  });
});
