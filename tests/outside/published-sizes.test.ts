import { describe, expect, it } from 'vitest';
import { type Adjustment, adjusted } from '../../src/knit/garment/adjust.ts';
import type { Body, Design } from '../../src/knit/garment/design.ts';
import { resized } from '../../src/knit/garment/grade.ts';
import { startingDesign } from '../../src/knit/garment/start.ts';
import type { Gauge } from '../../src/knit/gauge.ts';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import { draftSize, type WorkedSize } from '../../src/knit/written/work-size.ts';
import { writeSizes } from '../../src/knit/written/write-sizes.ts';
import { told } from '../told.ts';
import { bodyOf, countAtEnd, inch, near, perInch } from './drafted.ts';

/**
 * Leaflets in several sizes as one design each, drafted for the first size and resized for the others, with what a leaflet
 * sets beside its own proportions set by hand for that size. All figures are the leaflets' own.
 */

const noEase = { chest: 0, waist: 0, hip: 0, upperArm: 0, wrist: 0, crossBack: 0, armholeDepth: 0 };

interface Size {
  readonly size: string;
  /** inches across the back, at the armhole's end, of the armhole and of the whole */
  readonly back: number;
  readonly across?: number;
  readonly depth: number;
  readonly length: number;
  readonly sleeve: number;
  readonly sleeveLength: number;
  readonly neck: number;
}

function inSizes(gauge: Gauge, armhole: Design['armhole'], sizes: readonly Size[], by: object = {}) {
  const bodyFor = ({ back, across, depth, sleeve, sleeveLength }: Size): Body => ({
    ...bodyOf('men', 'M'),
    chest: inch(2 * back),
    hip: inch(2 * back),
    crossBack: inch(across ?? back - 3),
    armholeDepth: inch(depth),
    upperArm: inch(sleeve),
    arm: inch(sleeveLength),
    wrist: inch(7),
  });
  const [first] = sizes;
  if (!first) throw new Error('no sizes');
  const begun = startingDesign(
    { kind: 'pullover', armhole, neck: 'round', fit: 'close' },
    bodyFor(first),
    'stocking',
    gauge,
  );
  const design: Design = {
    ...begun,
    // the inches of leaflets are those of their counts
    seamStitch: false,
    ease: noEase,
    neck: { ...begun.neck, backDepthMm: 0 },
    sleeve: { ...begun.sleeve, endsAtWrist: false },
    shoulderDropMm: armhole === 'set-in' ? inch(0.7) : 0,
    ...by,
  };
  const own = sizes.flatMap(({ size, length, neck, sleeveLength }): Adjustment[] => [
    { path: 'lengthMm', mm: inch(length), size },
    { path: 'neck.widthMm', mm: inch(neck), size },
    { path: 'sleeve.lengthMm', mm: inch(sleeveLength), size },
  ]);
  return sizes.map((one) => {
    const made = draftSize(one.size, adjusted(resized(design, bodyFor(one)), own, one.size), {
      name: 'Leaflet',
    });
    if (!made.ok) throw new Error(`${one.size}: ${told(made.faults)}`);
    return made.value;
  });
}

const part = ({ garment }: WorkedSize, piece: string) => {
  const found = garment.pieces.find(({ recipe }) => recipe.name === piece)?.makes[0]?.parts[0];
  if (!found) throw new Error(piece);
  return found;
};

/** What was written is one pattern of all sizes, and every size is read back to the counts that it was written with. */
function isOnePattern(sizes: readonly WorkedSize[]): void {
  const text = writeSizes(sizes);
  if (!text.ok) throw new Error(told(text.faults));
  const castOns = sizes.map((size) => part(size, 'Back').start);
  const [head, ...others] = castOns;
  expect(text.value).toContain(`cast on ${head} (${others.join(', ')}) sts`);
  castOns.forEach((castOn, size) => {
    const read = readPattern(text.value, { size });
    const plan = read.pieces[0]?.plan;
    expect(plan?.ok && plan.value.parts[0]?.start).toBe(castOn);
  });
}

describe('published patterns in several sizes, each as one design', () => {
  it('boy’s hooded jacket, Bulkies (American Thread, Book 006, PG 66271), 7 (8, 10, 12): cast on, sleeve and lengths', () => {
    const gauge = perInch(4, 6);
    // the armhole's depth is not printed in inches: that of 49 rows in all sizes
    const printed = [
      { size: '7', back: 14.25, depth: 8, length: 15.5, sleeve: 12, castOn: 57, arm: 49, chest: 28.75 },
      { size: '8', back: 14.75, depth: 8, length: 16, sleeve: 12.75, castOn: 59, arm: 51, chest: 30.25 },
      { size: '10', back: 15.75, depth: 8, length: 17, sleeve: 13.5, castOn: 63, arm: 55, chest: 31.25 },
      { size: '12', back: 16.25, depth: 8, length: 17.5, sleeve: 14, castOn: 65, arm: 57, chest: 32.75 },
    ].map((one) => ({ ...one, sleeveLength: 13.5, neck: one.back / 3 }));
    const sizes = inSizes(gauge, 'raglan', printed);
    for (const [i, { size, back, length, castOn, arm, chest }] of printed.entries()) {
      const made = sizes[i] as WorkedSize;
      near(part(made, 'Back').start, castOn, 2, `${size} cast on`);
      // 12¾ inches of 51 and 13½ of 55 stitches are rounded in the leaflet
      near(countAtEnd(part(made, 'Sleeve'), 'sleeve'), arm, 2, `${size} sleeve`);
      // made up, a stitch of each edge has gone into its seam, an inch in all; the hem's rib may want three stitches more or less
      near((made.finished.chest ?? 0) / 25.4 + 1, 2 * back, 0.75, `${size} chest`);
      // the finished chest as printed has a zipper of its own between the fronts
      near((made.finished.chest ?? 0) / 25.4 + 1, chest, 1, `${size} finished chest`);
      near((part(made, 'Back').rows.length * 100) / gauge.rows / 25.4, length, 1 / 3, `${size} length`);
    }
    isOnePattern(sizes);
  });

  it('his slipover, Begin to Knit (Star Book 201, PG 61105), 40 (42, 44): cast on, sleeve and armhole', () => {
    const gauge = perInch(4.5, 6);
    const printed = [
      { size: '40', castOn: 92, depth: 9, sleeveLength: 19, across: 77 / 4.5, arm: 71 },
      { size: '42', castOn: 96, depth: 9.5, sleeveLength: 19.25, across: 81 / 4.5, arm: 73 },
      { size: '44', castOn: 100, depth: 10, sleeveLength: 19.5, across: 85 / 4.5, arm: 75 },
    ].map((one) => ({
      ...one,
      // an inch of ease
      back: (Number(one.size) + 1) / 2,
      length: 25,
      sleeve: one.arm / 4.5,
      neck: 7,
    }));
    const sizes = inSizes(gauge, 'set-in', printed);
    for (const [i, { size, castOn, across, depth, arm }] of printed.entries()) {
      const made = sizes[i] as WorkedSize;
      const back = part(made, 'Back');
      near(back.start, castOn, 2, `${size} cast on`);
      near(countAtEnd(back, 'armhole'), across * 4.5, 2, `${size} across`);
      const { first, last } = back.sections.find(({ name }) => name === 'armhole') ?? { first: 1, last: 0 };
      near((last - first + 1) / 6, depth, 0.5, `${size} armhole`);
      near(countAtEnd(part(made, 'Sleeve'), 'sleeve'), arm, 2, `${size} sleeve`);
    }
    isOnePattern(sizes);
  });

  it('clam-digger shell, Begin to Knit (Star Book 201, PG 61105), S (M, L): back, armhole and shoulders', () => {
    const gauge = perInch(4.5, 6);
    // 73 (77, 81) stitches, 59 (61, 63) above the armhole, 35 of them at the neck; depths and lengths are not in our notes of it
    const printed = [
      { size: 'S', castOn: 73, above: 59 },
      { size: 'M', castOn: 77, above: 61 },
      { size: 'L', castOn: 81, above: 63 },
    ].map((one) => ({
      ...one,
      back: one.castOn / 4.5,
      across: one.above / 4.5,
      depth: 8,
      length: 22,
      sleeve: 13,
      sleeveLength: 17,
      neck: (35 + 4) / 4.5,
    }));
    const sizes = inSizes(gauge, 'set-in', printed);
    for (const [i, { size, castOn, above }] of printed.entries()) {
      const back = part(sizes[i] as WorkedSize, 'Back');
      near(back.start, castOn, 2, `${size} cast on`);
      near(countAtEnd(back, 'armhole'), above, 2, `${size} above the armhole`);
    }
    isOnePattern(sizes);
  });
});
