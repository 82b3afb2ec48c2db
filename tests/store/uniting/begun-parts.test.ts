import { describe, expect, it } from 'vitest';
import type { PieceRecord } from '../../../src/store/records.ts';
import { recordOf } from '../../../src/store/uniting/record-of-state.ts';
import { type GarmentState, unitedStates } from '../../../src/store/uniting/state.ts';
import { scarf } from '../scenario.ts';

const AT = (n: number): string => `00000000${n}.00000.aa`;
const { garment } = scarf();
const [long] = garment.pieces as [PieceRecord];

/** The scarf's piece under a name and with so many parts. */
const called = (name: string, parts: number): PieceRecord => {
  const [part] = long.recipe.parts;
  const named = Array.from({ length: parts }, (_, i) => ({ ...part, name: `${i}` }));
  return { ...long, recipe: { ...long.recipe, name, parts: named } } as PieceRecord;
};

/** A device that has these versions of the piece, and has heard of all up to a stamp. */
const device = (heard: number, ...versions: readonly [at: number, piece: PieceRecord][]): GarmentState => ({
  parts: new Map([
    [`pieces/${long.id}`, new Map(versions.map(([at, piece]) => [AT(at), { pieces: [piece] }]))],
  ]),
  seen: new Map([['aa', AT(heard)]]),
  gone: new Map(),
  photosGone: new Map(),
  order: new Map(),
});

const begun = () => ({ makes: 1, parts: 2 });

/** The names that the piece has once both are one, and the parts that it is knitted in. */
const shown = (one: GarmentState, other: GarmentState) =>
  recordOf(unitedStates(one, other, begun), { ...garment, id: 'scarf' }, begun).pieces.map(({ recipe }) => [
    recipe.name,
    recipe.parts.length,
  ]);

describe('a piece whose second part is on the needles, changed by a device that knew of no second part', () => {
  const changed = device(4, [4, called('Stole', 1)]);

  it('is the latest of those that have that part, whichever of them came first', () => {
    const early = called('Early', 2);
    const late = called('Late', 2);
    expect(shown(device(3, [1, early], [3, late]), changed)).toEqual([['Late', 2]]);
    expect(shown(device(3, [3, late], [1, early]), changed)).toEqual([['Late', 2]]);
    expect(shown(changed, device(3, [1, early], [3, late]))).toEqual([['Late', 2]]);
  });

  it('is not one that is later and has it no more', () => {
    expect(shown(device(3, [1, called('Early', 2)], [3, called('Cut', 1)]), changed)).toEqual([['Early', 2]]);
  });

  it('is as it was changed, once that has the part as well', () => {
    expect(shown(device(3, [3, called('Late', 2)]), device(4, [4, called('Stole', 3)]))).toEqual([
      ['Stole', 3],
    ]);
  });
});
