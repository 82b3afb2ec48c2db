import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BACKUP_VERSION } from '../../../src/store/backup/document.ts';
import { backupFile, exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { loadFaults, saysFault } from '../../../src/words/fault.ts';
import { anyFile, garbled, mutated } from '../../arbitraries/hostile-json.ts';
import { countingWork } from '../../counted-work.ts';
import { everything, knittedBox } from '../knitted-box.ts';
import { codesOf, freshStore, given, LONG, nextRow, undoLast } from '../scenario.ts';

await loadFaults();

/** 2,000 files in an ordinary run; the long one asks for 20,000. */
const FILES = Number(process.env.RIDGELINE_FUZZ ?? 200);

const honest = given(await exportAll((await knittedBox()).box));

describe('a hostile or broken file', () => {
  it(`changes nothing and is refused with a sentence, or is whole and comes out as it went in (${FILES} files)`, async () => {
    const store = await knittedBox();
    const before = await everything(store);
    const seen = { refused: 0, taken: 0 };
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          { weight: 6, arbitrary: mutated(honest) },
          { weight: 2, arbitrary: garbled(honest) },
          anyFile(),
        ),
        async (text) => {
          const read = readBackup(text);
          if (!read.ok) {
            seen.refused += 1;
            const [fault] = read.faults;
            expect(fault?.code).toMatch(/^backup-/);
            expect(fault && saysFault(fault)).toMatch(/^[A-Z].*\.$/s);
            expect(fault && saysFault(fault)).not.toMatch(/\{\w+\}/);
            return;
          }
          seen.taken += 1;
          const other = await freshStore();
          given(await importBackup(other.box, read.value, 'replace'));
          const again = readBackup(JSON.stringify(given(await exportAll(other.box))));
          expect(codesOf(again)).toEqual([]);
          other.close();
        },
      ),
      { numRuns: FILES, endOnFailure: true },
    );
    expect(await everything(store)).toEqual(before);
    // the mutations reach both sides of the door
    expect(seen.refused).toBeGreaterThan(FILES / 2);
    expect(seen.taken).toBeGreaterThan(FILES / 100);
    expect(({} as Record<string, unknown>).more).toBeUndefined();
  }, 600_000);

  const refused: readonly (readonly [string, string, string])[] = [
    [
      'with a key of the prototype',
      JSON.stringify(honest).replace('"settings":{', '"settings":{"__proto__":{"a":1},'),
      'backup-damaged',
    ],
    ['from a newer app', JSON.stringify({ ...honest, version: BACKUP_VERSION + 1 }), 'backup-newer'],
    ['of another program', '{"format":"something else","version":1}', 'backup-not-ours'],
    ['that is a list', '[]', 'backup-not-ours'],
    ['that is nothing behind a thousand spaces', `${' '.repeat(1000)}null`, 'backup-not-ours'],
    ['that is no JSON', 'PK\u0003\u0004', 'backup-not-json'],
    ['that was cut off', JSON.stringify(honest).slice(0, -20), 'backup-not-json'],
    [
      'with a number beyond all numbers',
      JSON.stringify(honest).replace('"madeAt":', '"madeAt":1e999,"was":'),
      'backup-damaged',
    ],
    [
      'with a broken picture',
      JSON.stringify(honest).replace(/(base64,[^"=]*)[^"]=*"/, '$1"'),
      'backup-damaged',
    ],
    [
      'with a picture that could carry a script',
      JSON.stringify(honest).replace('data:image/png', 'data:image/svg+xml'),
      'backup-damaged',
    ],
  ];
  for (const [name, text, code] of refused) {
    it(`${name} is refused: ${code}`, () => {
      expect(codesOf(readBackup(text))).toEqual([code]);
    });
  }

  const withRecipe = (
    change: (recipe: (typeof honest.garments)[0]['pieces'][0]['recipe']) => object,
  ): string => {
    const garments = honest.garments.map((garment) => ({
      ...garment,
      pieces: garment.pieces.map((piece) => ({
        ...piece,
        recipe: { ...piece.recipe, ...change(piece.recipe) },
      })),
    }));
    return JSON.stringify({ ...honest, garments });
  };
  const recipes: readonly (readonly [string, string, string])[] = [
    ['is made 5,000 times', withRecipe(() => ({ makes: 5000 })), 'makes'],
    [
      'has a part that takes its stitches from itself',
      withRecipe(({ parts }) => ({
        parts: parts.map((part) => ({ ...part, from: { part: part.name, stitches: 5, edge: 'right' } })),
      })),
      'parts.0.from',
    ],
  ];
  it.each(recipes)('with a recipe that %s is refused where the planner would refuse it', (_, text, at) => {
    const read = readBackup(text);
    expect(codesOf(read)).toEqual(['backup-damaged']);
    expect(read.ok ? {} : read.faults[0]?.figures).toEqual({ pathText: `garments.0.pieces.0.recipe.${at}` });
  });

  it('whose entries are numbered beyond all knitting is refused', () => {
    const entries = honest.entries.map((entry) => ({ ...entry, seq: 2_000_000_000 }));
    expect(codesOf(readBackup(JSON.stringify({ ...honest, entries })))).toEqual(['backup-damaged']);
    const plans = honest.plans.map((plan) => ({ ...plan, version: 2_000_000_000 }));
    expect(codesOf(readBackup(JSON.stringify({ ...honest, plans })))).toEqual(['backup-damaged']);
  });

  it('that is let in with high numbers leaves room to knit, to undo, to plan anew and to make a backup', async () => {
    const high = honest.entries.map((entry) => ({ ...entry, seq: 999_999_999 }));
    const store = await freshStore();
    const file = given(readBackup(JSON.stringify({ ...honest, entries: high })));
    given(await importBackup(store.box, file, 'replace'));
    given(await nextRow(store, LONG));
    given(await undoLast(store, LONG));
    given(await nextRow(store, LONG));
    const again = given(await backupFile(store.box));
    expect(again.entries).toBe(honest.entries.length + 3);
    store.close();
  });

  it('with a plan that cannot be knitted is refused, and the row is named', () => {
    const plans = honest.plans.map((plan) => ({
      ...plan,
      plan: { ...plan.plan, rows: plan.plan.rows.map((row) => (row.n === 3 ? { ...row, after: 21 } : row)) },
    }));
    const read = readBackup(JSON.stringify({ ...honest, plans }));
    expect(codesOf(read)).toEqual(['backup-not-knittable']);
    expect(read.ok ? {} : read.faults[0]?.figures).toMatchObject({ row: 3 });
  });

  describe('in what is done to read it', () => {
    const countedWork = countingWork();

    it('whose rows would never end is refused without working them', async () => {
      let steps: unknown = [{ work: 'yo', times: 100_000 }];
      for (let depth = 0; depth < 6; depth += 1) steps = [{ repeat: steps, times: 100_000 }];
      const plans = honest.plans.map((plan) => ({
        ...plan,
        plan: { ...plan.plan, rows: plan.plan.rows.map((row) => ({ ...row, steps })) },
      }));
      const endless = JSON.stringify({ ...honest, plans });
      expect(codesOf(readBackup(endless))).toEqual(['backup-damaged']);
      expect(await countedWork(() => readBackup(endless))).toBeLessThan(
        10 * (await countedWork(() => readBackup(JSON.stringify(honest)))),
      );
    });
  });
});
