import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { told } from '../../told.ts';
import { asWideAsAsked, endsAtWrist, goesOverHead, madeUp } from './made-up.ts';

/** Designs that once broke a law of making up, found by long sweeps at random; none does again. */
const designs = JSON.parse(readFileSync(new URL('once-broken.json', import.meta.url), 'utf8')) as readonly {
  readonly what: string;
  readonly design: Design;
}[];

describe('designs that once broke a law', () => {
  it.each(designs)('$what', ({ design }) => {
    const made = draft(design);
    if (!made.ok) throw new Error(told(made.faults));
    const garment = asPlanned({ name: 'any', pieces: made.value.recipes });
    if (!garment.ok) throw new Error(told(garment.faults));
    const one = madeUp(design, made.value, garment.value);
    expect(one.made.troubles).toEqual([]);
    asWideAsAsked(one);
    endsAtWrist(one);
    goesOverHead(one);
  });
});
