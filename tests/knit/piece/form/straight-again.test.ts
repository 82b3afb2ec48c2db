import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MeasuredGauge } from '../../../../src/knit/measured-gauge.ts';
import { formToRecipe } from '../../../../src/knit/piece/form/read-piece.ts';
import type { StarterWords } from '../../../../src/knit/piece/form/starters.ts';
import {
  faultOf,
  type StraightShape,
  straightCounts,
  straightFigureNames,
  straightPieces,
  usualShape,
} from '../../../../src/knit/piece/form/straight.ts';
import { straightShapeOf } from '../../../../src/knit/piece/form/straight-again.ts';
import type { Recipe } from '../../../../src/knit/piece/recipe.ts';
import { share } from '../../../by-turns.ts';

const words = new Proxy({}, { get: (_, name) => `her ${String(name)}` }) as StarterWords;
const garter: MeasuredGauge = { stitches: 20, rows: 40, fabric: 'garter', needle: 4 };
const plain: MeasuredGauge = { stitches: 21.5, rows: 28 };
const needle = 4;
const tidyMm = [10, 5];

function pieces(shape: StraightShape, gauge: MeasuredGauge): Recipe[] {
  const found = straightCounts(shape, gauge);
  if (!found) throw new Error('a figure is missing');
  return straightPieces(shape, found, { gauge, needle, words }).map((form) => {
    const read = formToRecipe(form);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    return read.value;
  });
}

const again = (made: readonly Recipe[], gauge: MeasuredGauge) =>
  straightShapeOf(made, { gauge, needle, tidyMm });

/** The garter pullover of a beginner, a V, in centimetres. */
const hers: StraightShape = {
  neck: 'V',
  given: {
    width: { mm: 550 },
    length: { mm: 620 },
    border: { count: 12 },
    neckWidth: { mm: 200 },
    neckDepth: { mm: 200 },
    cuff: { mm: 240 },
    sleeveTop: { mm: 400 },
    sleeveLength: { mm: 440 },
  },
};

describe('the shape of straight panels, read off their pieces', () => {
  it('has its lengths as she typed them, to be asked for another size', () => {
    const { border, ...lengths } = hers.given;
    const found = again(pieces(hers, garter), garter);
    expect(found).toMatchObject({ neck: 'V', given: lengths });
    expect(found && straightCounts(found, garter)?.border).toBe(12);
    expect(border).toEqual({ count: 12 });
  });

  it('keeps as a count what no length comes to', () => {
    const odd: StraightShape = { neck: 'boat', given: { width: { count: 111 } } };
    expect(again(pieces(odd, plain), plain)?.given.width).toEqual({ count: 111 });
  });

  it('finds them in whatever order they lie, and a body that was parted where it was made longer', () => {
    const [back, front, sleeve] = pieces(hers, garter) as [Recipe, Recipe, Recipe];
    const longer = (piece: Recipe): Recipe => {
      const [part, ...others] = piece.parts;
      const sections = part?.sections.flatMap((section) =>
        section.fabric === 'garter' && section.shaping.length === 0
          ? [
              { ...section, rows: 20 },
              { ...section, name: 'longer', rows: section.rows },
            ]
          : [section],
      );
      return { ...piece, parts: [{ ...part, sections } as Recipe['parts'][number], ...others] };
    };
    // 20 rows at 40 to 10 cm are 5 cm
    expect(again([sleeve, longer(front), longer(back)], garter)?.given.length).toEqual({ mm: 670 });
    // a front that did not follow is no piece of any shape
    expect(again([sleeve, front, longer(back)], garter)).toBeUndefined();
  });

  it('is none where a piece was changed by hand, is missing, or another came', () => {
    const [back, front, sleeve] = pieces(hers, garter) as [Recipe, Recipe, Recipe];
    const onNeedle = (mm: number): Recipe => ({
      ...sleeve,
      parts: sleeve.parts.map((part) => ({
        ...part,
        sections: part.sections.map((section) => ({ ...section, needle: mm })),
      })),
    });
    expect(again([back, front, onNeedle(5)], garter)).toBeUndefined();
    expect(again([back, front, { ...sleeve, makes: 1 }], garter)).toBeUndefined();
    expect(again([back, front], garter)).toBeUndefined();
    expect(again([back, front, sleeve, { ...sleeve, role: 'other' }], garter)).toBeUndefined();
    expect(again([back, { ...back, role: 'front' }, sleeve], garter)?.neck).toBe('boat');
  });

  it('makes the very pieces that it was read off, whatever they are (law)', () => {
    const figure = (min: number, max: number) =>
      fc.oneof(
        fc.record({ mm: fc.integer({ min, max }) }),
        fc.record({ count: fc.integer({ min: 10, max: 160 }) }),
      );
    const given = fc.record({
      width: figure(300, 700),
      length: figure(300, 700),
      border: fc.record({ count: fc.integer({ min: 0, max: 30 }) }),
      neckWidth: figure(100, 300),
      neckDepth: figure(100, 250),
      cuff: figure(150, 300),
      sleeveTop: figure(250, 500),
      sleeveLength: figure(200, 500),
    });
    fc.assert(
      fc.property(
        given,
        fc.constantFrom('boat' as const, 'V' as const),
        fc.constantFrom(garter, plain),
        (figures, neck, gauge) => {
          const shape: StraightShape = { neck, given: figures };
          const counts = straightCounts(shape, gauge);
          fc.pre(counts !== undefined && faultOf(shape, counts) === undefined);
          const found = again(pieces(shape, gauge), gauge);
          expect(found?.neck).toBe(neck);
          // a boat neck has no depth to be read
          expect(Object.keys(found?.given ?? {})).toEqual(
            straightFigureNames.filter((name) => neck === 'V' || name !== 'neckDepth'),
          );
          const parts = (of: StraightShape | undefined) => of && pieces(of, gauge).map((one) => one.parts);
          expect(parts(found)).toEqual(parts(shape));
        },
      ),
      { endOnFailure: true, numRuns: share(60) },
    );
  });

  it('of the usual size is the usual size', () => {
    const found = again(pieces(usualShape, plain), plain);
    expect(found && straightCounts(found, plain)).toEqual(straightCounts(usualShape, plain));
  });
});
