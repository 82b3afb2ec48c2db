import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { Boundaries, layLine } from '../../../src/knit/making-up/boundary-of.ts';
import type { Joint, Line } from '../../../src/knit/making-up/joint.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';
import { stripedThrough } from '../../../src/knit/yarn/striped-through.ts';
import { coloursOf, rowsBelow, type StripesOf } from '../../../src/knit/yarn/stripes.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { same } from '../../same.ts';

const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 50);

/** Two colours at least, none twice: a stripe out of its place is seen. */
const someStripes = fc.uniqueArray(
  fc.record({
    colour: fc.constantFrom('woad', 'weld', 'madder', 'walnut'),
    rows: fc.integer({ min: 1, max: 9 }),
  }),
  { minLength: 2, maxLength: 4, selector: ({ colour }) => colour },
);

interface Striped {
  readonly design: Design;
  readonly garment: StandingGarment;
  readonly joints: readonly Joint[];
  readonly how: StripesOf;
}

/** Colours along a line, row after row, read from the parts as the knitting screen reads them. */
function coloursAlong({ garment, how }: Striped, boundaries: Boundaries, line: Line): (string | undefined)[] {
  return layLine(boundaries, line).laid.flatMap(({ stretch, part, bits }) => {
    const piece = garment.pieces.find(({ recipe }) => recipe.name === stretch.piece);
    const parts = piece?.makes.find(({ make }) => make === stretch.make)?.parts ?? [];
    const colour = coloursOf(how, stretch.piece, parts, part);
    const own = bits.flatMap(({ level, row }) => (level ? [] : [colour(row)]));
    return stretch.reversed ? own.reverse() : own;
  });
}

const seams = (one: Striped, of: string) => {
  const boundaries = new Boundaries(one.garment);
  return one.joints.flatMap((joint) =>
    joint.kind === 'seam' && joint.of === of
      ? [{ a: coloursAlong(one, boundaries, joint.a), b: coloursAlong(one, boundaries, joint.b) }]
      : [],
  );
};

describe('stripes of a drafted garment', () => {
  const all: Striped[] = [];
  beforeAll(
    () => {
      for (const [design, stripes] of fc.sample(fc.tuple(someDesign(), someStripes), DRAFTS)) {
        const made = draft(design);
        if (!made.ok) continue;
        const garment = asPlanned({ name: 'any', pieces: made.value.recipes, joints: made.value.joints });
        if (!garment.ok) continue;
        const striped = Object.fromEntries(stripedThrough(garment.value));
        all.push({ design, garment: garment.value, joints: made.value.joints, how: { stripes, striped } });
      }
    },
    60_000 + DRAFTS * 400,
  );

  function broken(of: string): { met: number; apart: string[] } {
    let met = 0;
    const apart: string[] = [];
    for (const one of all)
      for (const { a, b } of seams(one, of)) {
        if (a.length !== b.length) continue;
        met += 1;
        if (JSON.stringify(a) !== JSON.stringify(b))
          apart.push(
            `${JSON.stringify(one.how)} ${a.join(' ')} / ${b.join(' ')} ${JSON.stringify(one.design)}`,
          );
      }
    return { met, apart };
  }

  it('two rows that are sewn together at a side seam have one colour', () => {
    const { met, apart } = broken('side');
    expect(met).toBeGreaterThan(all.length);
    expect(apart.length, apart[0]).toBe(0);
  });

  it('two rows that are sewn together along a raglan have one colour', () => {
    const { met, apart } = broken('raglan');
    expect(met).toBeGreaterThan(all.length / 8);
    expect(apart.length, apart[0]).toBe(0);
  });

  it('back and front have one colour at one height, through necks and shoulders', () => {
    for (const { garment, how } of all) {
      const heights = garment.pieces.slice(0, 2).map(({ recipe, makes: [make] }) => {
        const parts = make?.parts ?? [];
        const at = new Map<number, string | undefined>();
        for (const part of parts.filter(({ rows }) => rows.length > 1)) {
          const colour = coloursOf(how, recipe.name, parts, part);
          const below = rowsBelow(parts, part);
          // the last row may be the one in which all is bound off
          for (const { n, after } of part.rows) if (after > 0) at.set(below + n, colour(n));
        }
        return at;
      });
      const [back = new Map(), front = new Map()] = heights;
      for (const [row, colour] of back) if (front.has(row)) same(front.get(row), colour);
    }
  });

  it('a sleeve ends its seam at the underarm with the colour that the body has there', () => {
    let met = 0;
    for (const one of all) {
      const [side] = seams(one, 'side');
      for (const { a, b } of seams(one, 'sleeve')) {
        met += 1;
        expect([a.at(-1), b.at(-1)], JSON.stringify(one.design)).toEqual([side?.a.at(-1), side?.a.at(-1)]);
      }
    }
    expect(met).toBeGreaterThan(all.length / 2);
  });

  it('go on from a part to those that are parted from it, and are not on ribs and bands', () => {
    for (const { design, garment, how } of all)
      for (const { recipe, makes } of garment.pieces)
        for (const { parts } of makes)
          for (const part of parts) {
            const colour = coloursOf(how, recipe.name, parts, part);
            const main = how.stripes?.[0]?.colour;
            if (recipe.role?.includes('band'))
              expect(part.rows.every(({ n }) => colour(n) === main)).toBe(true);
            const rib = part.sections.find(({ name }) => name === 'hem' || name === 'cuff');
            const body = part.sections.find(({ name }) => name === 'body' || name === 'sleeve');
            if (rib && body && rib.fabric !== body.fabric)
              for (let row = rib.first; row <= rib.last; row += 1)
                same(colour(row), main, () => `${recipe.name} ${row} ${JSON.stringify(design)}`);
          }
  });
});
