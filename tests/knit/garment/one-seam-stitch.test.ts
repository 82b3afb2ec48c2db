import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Design, isSince } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { finishedBeside } from '../../../src/knit/garment/finished-beside.ts';
import { garmentKinds } from '../../../src/knit/garment/kinds/garments.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { sewnMm } from '../../../src/knit/making-up/seam-stitch.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { yarnFor } from '../../../src/knit/yarn/need.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { share } from '../../by-turns.ts';
import { told } from '../../told.ts';
import { isFlat as isFlatTop } from './as-knitted.ts';

/** With sleeves that end straight, and a stitch for each seam: of any designs hardly one in ten. */
const sewnFlat = (): fc.Arbitrary<Design> =>
  fc
    .tuple(someDesign(), fc.constantFrom('drop' as const, 'indented' as const))
    .map(([design, armhole]) => ({ ...design, kind: 'pullover', armhole, seamStitch: true }));

/*
 * The drawing shows what is left when the seams have taken their stitch of each edge, as the finished measures do; a piece is
 * pinned out with those stitches, and yarn is needed for them: knittingmagic.biz, couture knitting, has selvages in the
 * count and not in the schematic. The He-and-She vest casts on 67 for 16¾ in where 16½ is printed, since edge stitches
 * lose ¼ in.
 */
describe('the stitch that a seam takes', () => {
  it('is the same for the drawing, the finished measures, the blocking and the yarn', () => {
    let drafts = 0;
    let flats = 0;
    fc.assert(
      fc.property(fc.oneof({ weight: 3, arbitrary: someDesign() }, sewnFlat()), (design) => {
        const made = draft(design);
        if (!made.ok) return;
        const { roundings, recipes, joints } = made.value;
        const drawn = (measure: string) => roundings.find((one) => one.measure === measure);
        const beside = finishedBeside(design, made.value);
        const measured = (measure: string) => beside.find((one) => one.measure === measure)?.madeMm;
        const planned = asPlanned({ name: 'any', pieces: recipes });
        if (!planned.ok) throw new Error(told(planned.faults));
        drafts += 1;
        const back = drawn('width at the underarm');
        if (!back) throw new Error('a back has a width');

        const { open, sleeves } = garmentKinds[design.kind];
        // where the pieces have no stitch for their seams, these take it of what is drawn; a sleeve that is sewn flat had none in the first edition
        const own = design.seamStitch === true ? 2 : 0;
        const isFlat = isFlatTop(design) && design.edition === undefined;
        if (sleeves && isFlatTop(design) && own > 0) flats += 1;
        const taken = (2 - own) * back.unitMm;
        if (!open) expect(measured('chest')).toBeCloseTo(2 * (back.madeMm - taken), 6);
        const sleeve = drawn('sleeve width')?.madeMm ?? 0;
        if (sleeves)
          expect(measured('upper arm')).toBeCloseTo(sleeve - (isFlat ? 2 * back.unitMm : taken), 6);
        // a straight top is longer than its armhole by what its own seam takes of either end, and its joints say so
        const set = joints.find((joint) => joint.kind === 'seam' && joint.of === 'armhole');
        if (sleeves && isFlatTop(design) && set?.kind === 'seam')
          expect((set.ease ?? 0) > 0).toBe(own > 0 && isSince(2, design));

        // pinned out as it lies: the widest row, with a stitch more at each edge than is drawn
        const { steps } = makingUpOf({ ...planned.value, joints });
        const block = steps.find((step) => step.kind === 'block' && step.piece === 'Back');
        if (block?.kind !== 'block') throw new Error('a back is blocked');
        expect(block.widthMm + 1e-6).toBeGreaterThanOrEqual(sewnMm(back.count, 0, back.unitMm));
        expect(back.madeMm).toBeCloseTo(sewnMm(back.count, own, back.unitMm), 6);
        expect(back.count).toBe(Math.round(back.madeMm / back.unitMm) + own);
      }),
      { numRuns: share(80), endOnFailure: true },
    );
    expect(drafts).toBeGreaterThan(share(45));
    expect(flats).toBeGreaterThan(share(8));
  });

  it('needs yarn where a piece has one for it: two columns of the back’s rows', () => {
    let backs = 0;
    fc.assert(
      fc.property(someDesign(), (design) => {
        const needs = [false, true].map((seamStitch) => {
          const made = draft({
            ...design,
            // a fitted rib may take other stitches than those
            hem: { ...design.hem, heightMm: 0 },
            kind: 'vest',
            armhole: 'drop',
            silhouette: 'straight',
            seamStitch,
          });
          if (!made.ok) return undefined;
          const back = made.value.recipes.slice(0, 1);
          const need = yarnFor({ name: 'any', pieces: back });
          const counted = (measure: string) =>
            made.value.roundings.find((one) => one.measure === measure && one.piece === 'Back')?.count ?? 0;
          if (!need.ok) return undefined;
          const sections = need.value.makes.flatMap((make) => make.sections);
          return {
            loops: sections.reduce((sum, { loops }) => sum + loops, 0),
            count: counted('width at the underarm'),
            rows: counted('length'),
            sloped: counted('shoulder drop'),
          };
        });
        const [without, withOne] = needs;
        if (!without || !withOne) return;
        backs += 1;
        // whole stitches of one parity may make the seams' two none or four; each is cast on, worked up to the shoulder at
        // least, and bound off on its slope or behind its last row, the left one of two a row later
        const more = withOne.count - without.count;
        const loops = withOne.loops - without.loops;
        expect(loops).toBeGreaterThanOrEqual(more * (1 + without.rows - without.sloped));
        expect(loops).toBeLessThanOrEqual(more * (2 + without.rows) + more / 2);
      }),
      { numRuns: share(40), endOnFailure: true },
    );
    expect(backs).toBeGreaterThan(share(25));
  });
});
