import { describe, expect, it } from 'vitest';
import type { Body, Design } from '../../src/knit/garment/design.ts';
import type { Draft } from '../../src/knit/garment/draft.ts';
import { startingDesign } from '../../src/knit/garment/start.ts';
import type { Gauge } from '../../src/knit/gauge.ts';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import type { PlannedPart } from '../../src/knit/piece/planned.ts';
import { bodyOf, countAtEnd, drafted, inch, mainPart, near, perInch } from './drafted.ts';

const noEase = { chest: 0, waist: 0, hip: 0, upperArm: 0, wrist: 0, crossBack: 0, armholeDepth: 0 };

/** What a leaflet prints, inches; what it leaves out is a man's medium. */
interface Leaflet {
  readonly kind: Design['kind'];
  readonly armhole: Design['armhole'];
  readonly gauge: Gauge;
  readonly back: number;
  readonly armholeDepth: number;
  readonly length: number;
  readonly across?: number;
  readonly neck?: number;
  readonly sleeve?: { readonly top: number; readonly length: number };
}

function redraft(leaflet: Leaflet): Draft {
  const medium = bodyOf('men', 'M');
  const body: Body = {
    ...medium,
    chest: inch(2 * leaflet.back),
    hip: inch(2 * leaflet.back),
    crossBack: inch(leaflet.across ?? leaflet.back - 3),
    armholeDepth: inch(leaflet.armholeDepth),
    upperArm: leaflet.sleeve ? inch(leaflet.sleeve.top) : medium.upperArm,
    arm: leaflet.sleeve ? inch(leaflet.sleeve.length) : medium.arm,
    wrist: inch(7),
  };
  const begun = startingDesign(
    { kind: leaflet.kind, armhole: leaflet.armhole, neck: 'round', fit: 'close' },
    body,
    'stocking',
    leaflet.gauge,
  );
  return drafted({
    ...begun,
    // the inches of leaflets are those of their counts
    seamStitch: false,
    ease: noEase,
    lengthMm: inch(leaflet.length),
    neck: { ...begun.neck, widthMm: inch(leaflet.neck ?? leaflet.back / 3), backDepthMm: 0 },
    // the leaflets print a sleeve, none the nape to the wrist
    sleeve: { ...begun.sleeve, endsAtWrist: false },
    shoulderDropMm: leaflet.armhole === 'set-in' ? inch(0.7) : 0,
  });
}

/** Inches of a section; its rows are those of the panel's own part. */
function inchesOf({ sections }: PlannedPart, section: string, gauge: Gauge): number {
  const { first, last } = sections.find((s) => s.name === section) ?? { first: 0, last: Number.NaN };
  return ((last - first + 1) * 100) / gauge.rows / 25.4;
}

const inchesWide = (stitches: number, gauge: Gauge): number => (stitches * 100) / gauge.stitches / 25.4;

describe('published patterns drafted again from the inches that they print', () => {
  it('boy’s hooded jacket, Bulkies (American Thread, Book 006, PG 66271): back and sleeve widths and lengths of sizes 7, 8, 10, 12 at 4 stitches and 6 rows to the inch', () => {
    const gauge = perInch(4, 6);
    const sizes = [
      { back: 14.25, length: 15.5, sleeve: 12, castOn: 57, top: 19, atUnderarm: 49 },
      { back: 14.75, length: 16, sleeve: 12.75, castOn: 59, top: 19, atUnderarm: 51 },
      { back: 15.75, length: 17, sleeve: 13.5, castOn: 63, top: 21, atUnderarm: 55 },
      { back: 16.25, length: 17.5, sleeve: 14, castOn: 65, top: 21, atUnderarm: 57 },
    ];
    for (const { back, length, sleeve, castOn, top, atUnderarm } of sizes) {
      // the depth, which is not printed in inches, is that of size 7's 49 rows
      const made = redraft({
        kind: 'pullover',
        armhole: 'raglan',
        gauge,
        back,
        armholeDepth: 8,
        length,
        sleeve: { top: sleeve, length: 13.5 },
      });
      const panel = mainPart(made, 'Back');
      const arm = mainPart(made, 'Sleeve');
      near(inchesWide(countAtEnd(panel, 'body'), gauge), back, 0.25, 'back');
      near(inchesWide(countAtEnd(arm, 'sleeve'), gauge), sleeve, 0.25, 'sleeve');
      near((panel.rows.length * 100) / gauge.rows / 25.4, length, 1 / 3, 'length');
      // the counts printed beside those inches; 12¾ inches of 51 and 13½ of 55 stitches are rounded in the leaflet
      near(panel.start, castOn, 2, 'cast on');
      near(countAtEnd(arm, 'sleeve'), atUnderarm, 2, 'sleeve');
      near(panel.rows[panel.rows.length - 1]?.before ?? 0, top, 2, 'a third of the back at the neck');
    }
  });

  it('his slipover, Begin to Knit (Star Book 201, PG 61105): sizes 40, 42, 44 with an inch of ease at 9 stitches to 2 inches', () => {
    const gauge = perInch(4.5, 6);
    const sizes = [
      { size: 40, castOn: 92, depth: 9, sleeve: 19, standard: 'M' },
      { size: 42, castOn: 96, depth: 9.5, sleeve: 19.25, standard: 'L' },
      { size: 44, castOn: 100, depth: 10, sleeve: 19.5, standard: 'L' },
    ];
    for (const { size, castOn, depth, sleeve, standard } of sizes) {
      const across = bodyOf('men', standard).crossBack / 25.4;
      const made = redraft({
        kind: 'pullover',
        armhole: 'set-in',
        gauge,
        back: (size + 1) / 2,
        across,
        armholeDepth: depth,
        length: 25,
        sleeve: { top: 16, length: sleeve },
      });
      const panel = mainPart(made, 'Back');
      near(panel.start, castOn, 2, 'cast on');
      near(inchesOf(panel, 'armhole', gauge), depth, 0.25, 'armhole to the shoulder');
      // printed 77 (81, 85): an inch and a quarter from the standard's cross back at most
      near(countAtEnd(panel, 'armhole'), castOn - 15, 1.25 * 4.5, 'across');
      const arm = mainPart(made, 'Sleeve');
      const rows = arm.sections.find((s) => s.name === 'sleeve')?.last ?? 0;
      near((rows * 100) / gauge.rows / 25.4, sleeve, 0.5, 'sleeve to the underarm');
    }
  });

  it('vest, Sweaters He and She (Star Book 223, PG 65789): six sizes from their printed back widths and armholes at 4 stitches to the inch', () => {
    const sizes = [
      { back: 16.5, depth: 7.5, castOn: 67 },
      { back: 17.5, depth: 8, castOn: 71 },
      { back: 18.5, depth: 8.5, castOn: 75 },
      { back: 19.5, depth: 9, castOn: 79 },
      { back: 20.5, depth: 9.5, castOn: 83 },
      { back: 21.5, depth: 10, castOn: 87 },
    ];
    const gauge = perInch(4, 5.5);
    for (const { back, depth, castOn } of sizes) {
      const made = redraft({ kind: 'vest', armhole: 'set-in', gauge, back, armholeDepth: depth, length: 23 });
      const panel = mainPart(made, 'Back');
      near(inchesWide(countAtEnd(panel, 'body'), gauge), back, 0.5, 'back');
      near(panel.start, castOn, 2, 'cast on');
      near(inchesOf(panel, 'armhole', gauge), depth, 0.25, 'armhole to the shoulder');
    }
  });

  it('that vest’s printed counts part its back: 41 (45, 49), 53, 57, 61 are two shoulders of 10 (12, 14), 14, 16, 16 and 21 (21, 21), 25, 25, 29 between', () => {
    const sizes = [
      [41, 10, 21],
      [45, 12, 21],
      [49, 14, 21],
      [53, 14, 25],
      [57, 16, 25],
      [61, 16, 29],
    ] as const;
    for (const [across, each, neck] of sizes) {
      const read = readPattern(
        `BACK\nCO ${across} sts. Knit 2 rows.\nNext row: K${each}, BO ${neck}, k${each}. (${each} sts each side)`,
      );
      expect(read.lines.flatMap(({ faults }) => faults)).toEqual([]);
    }
  });

  it('pink and white sweater, Babies Are Such Fun to Dress (Star Book 220, PG 66272), drafted from the standard’s 2 and 4 years alone, a close fit at 6 stitches to the inch', () => {
    const sizes = [
      { age: '2', castOn: 66, across: 54, cuff: 33, sleeve: 51, depth: 4.5 },
      { age: '4', castOn: 72, across: 60, cuff: 36, sleeve: 54, depth: 5 },
    ];
    for (const printed of sizes) {
      const begun = startingDesign(
        { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'close' },
        bodyOf('children', printed.age),
        'stocking',
        perInch(6, 8),
      );
      // its fronts are open, so that its neck may be narrower than ours, which must let a head through; its edges have no stitch for a seam
      const made = drafted({ ...begun, seamStitch: false });
      const panel = mainPart(made, 'Back');
      const arm = mainPart(made, 'Sleeve');
      const rounded = (measure: string) => made.roundings.find((r) => r.measure === measure);
      near(countAtEnd(panel, 'body'), printed.castOn, 3, 'at the underarm');
      near(countAtEnd(panel, 'armhole'), printed.across, 3, 'across');
      near(arm.start, printed.cuff, 3, 'cuff');
      near(countAtEnd(arm, 'sleeve'), printed.sleeve, 5, 'sleeve');
      near((rounded('armhole depth')?.madeMm ?? Number.NaN) / 25.4, printed.depth, 0.25, 'armhole');
    }
  });

  it('Red Cross sleeveless sweater, Handbook of Wool Knitting and Crochet (Needlecraft, 1918, PG 26113): 25 inches long, armholes of 9', () => {
    const gauge = perInch(5.5, 7);
    const made = redraft({ kind: 'vest', armhole: 'drop', gauge, back: 14.5, armholeDepth: 9, length: 25 });
    const rounded = (measure: string) =>
      (made.roundings.find((r) => r.measure === measure)?.madeMm ?? Number.NaN) / 25.4;
    near((mainPart(made, 'Back').rows.length * 100) / gauge.rows / 25.4, 25, 1 / 3, 'length');
    near(rounded('armhole depth'), 9, 1 / 4, 'armhole');
  });
});
