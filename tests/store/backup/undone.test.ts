import { describe, expect, it } from 'vitest';
import type { LogEntry } from '../../../src/progress/log.ts';
import { headOf } from '../../../src/store/backup/contents.ts';
import type { Backup } from '../../../src/store/backup/document.ts';
import { type GarmentChanged, listChange, undone } from '../../../src/store/backup/undone.ts';
import type { GarmentRecord, PieceRecord } from '../../../src/store/records.ts';
import { LONG, planOf, scarf } from '../scenario.ts';

const { garment: before, plans } = scarf();
const [long, cuff] = before.pieces as [PieceRecord, PieceRecord];
const [longPlan, cuffPlan] = plans as [Plan, Plan];
type Plan = Backup['plans'][number];
type Entry = Backup['entries'][number];

const head = {
  ...headOf('aa', 7000),
  garments: [],
  plans: [],
  entries: [],
  settings: {},
  photos: [],
} as Backup;
const backup = (
  garment: GarmentRecord,
  some: readonly Plan[] = plans as Plan[],
  entries: readonly Entry[] = [],
) => ({ ...head, garments: [garment], plans: some, entries }) as Backup;
const entry = (id: string, of: Partial<LogEntry> = {}): Entry =>
  ({ id, make: LONG, seq: 1, at: 1, kind: 'row', row: 1, plan: longPlan.id, ...of }) as Entry;
const nothing = { came: [], went: [] };
const changed = (after: GarmentRecord | undefined, of: Partial<GarmentChanged> = {}): GarmentChanged => ({
  id: 'scarf',
  before,
  after,
  plans: nothing,
  entries: nothing,
  ...of,
});
const named = (piece: PieceRecord, name: string): PieceRecord => ({
  ...piece,
  recipe: { ...piece.recipe, name },
});
const idsOf = (items: readonly { id: string }[] | undefined) => items?.map(({ id }) => id);

describe('what a change made of a list', () => {
  it('is what came or is another, and what went or was another', () => {
    const [a, b, c, d] = ['a', 'b', 'c', 'd'].map((id) => ({ id, n: 1 })) as [Item, Item, Item, Item];
    expect(listChange([a, b, c], [{ n: 1, id: 'a' }, { ...b, n: 2 }, d])).toEqual({
      came: ['b', 'd'],
      went: [b, c],
    });
    expect(listChange([], [])).toEqual(nothing);
  });
});
type Item = { readonly id: string; readonly n: number };

describe('a change of a garment undone', () => {
  it('brings back what it took away, and no garment that she has deleted since', () => {
    const gone = changed(undefined, {
      plans: { came: [], went: [longPlan] },
      entries: { came: [], went: [entry('one')] },
    });
    expect(undone(gone, undefined, head)).toEqual(backup(before, [longPlan], [entry('one')]));
    expect(undone(changed({ ...before, name: 'Hat' }), undefined, head)).toBeUndefined();
    expect(undone(changed(before, { before: undefined }), undefined, head)).toBeUndefined();
  });

  it('unites what it took away with what was made anew since', () => {
    const gone = changed(undefined, {
      plans: { came: [], went: plans as Plan[] },
      entries: { came: [], went: [entry('one')] },
    });
    const now = backup(before, plans as Plan[], [entry('two', { seq: 2, row: 2 })]);
    expect(idsOf(undone(gone, now, head)?.entries)).toEqual(['one', 'two']);
  });

  it('takes away what it brought, unless that was knitted on or changed since', () => {
    const brought = changed(before, { before: undefined, entries: { came: ['one'], went: [] } });
    expect(undone(brought, backup(before, plans as Plan[], [entry('one')]), head)).toBeUndefined();
    const knitted = backup(before, plans as Plan[], [entry('one'), entry('two')]);
    expect(undone(brought, knitted, head)).toBe(knitted);
    const renamed = backup({ ...before, name: 'Hat' });
    expect(undone(brought, renamed, head)).toBe(renamed);
  });

  it('leaves a garment that nobody changed since just as it was before', () => {
    const after = { ...before, name: 'Of the file', notes: 'came', changedAt: 5000 };
    expect(undone(changed(after), backup(after), head)?.garments).toEqual([before]);
  });

  it('gives each field back but where it was changed since, and is later than both', () => {
    const was = { ...before, notes: 'mine', credits: 'hers', changedAt: 9000 };
    const after = { ...was, name: 'Of the file', notes: 'of the file', licence: 'came' };
    const { credits: _went, ...without } = after;
    const now = { ...without, notes: 'since', changedAt: 5000 };
    const back = undone({ ...changed(without), before: was }, backup(now), head)?.garments[0];
    expect(back).toEqual({ ...was, notes: 'since', changedAt: 9001 });
    const later = undone({ ...changed(without), before: was }, backup({ ...now, changedAt: 9500 }), head);
    expect(later?.garments[0]?.changedAt).toBe(9501);
  });

  it('has the log as it was, with what was knitted since, by their ids', () => {
    const after = { ...before, name: 'Of the file' };
    const now = backup(after, plans as Plan[], [entry('b'), entry('c'), entry('d')]);
    const back = undone(changed(after, { entries: { came: ['c'], went: [entry('a')] } }), now, head);
    expect(idsOf(back?.entries)).toEqual(['a', 'b', 'd']);
  });
});

describe('the pieces of a garment, a change of it undone', () => {
  const back = (after: readonly PieceRecord[], now: readonly PieceRecord[], entries: readonly Entry[] = []) =>
    undone(
      changed({ ...before, name: 'Of the file', pieces: after }),
      backup({ ...before, name: 'Of the file', pieces: now }, plans as Plan[], entries),
      head,
    )?.garments[0]?.pieces;
  const hat = named({ ...cuff, id: 'hat' }, 'Hat');

  it('come back that went, unless they are there again, and as they were', () => {
    expect(back([long], [long])).toEqual([long, cuff]);
    expect(back([named(long, 'Of the file'), cuff], [named(long, 'Of the file'), cuff])).toEqual([
      long,
      cuff,
    ]);
  });

  it('stay as she has changed them since, and away where she has taken them out since', () => {
    expect(back([long, cuff], [named(long, 'Since'), cuff])).toEqual([named(long, 'Since'), cuff]);
    expect(back([long, cuff], [long])).toEqual([long]);
  });

  it('go that came, unless they were begun or changed since', () => {
    const there = [long, cuff, hat];
    expect(back(there, there)).toEqual([long, cuff]);
    expect(back(there, there, [entry('x', { make: 'scarf/hat/0/1' })])).toEqual([long, cuff, hat]);
    expect(back(there, [long, cuff, named(hat, 'Since')])).toEqual([long, cuff, named(hat, 'Since')]);
    expect(back([long, cuff], there)).toEqual(there);
  });
});

describe('the plans of a garment, a change of it undone', () => {
  const newer = planOf('scarf', 'long', 40, 2) as Plan;
  const after = { ...before, name: 'Of the file' };
  const back = (now: Backup, came: readonly string[] = [newer.id], went: readonly Plan[] = []) =>
    idsOf(undone(changed(after, { plans: { came, went } }), now, head)?.plans);

  it('go that came', () => {
    expect(back(backup(after, [longPlan, cuffPlan, newer]))).toEqual([cuffPlan.id, longPlan.id].sort());
  });

  it('stay where a row that stays is of them', () => {
    const knitted = backup(after, [longPlan, newer], [entry('since', { plan: newer.id })]);
    expect(back(knitted)).toEqual([longPlan.id, newer.id].sort());
  });

  it('stay where a piece that stays is another than before', () => {
    const now = backup({ ...after, pieces: [named(long, 'Since'), cuff] }, [longPlan, newer]);
    expect(back(now)).toEqual([longPlan.id, newer.id].sort());
  });

  it('come back that went, each once', () => {
    expect(back(backup(after, [longPlan]), [], [cuffPlan, longPlan])).toEqual(
      [cuffPlan.id, longPlan.id].sort(),
    );
  });
});
