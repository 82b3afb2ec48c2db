import { describe, expect, it } from 'vitest';
import type { GarmentPart, ListOrder, PieceRecord } from '../../../src/store/records.ts';
import type { ListName } from '../../../src/store/uniting/parts.ts';
import { recordOf } from '../../../src/store/uniting/record-of-state.ts';
import type { GarmentState } from '../../../src/store/uniting/state.ts';
import { scarf } from '../scenario.ts';

/** A state is laid out as a record: which part comes first, which version is shown, and which stamp is said once. */

const AT = (n: number): string => `00000000${n}.00000.aa`;

type Versions = readonly (readonly [stamp: string, part: GarmentPart])[];

const stateWith = (
  parts: Readonly<Record<string, Versions>>,
  order: readonly (readonly [ListName, ListOrder])[] = [],
): GarmentState => ({
  parts: new Map(Object.entries(parts).map(([name, versions]) => [name, new Map(versions)])),
  seen: new Map(),
  gone: new Map(),
  photosGone: new Map(),
  order: new Map(order),
});

const record = (state: GarmentState) =>
  recordOf(state, { id: 'scarf', createdAt: 1, changedAt: 2, name: 'Scarf' }, () => undefined);

const tick = (name: string, at: number): [string, Versions] => [
  `ticked/${name}`,
  [[AT(at), { ticked: [name] }]],
];
const ticked = (some: readonly [string, number][], order?: readonly string[]) =>
  record(
    stateWith(
      Object.fromEntries(some.map(([name, at]) => tick(name, at))),
      order && [['ticked', { stamp: AT(1), names: order.map((name) => `ticked/${name}`) }]],
    ),
  ).ticked;

describe('items of a list whose order nobody laid', () => {
  it('are the earlier before the later, and of one time by their names', () => {
    expect(
      ticked([
        ['d', 3],
        ['c', 1],
        ['b', 2],
        ['a', 2],
      ]),
    ).toEqual(['c', 'a', 'b', 'd']);
    expect(
      ticked([
        ['a', 2],
        ['c', 2],
        ['b', 2],
      ]),
    ).toEqual(['a', 'b', 'c']);
  });
});

describe('items of a list whose order was laid', () => {
  it('are in that order, whenever they came, and what is not named follows by its time', () => {
    const some: [string, number][] = [
      ['a', 1],
      ['b', 2],
      ['c', 3],
      ['e', 2],
      ['d', 4],
    ];
    expect(ticked(some, ['c', 'a'])).toEqual(['c', 'a', 'b', 'e', 'd']);
    expect(ticked(some, ['d', 'c', 'b', 'a'])).toEqual(['d', 'c', 'b', 'a', 'e']);
    expect(ticked(some, ['gone', 'b'])).toEqual(['b', 'a', 'e', 'c', 'd']);
  });
});

describe('the stamp that is said once', () => {
  const marks = (some: readonly [string, number][]) =>
    record(stateWith(Object.fromEntries(some.map(([name, at]) => tick(name, at))))).marks;

  it('is the most common one; the others are said by their parts', () => {
    const of = marks([
      ['a', 2],
      ['b', 3],
      ['c', 3],
    ]);
    expect(of?.base).toBe(AT(3));
    expect(of?.at).toEqual({ 'ticked/a': AT(2) });
  });

  it('is of those that are as common the lowest, whichever came first', () => {
    for (const some of [
      [
        ['a', 5],
        ['b', 4],
      ],
      [
        ['a', 4],
        ['b', 5],
      ],
    ] as [string, number][][])
      expect(marks(some)?.base).toBe(AT(4));
  });

  it('is empty where there is no part', () => {
    expect(record(stateWith({})).marks).toEqual({ base: '', seen: [] });
  });
});

describe('several versions of a part', () => {
  it('are shown as the latest, the others named below it with what they say', () => {
    const state = stateWith({
      credits: [
        [AT(4), { credits: 'hers' }],
        [AT(2), { credits: 'mine' }],
        [AT(3), { credits: 'hers' }],
      ],
    });
    const { credits, marks } = record(state);
    expect(credits).toBe('hers');
    expect(marks?.also).toEqual([
      { name: 'credits', stamp: AT(2), of: { credits: 'mine' } },
      { name: 'credits', stamp: AT(3) },
    ]);
  });

  it('of notes are all shown, the earlier first, and all named', () => {
    const state = stateWith({
      notes: [
        [AT(4), { notes: 'second' }],
        [AT(2), { notes: 'first' }],
      ],
    });
    const { notes, marks } = record(state);
    expect(notes?.split('\n').filter((line) => line !== '')).toEqual(['first', 'second']);
    expect(marks?.also).toEqual([
      { name: 'notes', stamp: AT(2), of: { notes: 'first' } },
      { name: 'notes', stamp: AT(4), of: { notes: 'second' } },
    ]);
    expect(marks?.at).toBeUndefined();
  });
});

describe('what was taken away', () => {
  it('is told by its ids in order, whichever came first', () => {
    const [long, cuff] = scarf().garment.pieces as [PieceRecord, PieceRecord];
    const photo = (id: string) => [id, { stamp: AT(2), id }] as const;
    const piece = (of: PieceRecord) => [of.id, { stamp: AT(2), piece: of }] as const;
    for (const turn of [false, true]) {
      const photos = [photo('b'), photo('c'), photo('a')];
      const pieces = [piece(long), piece(cuff)];
      const { marks } = record({
        ...stateWith({}),
        gone: new Map(turn ? pieces.reverse() : pieces),
        photosGone: new Map(turn ? photos.reverse() : photos),
      });
      expect(marks?.photosGone?.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
      expect(marks?.gone?.map(({ piece: { id } }) => id)).toEqual(['cuff', 'long']);
    }
  });

  it('is shown all the same where rows of it turn up, by their ids in order, and the order of its list is told', () => {
    const [long, cuff] = scarf().garment.pieces as [PieceRecord, PieceRecord];
    const gone = new Map([long, cuff].map((piece) => [piece.id, { stamp: AT(2), piece }] as const));
    const { pieces, marks } = recordOf(
      { ...stateWith({}), gone },
      { id: 'scarf', createdAt: 1, changedAt: 2, name: 'Scarf' },
      (id) => (id === 'cuff' || id === 'long' ? { makes: 1, parts: 1 } : undefined),
    );
    expect(marks?.shown).toEqual(['cuff', 'long']);
    expect(pieces.map(({ id }) => id)).toEqual(['cuff', 'long']);
  });
});
