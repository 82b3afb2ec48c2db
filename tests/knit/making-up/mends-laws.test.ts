import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { draft } from '../../../src/knit/garment/draft.ts';
import { consequences } from '../../../src/knit/making-up/consequences.ts';
import { type Trouble, workJoints } from '../../../src/knit/making-up/work-making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { withRows } from '../../../src/knit/piece/rework/lay-anew.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { allMended } from './all-mended.ts';

/** RIDGELINE_DRAFTS=1000 for a whole sweep; a part of it in every run. */
const DRAFTS = Math.min(Number(process.env.RIDGELINE_DRAFTS ?? 30), 5000);

/** One piece of a draft with a section of other length: which, and by how many rows. */
interface Change {
  readonly piece: number;
  readonly section: number;
  readonly by: number;
}

const someChange = (): fc.Arbitrary<Change> =>
  fc.record({
    piece: fc.nat({ max: 20 }),
    section: fc.nat({ max: 20 }),
    by: fc.constantFrom(-16, -8, -4, -2, 2, 4, 8, 16, 24),
  });

/** The first section of that name: of the lowest part, else of all that go on from it, since both sides of a neck are one wish. */
function changed(recipe: Recipe, name: string, by: number): Recipe | undefined {
  const has = (part: Recipe['parts'][number] | undefined) => part?.sections.some((one) => one.name === name);
  const parts = recipe.parts.map((part, at) => ({
    ...part,
    sections: part.sections.map((section, i) => {
      if (at > 0 && has(recipe.parts[0])) return section;
      if (i !== part.sections.findIndex((one) => one.name === name)) return section;
      const made = section.rows + by < 0 ? undefined : withRows(section, section.rows + by);
      return made?.ok ? made.value : undefined;
    }),
  }));
  if (parts.some(({ sections }) => sections.includes(undefined))) return undefined;
  return { ...recipe, parts: parts as Recipe['parts'] };
}

interface Case {
  readonly said: string;
  readonly by: number;
  readonly piece: string;
  readonly section: string;
  readonly before: StandingGarment;
  readonly after: StandingGarment;
}

function caseOf(design: Parameters<typeof draft>[0], change: Change): Case | undefined {
  const made = draft(design);
  if (!made.ok) return undefined;
  const garment: Garment = { name: 'any', pieces: made.value.recipes, joints: made.value.joints };
  const recipe = garment.pieces[change.piece % garment.pieces.length];
  const names = [...new Set(recipe?.parts.flatMap(({ sections }) => sections.map(({ name }) => name)))];
  const section = names[change.section % names.length];
  const other = recipe && section !== undefined && changed(recipe, section, change.by);
  const before = asPlanned(garment);
  if (!other || !before.ok) return undefined;
  const after = asPlanned({
    ...garment,
    pieces: garment.pieces.map((piece) => (piece === recipe ? other : piece)),
  });
  if (!after.ok) return undefined;
  const said = `${recipe.name} ${section} ${change.by} ${design.kind} ${design.armhole} ${design.neck.shape}`;
  return {
    said,
    by: change.by,
    piece: recipe.name,
    section: section ?? '',
    before: before.value,
    after: after.value,
  };
}

const troublesOf = (garment: StandingGarment): readonly Trouble[] =>
  workJoints(garment.joints ?? [], garment).troubles;

const cases: Case[] = [];

const outcome = { broken: 0, mended: 0, left: new Map<string, string[]>() };

describe(`one change of one piece of a draft, and what mends it (${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`, () => {
  beforeAll(
    () => {
      for (const [design, change] of fc.sample(fc.tuple(someDesign(), someChange()), { numRuns: DRAFTS })) {
        const one = caseOf(design, change);
        if (one) cases.push(one);
      }
    },
    60_000 + DRAFTS * 400,
  );

  it('enough of them are drafts that can be changed', () => {
    expect(cases.length).toBeGreaterThan(DRAFTS / 3);
  });

  it('every seam that the judge finds broken is told at its edge; nothing is told where it finds nothing', () => {
    for (const { before, after, said } of cases) {
      const off = troublesOf(after).filter(({ kind }) => kind === 'do not meet');
      const found = consequences(before, after);
      const seams = found.filter(({ kind }) => kind === 'seam');
      expect(seams.length > 0, said).toBe(off.length > 0);
      for (const trouble of off) {
        const joint = 'joint' in trouble ? after.joints?.[trouble.joint] : undefined;
        if (joint?.kind !== 'seam') continue;
        const pieces = [...joint.a, ...joint.b].map((stretch) => stretch.piece);
        const isTold = seams.some(
          (one) => one.kind === 'seam' && one.of === joint.of && pieces.includes(one.piece),
        );
        expect(isTold, `${said} ${joint.of}`).toBe(true);
      }
    }
  });

  it('row to row the difference is as many rows as were changed, on the piece that was changed', () => {
    let told = 0;
    for (const { before, after, by, piece, said } of cases) {
      for (const one of consequences(before, after)) {
        if (one.kind !== 'seam' || one.unit !== 'rows') continue;
        told += 1;
        expect(one.now - one.other, said).toBe(by);
        expect(one.now - one.was, said).toBe(by);
        expect(one.piece, said).toBe(piece);
      }
    }
    expect(told).toBeGreaterThan(DRAFTS / 12);
  });

  it('a length is off by no more than its rows are high, and in the same direction', () => {
    for (const { before, after, by, piece, said } of cases) {
      for (const one of consequences(before, after)) {
        if (one.kind !== 'seam' || one.unit !== 'mm' || one.piece !== piece) continue;
        const tallest = Math.max(
          ...after.pieces.flatMap(({ makes }) =>
            makes.flatMap(({ parts }) => parts.flatMap(({ cells }) => cells.map(({ height }) => height))),
          ),
        );
        // a cap has two sides; an armhole of a front and a back one
        expect(Math.abs(one.now - one.was), said).toBeLessThanOrEqual(2 * Math.abs(by) * tallest + 1e-6);
        expect(Math.sign(one.now - one.was), said).toBe(Math.sign(by));
      }
    }
  });

  it('with the mends taken the making up works again, for three changes of four at least', () => {
    for (const one of cases) {
      if (consequences(one.before, one.after).length === 0) continue;
      outcome.broken += 1;
      const made = allMended(one);
      if (troublesOf(made).length === 0 && consequences(one.before, made).length === 0) outcome.mended += 1;
      else {
        const left = JSON.stringify(
          consequences(one.before, made).map((c) => ({ ...c, longerMm: undefined })),
        );
        outcome.left.set(one.said, [left]);
      }
    }
    if (process.env.RIDGELINE_DRAFTS !== undefined)
      console.info(
        `${outcome.mended} of ${outcome.broken} mended`,
        Object.fromEntries([...outcome.left].slice(0, 40)),
      );
    expect(outcome.broken).toBeGreaterThan(DRAFTS / 8);
    expect(outcome.mended / outcome.broken).toBeGreaterThanOrEqual(0.75);
  }, 600_000);
});
