import { describe, expect, it } from 'vitest';
import { headOf } from '../../../src/store/backup/contents.ts';
import { BACKUP_LIMITS, type Backup } from '../../../src/store/backup/document.ts';
import { hangsTogether } from '../../../src/store/backup/hangs-together.ts';
import { provePlans } from '../../../src/store/backup/prove-plans.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { readInHand } from '../../../src/store/place/reads.ts';
import { type PieceRecord, planId } from '../../../src/store/records.ts';
import { LONG, planOf, scarf } from '../scenario.ts';

const { garment, plans } = scarf();
const [long, cuff] = garment.pieces as [PieceRecord, PieceRecord];
const [longPlan, cuffPlan] = plans as [Backup['plans'][number], Backup['plans'][number]];
const entry = { id: 'e1', make: LONG, seq: 1, at: 1, kind: 'row', row: 1, plan: longPlan.id };
const photo = { id: 'p1', garment: 'scarf', at: 1, image: '' };

/** Where a backup with that in it does not hang together; undefined where it does. */
function looseAt(of: Readonly<Record<string, readonly unknown[]>> = {}): unknown {
  const whole = {
    ...headOf('aa', 5),
    garments: [garment],
    plans,
    entries: [entry],
    settings: {},
    photos: [photo],
    ...of,
  };
  const found = hangsTogether(whole as unknown as Backup);
  return (found?.figures as { pathText?: string } | undefined)?.pathText;
}

describe('a backup', () => {
  it('hangs together where all that it speaks of is in it', () => {
    expect(looseAt()).toBeUndefined();
    expect(looseAt({ entries: [{ ...entry, plan: undefined }] })).toBeUndefined();
  });

  it('has each id once', () => {
    expect(looseAt({ garments: [garment, garment] })).toBe('garments.1');
    expect(looseAt({ plans: [longPlan, cuffPlan, longPlan] })).toBe('plans.2');
    expect(looseAt({ entries: [entry, entry] })).toBe('entries.1');
    expect(looseAt({ photos: [photo, photo] })).toBe('photos.1');
    expect(looseAt({ garments: [{ ...garment, pieces: [long, cuff, long] }] })).toBe('garments.0');
  });

  it('has a plan for each part of each piece, mirrored where there are two such makes', () => {
    expect(looseAt({ plans: [longPlan] })).toBe('garments.0');
    const mirrored = (makes: number, is: boolean) => ({
      garments: [
        { ...garment, pieces: [long, { ...cuff, recipe: { ...cuff.recipe, makes, mirrored: is } }] },
      ],
    });
    expect([looseAt(mirrored(2, true)), looseAt(mirrored(1, true)), looseAt(mirrored(2, false))]).toEqual([
      'garments.0',
      undefined,
      undefined,
    ]);
    const mirror = { ...cuffPlan, mirror: true, id: planId('scarf', 'cuff', 0, true, 1) };
    expect(looseAt({ ...mirrored(2, true), plans: [longPlan, cuffPlan, mirror] })).toBeUndefined();
    const two = { ...long, recipe: { ...long.recipe, parts: [...long.recipe.parts, ...long.recipe.parts] } };
    expect(looseAt({ garments: [{ ...garment, pieces: [two, cuff] }] })).toBe('garments.0');
  });

  it('has the plans that a piece names, and they are of its garment', () => {
    const naming = (id: string) => ({ garments: [{ ...garment, pieces: [{ ...long, plans: [id] }, cuff] }] });
    expect(looseAt(naming(longPlan.id))).toBeUndefined();
    expect(looseAt(naming('scarf/long/0/s/9'))).toBe('garments.0');
    const hat = scarf('hat');
    const both = { plans: [...plans, ...hat.plans] };
    expect(looseAt({ ...both, garments: [...naming(hat.plans[0]?.id ?? '').garments, hat.garment] })).toBe(
      'garments.0',
    );
    expect(looseAt({ ...both, garments: [garment, hat.garment] })).toBeUndefined();
  });

  it('has plans that are called as they should be, of a garment that is in it', () => {
    const called = (id: string, of: object = {}) =>
      looseAt({ plans: [longPlan, cuffPlan, { ...planOf('scarf', 'long', 9, 2), ...of, id }] });
    expect([called('scarf/long/0/s/2'), called('scarf/long/0/s/2-abc09')]).toEqual([undefined, undefined]);
    expect([
      called('scarf/long/0/s/3'),
      called('scarf/long/0/s/2-'),
      called('scarf/long/0/s/2-aB'),
      called(`scarf/long/0/s/2-${'a'.repeat(21)}`),
      called('scarf/long/0/s/2x'),
      called('scarf/long/0/s/0', { version: 0 }),
      called('hat/long/0/s/2', { garment: 'hat' }),
    ]).toEqual(Array.from({ length: 7 }, () => 'plans.2'));
    expect(called(`scarf/long/0/s/2-${'a'.repeat(20)}`)).toBeUndefined();
  });

  it('has entries of its garments, which name plans of their own make', () => {
    const second = (of: object) => looseAt({ entries: [entry, { ...entry, id: 'e2', ...of }] });
    expect(second({})).toBeUndefined();
    expect([
      second({ make: 'scarf' }),
      second({ make: 'hat/long/0/1' }),
      second({ plan: cuffPlan.id }),
      second({ plan: 'scarf/long/0/s/9' }),
      second({ make: 'scarf/long/1/1' }),
    ]).toEqual(Array.from({ length: 5 }, () => 'entries.1'));
  });

  it('has photos of its garments', () => {
    expect(looseAt({ photos: [photo, { ...photo, id: 'p2', garment: 'hat' }] })).toBe('photos.1');
  });
});

describe('the plans of a backup', () => {
  it('are each worked, and the first that does not come out is told with its row', () => {
    expect(provePlans([longPlan, cuffPlan])).toBeUndefined();
    const { plan } = cuffPlan;
    const rows = plan.rows.map((row) => (row.n === 5 ? { ...row, after: 19 } : row));
    expect(provePlans([longPlan, { ...cuffPlan, plan: { ...plan, rows } }])).toMatchObject({
      code: 'backup-not-knittable',
      figures: { pieceName: plan.piece, row: 5 },
    });
  });

  it('number their rows from 1, each in a section that there is', () => {
    const { plan } = cuffPlan;
    const withRow = (of: object) => plan.rows.map((row, i) => (i === 3 ? { ...row, ...of } : row));
    for (const rows of [withRow({ n: 5 }), withRow({ section: 1 })])
      expect(provePlans([longPlan, { ...cuffPlan, plan: { ...plan, rows } }])).toMatchObject({
        code: 'backup-damaged',
        figures: { pathText: 'plans.1.plan.rows.3' },
      });
  });

  it('ask for no more work than a device can do, all together', () => {
    const row = longPlan.plan.rows[0] as (typeof longPlan.plan.rows)[number];
    // half of what may be asked, and a little more: two of them are too much
    const heavy = {
      ...row,
      steps: [{ repeat: [{ work: 'k', times: 1 }], times: BACKUP_LIMITS.work / 4 + 1 }],
      before: 20,
    } as never;
    const plan = { ...longPlan, plan: { ...longPlan.plan, rows: [heavy, heavy] } };
    expect(provePlans([cuffPlan, plan])).toMatchObject({
      code: 'backup-damaged',
      figures: { pathText: 'plans.1' },
    });
  });
});

describe('what the knitting screen paints first', () => {
  it('is asked for all at once, where it was seen before', async () => {
    const asked: string[] = [];
    const place = { id: LONG, plan: longPlan.id, garment: 'scarf' };
    const lying: Record<string, object> = { places: place, plans: longPlan, summaries: { id: 'scarf' } };
    const tx = {
      objectStore: (name: string) => ({
        get: async (key: string) => {
          asked.push(`${name} ${key}`);
          return lying[name];
        },
      }),
    } as never;
    const seen = { make: LONG, plan: longPlan.id, garment: 'scarf' };
    const all = [`places ${LONG}`, `plans ${longPlan.id}`, 'summaries scarf'];
    const reading = readInHand(tx, LONG, seen);
    expect(asked).toEqual(all);
    expect(await reading).toEqual({ place, plan: longPlan, garment: { id: 'scarf' } });
    expect(asked).toEqual(all);
    asked.length = 0;
    const other = readInHand(tx, LONG, { ...seen, make: 'scarf/cuff/0/1' });
    expect(asked).toEqual(all.slice(0, 1));
    await other;
    expect(asked).toEqual(all);
  });
});

describe('a file', () => {
  const refused = (document: unknown) => {
    const read = readBackup(JSON.stringify(document));
    return read.ok ? undefined : read.faults.map(({ code, figures }) => [code, figures])[0];
  };

  it('that is no document of ours is told so', () => {
    for (const document of [null, 5, 'x', [], {}, { format: 'other', version: 1 }])
      expect(refused(document)?.[0]).toMatch(/^backup-not-(?:ours|json)$/);
    expect(refused({ format: 'other', version: 1 })?.[0]).toBe('backup-not-ours');
  });

  it('of a version that there cannot be is damaged there, and of a later one is told by it', () => {
    for (const version of [0, -1, 1.5, '1', null])
      expect(refused({ format: 'ridgeline-backup', version })).toEqual([
        'backup-damaged',
        { pathText: 'version' },
      ]);
    expect(refused({ format: 'ridgeline-backup', version: 99 })).toEqual(['backup-newer', { version: 99 }]);
  });
});

describe('a file of which the beginning is blank', () => {
  it.each(['null', '5', '"x"', '[]', '{}'])('is none of ours where %s comes then', (json) => {
    const read = readBackup(`${' '.repeat(2000)}${json}`);
    expect(read).toMatchObject({ ok: false, faults: [{ code: 'backup-not-ours' }] });
  });

  it('is not of JSON where nothing comes then, or nonsense', () => {
    for (const end of ['', '{', 'x'])
      expect(readBackup(`${' '.repeat(2000)}${end}`)).toMatchObject({
        faults: [{ code: 'backup-not-json' }],
      });
  });
});

describe('a file that is too long', () => {
  it('is refused with its length and the most, in millions of characters begun', () => {
    expect(readBackup(' '.repeat(400_000_001))).toMatchObject({
      faults: [{ code: 'backup-too-large', figures: { sizeMillions: 401, mostMillions: 400 } }],
    });
  });
});
