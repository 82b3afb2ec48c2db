import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { garmentToForm } from '../../src/app/drafts/editor/garment-form.ts';
import { toSave } from '../../src/app/drafts/editor/save.ts';
import { garmentOf } from '../../src/app/garments/garment-of.ts';
import { planRecords } from '../../src/app/garments/plan-records.ts';
import { formToRecipe } from '../../src/knit/piece/form/read-piece.ts';
import { recipeToForm } from '../../src/knit/piece/form/write-piece.ts';
import { exportAll } from '../../src/store/backup/export.ts';
import { importBackup } from '../../src/store/backup/import.ts';
import { readBackup } from '../../src/store/backup/read.ts';
import type { GarmentRecord } from '../../src/store/records.ts';
import { garmentToLink, linkToGarment } from '../../src/store/share/link.ts';
import { anyGarment } from '../arbitraries/any-garment.ts';
import { freshStore, given } from '../store/scenario.ts';

/** Garments that go through every door; more with RIDGELINE_GARMENTS. So many lie in one box and in one backup. */
const GARMENTS = Number(process.env.RIDGELINE_GARMENTS ?? 20);
const TOGETHER = 10;
const LATER = 3_000_000_000;

/** A line of what differs: the difference of two whole garments is more than anyone reads, or prints in time. */
function same(found: unknown, wanted: unknown, door: string): void {
  if (!isDeepStrictEqual(kept(found), kept(wanted))) throw new Error(`${door}: ${difference(found, wanted)}`);
}

function difference(found: unknown, wanted: unknown, at = ''): string {
  const isOpen = (one: unknown): one is Record<string, unknown> => typeof one === 'object' && one !== null;
  if (!isOpen(found) || !isOpen(wanted))
    return `${at} is ${JSON.stringify(found)?.slice(0, 90)}, was ${JSON.stringify(wanted)?.slice(0, 90)}`;
  const names = [...new Set([...Object.keys(found), ...Object.keys(wanted)])];
  const name = names.find((one) => !isDeepStrictEqual(kept(found[one]), kept(wanted[one])));
  return name === undefined
    ? `${at} has other fields`
    : difference(found[name], wanted[name], `${at}.${name}`);
}

/** As it lies in the box or in a setting. */
const kept = <T>(value: T): T => structuredClone(value);

async function throughTheStore(garments: readonly GarmentRecord[]): Promise<void> {
  const box = await freshStore();
  const other = await freshStore();
  for (const garment of garments) {
    given(await box.saveGarment(garment, given(planRecords(garment))));
    same(given(await box.garment(garment.id)), garment, 'stored and read');
  }
  const made = given(await exportAll(box.box));
  const file = given(readBackup(JSON.stringify(made)));
  given(await importBackup(other.box, file, 'replace'));
  for (const garment of garments)
    same(given(await other.garment(garment.id)), garment, 'backed up and restored');
  same(given(await exportAll(other.box)).plans, made.plans, 'the plans of them too');
  box.close();
  other.close();
}

async function throughALink(garment: GarmentRecord): Promise<void> {
  const passed = garmentOf(garment);
  const link = await garmentToLink(passed, { withNotes: true });
  same(given(await linkToGarment(link)), passed, 'sent as a link and opened');
}

function throughTheEditor(garment: GarmentRecord, name: string): void {
  for (const { recipe } of garment.pieces) {
    const form = recipeToForm(recipe);
    same(formToRecipe(kept(form)), { ok: true, value: recipe }, 'a piece typed');
  }
  const form = kept({ ...garmentToForm(garment), name });
  const saved = toSave({ form, id: garment.id, now: LATER, old: garment, begun: new Set() });
  same(saved?.garment, { ...garment, name, changedAt: LATER }, 'renamed and saved');
}

describe('a garment with any field of the model', () => {
  it(`comes out of every door as it went in: ${GARMENTS} garments`, { timeout: 900_000 }, async () => {
    const several = fc.uniqueArray(anyGarment(), {
      minLength: TOGETHER,
      maxLength: TOGETHER,
      selector: ({ id }) => id,
    });
    await fc.assert(
      fc.asyncProperty(several, fc.boolean(), async (garments, renames) => {
        for (const garment of garments) {
          throughTheEditor(garment, renames ? 'Another name' : garment.name);
          await throughALink(garment);
        }
        await throughTheStore(garments);
      }),
      { numRuns: GARMENTS / TOGETHER, endOnFailure: true },
    );
  });
});
