import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoGarment, demoNames } from '../../../src/knit/garment/demo.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { writePattern } from '../../../src/knit/written/write-pattern.ts';
import { knittableRecipe } from '../../arbitraries/knittable-recipe.ts';
import { told } from '../../told.ts';

/** Random garments of the law; more with RIDGELINE_GARMENTS. */
const GARMENTS = Number(process.env.RIDGELINE_GARMENTS ?? 24);

const rowsOf = (part: PlannedPart) =>
  part.rows.map(({ n, side, needle, steps, before, after }) => ({ n, side, needle, steps, before, after }));

/** What a text is read as must be what it was written from, row by row. */
function comesBack(garment: Garment, terms: 'US' | 'UK'): void {
  const written = writePattern(garment, { terms });
  if (!written.ok) throw new Error(told(written.faults));
  const read = readPattern(written.value);
  const complaints = read.lines.flatMap((line) => line.faults.map((f) => `${line.text}: ${told([f])}`));
  expect(complaints, written.value).toEqual([]);
  expect(read.pieces).toHaveLength(garment.pieces.length);
  garment.pieces.forEach((recipe, i) => {
    const before = plan(recipe);
    const after = read.pieces[i]?.plan;
    if (!before.ok || !after?.ok) throw new Error(`${recipe.name} was not read back\n${written.value}`);
    const parts = before.value.parts.filter((part) => part.rows.length > 0);
    const again = after.value.parts.filter((part) => part.rows.length > 0);
    expect(
      again.map((part) => part.start),
      written.value,
    ).toEqual(parts.map((part) => part.start));
    for (const [at, part] of parts.entries()) {
      const [found, wanted] = [rowsOf(again[at] as PlannedPart), rowsOf(part)];
      // some hundred rows: only those that differ are looked at with the eyes of a message
      if (!isDeepStrictEqual(found, wanted)) expect(found, written.value).toEqual(wanted);
    }
  });
}

describe('a garment written as a pattern', () => {
  it.each(['US', 'UK'] as const)('is read back to the same rows in %s words: the samples', (terms) => {
    comesBack(sampleGarment, terms);
    for (const name of demoNames) {
      const demo = demoGarment(name);
      if (demo.ok) comesBack(demo.value, terms);
    }
  });

  it(`is read back to the same rows: ${GARMENTS} random garments`, { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(knittableRecipe(), fc.constantFrom('US' as const, 'UK' as const), ({ recipe }, terms) =>
        comesBack({ name: 'Any', pieces: [recipe] }, terms),
      ),
      { numRuns: GARMENTS, endOnFailure: true },
    );
  });

  it('says each new row once and what recurs as a repeat', () => {
    const written = writePattern(sampleGarment);
    const text = written.ok ? written.value : '';
    expect(text).toContain('Rep rows 19 and 20, 48 times more.');
    expect(text).toContain('Row 117 (RS): bind off 6 sts, knit to end. (112 sts)');
    expect(text.split('\n').length).toBeLessThan(130);
  });

  it('states the tension in the figures of the garment, and at which end of the needle a side goes on', () => {
    const written = writePattern(sampleGarment);
    const text = written.ok ? written.value : '';
    // the sample is knitted at 21 stitches and 28 rows to 10 cm
    expect(text).toContain('Gauge: 21 sts and 28 rows = 10 cm in stockinette stitch on 4 mm needles.');
    // the front's first side is the right one: its stitches are the first that a right side row comes to
    expect(text).toContain(
      'Divide: work on first 48 sts only; place rem 48 sts on a holder.\nNeck, in stockinette stitch, 58 rows:\nRow 1 (RS): knit to',
    );
    expect(text).toContain(
      'With RS facing, rejoin yarn to next 48 sts.\nNeck, in stockinette stitch, 58 rows:\nRow 1 (RS): k2, ssk, knit to end.',
    );
  });

  it('is refused where a piece cannot be knitted', () => {
    const broken: Garment = { name: 'x', pieces: [{ name: 'Back', makes: 1, parts: [] }] };
    expect(writePattern(broken)).toMatchObject({ ok: false, faults: [{ code: 'no parts' }] });
  });
});
