import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldPlace } from '../../../src/progress/fold.ts';
import type { LogEntry } from '../../../src/progress/log.ts';
import type { Backup } from '../../../src/store/backup/document.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { mergeBackups } from '../../../src/store/backup/merge.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { stableJson } from '../../../src/store/backup/stable.ts';
import { partedLogs } from '../../arbitraries/knitting-log.ts';
import { everything, places } from '../knitted-box.ts';
import { freshStore, given, LONG, planOf, scarf } from '../scenario.ts';

const TOTAL = 12;

/** Random histories that are merged; RIDGELINE_HISTORIES=1000 for the whole of it, a part of it in every run. */
const HISTORIES = Number(process.env.RIDGELINE_HISTORIES ?? 50);

const { garment, plans } = scarf('scarf', TOTAL);
const LONG_PLAN = planOf('scarf', 'long', TOTAL).id;

/** One garment on several devices: each with its own log, maybe with a recipe or a setting of its own. */
const devices = (): fc.Arbitrary<Backup[]> =>
  fc
    .tuple(
      partedLogs(TOTAL),
      fc.infiniteStream(
        fc.record({
          changedAt: fc.nat(3),
          name: fc.constantFrom('Scarf', 'Long scarf'),
          hand: fc.constantFrom('left', 'right', undefined),
        }),
      ),
    )
    .map(([logs, own]) =>
      logs.map((entries, i) => {
        const { changedAt, name, hand } = own.next().value as {
          changedAt: number;
          name: string;
          hand?: string;
        };
        return backup(
          `d${i}`,
          [{ ...garment, changedAt: 1000 + changedAt, name }],
          plans,
          entries,
          hand ? { hand } : {},
        );
      }),
    );

function backup(
  device: string,
  garments: unknown,
  plans: unknown,
  entries: readonly LogEntry[],
  settings: object,
): Backup {
  const of = (id: string) => id.replace('g/p/0/s/1', LONG_PLAN);
  const log = entries.map((entry) => ({
    ...entry,
    make: LONG,
    ...(entry.plan === undefined ? {} : { plan: of(entry.plan) }),
  }));
  const document: unknown = {
    format: 'ridgeline-backup',
    version: 1,
    madeAt: 5000,
    device,
    garments,
    plans,
    entries: log,
    settings,
    photos: [],
  };
  return document as Backup;
}

/** Everything that came out, and the rows of the one make, as text. */
const outcome = (it: Backup) => stableJson({ merged: it, rows: foldPlace(it.entries).rows });

describe('merging backups', () => {
  it(`of ${HISTORIES} random histories comes out the same in whichever order`, () => {
    fc.assert(
      fc.property(devices(), fc.infiniteStream(fc.nat()), (backups, keys) => {
        const shuffled = backups
          .map((one) => ({ one, key: keys.next().value as number }))
          .sort((a, b) => a.key - b.key)
          .map(({ one }) => one);
        expect(outcome(shuffled.reduce(mergeBackups))).toBe(outcome(backups.reduce(mergeBackups)));
      }),
      { numRuns: HISTORIES, endOnFailure: true },
    );
  }, 180_000);

  it('is commutative, associative and idempotent', () => {
    fc.assert(
      fc.property(devices(), ([a, b, c = a]) => {
        const [one, two, three] = [a, b, c] as [Backup, Backup, Backup];
        expect(mergeBackups(one, two)).toEqual(mergeBackups(two, one));
        expect(mergeBackups(mergeBackups(one, two), three)).toEqual(
          mergeBackups(one, mergeBackups(two, three)),
        );
        const both = mergeBackups(one, two);
        expect(mergeBackups(both, two)).toEqual(both);
        expect(mergeBackups(one, one).entries).toEqual(
          [...one.entries].sort((x, y) => (x.id < y.id ? -1 : 1)),
        );
      }),
      { numRuns: Math.ceil(HISTORIES / 4), endOnFailure: true },
    );
  }, 180_000);

  it('loses no entry of any device', () => {
    fc.assert(
      fc.property(devices(), (backups) => {
        const ids = new Set(backups.reduce(mergeBackups).entries.map((entry) => entry.id));
        for (const entry of backups.flatMap((one) => one.entries)) expect(ids.has(entry.id)).toBe(true);
      }),
      { endOnFailure: true },
    );
  }, 180_000);

  it('into two boxes, each reading the other, leaves both alike, and the place is the one of the whole log', async () => {
    await fc.assert(
      fc.asyncProperty(devices(), async (backups) => {
        const merged = given(readBackup(JSON.stringify(backups.reduce(mergeBackups))));
        const boxes = await Promise.all([freshStore(), freshStore()]);
        for (const one of backups) given(await importBackup(boxes[0].box, one, 'merge'));
        for (const one of [...backups].reverse()) given(await importBackup(boxes[1].box, one, 'merge'));
        const { settings: _mine, ...first } = await everything(boxes[0]);
        const { settings: _other, ...second } = await everything(boxes[1]);
        expect(first).toEqual(second);
        expect(await places(boxes[0])).toEqual(await places(boxes[1]));
        expect(given(await boxes[0].place(LONG)).rows).toBe(foldPlace(merged.entries).rows);
        for (const box of boxes) box.close();
      }),
      { numRuns: Math.ceil(HISTORIES / 16), seed: 411, endOnFailure: true },
    );
  }, 180_000);
});
