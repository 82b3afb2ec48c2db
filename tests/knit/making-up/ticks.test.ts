import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { DesignForm } from '../../../src/app/drafts/design/form.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import { told } from '../../told.ts';

const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'));

/** Designs as they were stored once. */
const stored = read('../../app/drafts/golden/forms.json') as readonly {
  readonly what: string;
  readonly form: DesignForm;
  readonly design: Design;
}[];

/** What was ticked of them then: a tick is kept by the id of its step alone. */
const ticked = read('ticks.json') as Readonly<Record<string, readonly string[]>>;

const idsOf = (garment: Garment): readonly string[] => {
  const planned = asPlanned(garment);
  if (!planned.ok) throw new Error(told(planned.faults));
  return makingUpOf(planned.value).steps.map(({ id }) => id);
};

/** By its stated joints, and as proposed for garments from before there were any. */
const garments = new Map<string, Garment>([['the sample', sampleGarment]]);
for (const { what, design } of stored) {
  const made = draft(design);
  if (!made.ok) continue;
  garments.set(`${what}, as drafted`, { name: what, pieces: made.value.recipes, joints: made.value.joints });
  garments.set(`${what}, as proposed`, { name: what, pieces: made.value.recipes });
}

describe('the ticks of a garment that was begun', () => {
  it.each(Object.keys(ticked))('stay at the steps where they were: %s', (what) => {
    const garment = garments.get(what);
    if (!garment) throw new Error(`${what} is no longer drafted`);
    expect(idsOf(garment)).toEqual(ticked[what]);
  });

  it('are of every kind of garment that was ever stored', () => {
    expect(Object.keys(ticked).length).toBeGreaterThan(20);
  });
});
