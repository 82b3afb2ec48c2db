import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contentHash } from '../../../src/store/content-hash.ts';
import { assembled, partsOf, pieceIn, sameParts } from '../../../src/store/uniting/parts.ts';
import { anyGarment } from '../../arbitraries/any-garment.ts';
import { scarf } from '../scenario.ts';

describe('a garment taken apart', () => {
  it('has each piece, tick, weight, yarn and text by a name of its own, everything else by its field', () => {
    const { garment } = scarf();
    const parts = partsOf({
      ...garment,
      notes: 'soft',
      ticked: ['block', 'weave in'],
      taken: [{ piece: 'long', make: 2, grams: 40 }],
      texts: { long: 'Cast on 20.', cuff: 'Cast on 10.' },
      yarns: [{ name: 'Harbour', colour: 'blue', dyeLot: '7' }],
      credits: undefined as never,
    });
    expect([...parts]).toEqual([
      ['name', { name: 'Moorland scarf' }],
      ['pieces/long', { pieces: [garment.pieces[0]] }],
      ['pieces/cuff', { pieces: [garment.pieces[1]] }],
      ['notes', { notes: 'soft' }],
      ['ticked/block', { ticked: ['block'] }],
      ['ticked/weave in', { ticked: ['weave in'] }],
      ['taken/2/long', { taken: [{ piece: 'long', make: 2, grams: 40 }] }],
      ['texts/long', { texts: { long: 'Cast on 20.' } }],
      ['texts/cuff', { texts: { cuff: 'Cast on 10.' } }],
      [
        `yarns/${contentHash('["Harbour","blue","7"]')}`,
        { yarns: [{ name: 'Harbour', colour: 'blue', dyeLot: '7' }] },
      ],
    ]);
  });

  it('has two that are called the same as two', () => {
    expect([...partsOf({ ticked: ['a', 'a', 'a'] }).keys()]).toEqual([
      'ticked/a',
      'ticked/a#2',
      'ticked/a#3',
    ]);
  });

  it('knows a yarn again by name, colour and dye lot, those not given being empty', () => {
    const names = (yarn: object) => [...partsOf({ yarns: [{ name: 'Harbour', ...yarn }] }).keys()];
    expect(names({ grams: 50 })).toEqual(names({ colour: '', dyeLot: '' }));
    expect(names({})).toEqual([`yarns/${contentHash('["Harbour","",""]')}`]);
    expect(names({ colour: 'red' })).not.toEqual(names({ dyeLot: 'red' }));
  });

  it('is the same again when it is put together', () => {
    fc.assert(
      fc.property(anyGarment(), (garment) => {
        const { id: _id, createdAt: _created, changedAt: _changed, ...fields } = garment;
        const kept = Object.entries(fields).filter(
          ([name, value]) => value !== undefined && !isEmpty(value, name),
        );
        expect(assembled(partsOf(garment).values())).toEqual(Object.fromEntries(kept));
      }),
      { numRuns: 20, endOnFailure: true },
    );
  });

  it('tells a piece from anything else, and equal parts from others', () => {
    const [long] = scarf().garment.pieces;
    expect(pieceIn({ pieces: long ? [long] : [] })).toBe(long);
    expect(pieceIn({ notes: 'x' })).toBeUndefined();
    expect(sameParts({ notes: 'x' }, { notes: 'x' })).toBe(true);
    expect(sameParts({ notes: 'x' }, { notes: 'y' })).toBe(false);
    expect(sameParts({ notes: 'x' }, undefined)).toBe(false);
    expect(sameParts(undefined, undefined)).toBe(true);
  });
});

/** A list without an item is no part. */
const isEmpty = (value: unknown, name: string): boolean =>
  ['pieces', 'yarns', 'ticked', 'byHand', 'taken', 'texts'].includes(name) &&
  Object.keys(value as object).length === 0;
