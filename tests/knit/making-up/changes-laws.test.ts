import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { consequences } from '../../../src/knit/making-up/consequences.ts';
import { type Answer, answers } from '../../../src/knit/making-up/mends.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { told } from '../../told.ts';
import { allMended } from './all-mended.ts';
import { type Change, changed, someChange } from './change.ts';
import { noMore } from './meets.ts';

/** RIDGELINE_DRAFTS=1000 for a whole sweep; a part of it in every run. */
const DRAFTS = Math.min(Number(process.env.RIDGELINE_DRAFTS ?? 40), 5000);

interface Case {
  readonly said: string;
  readonly piece: string;
  readonly before: StandingGarment;
  readonly after: StandingGarment;
}

function caseOf(design: Design, at: number, change: Change): Case | undefined {
  const made = draft(design);
  if (!made.ok) return undefined;
  const { recipes, joints } = made.value;
  const recipe = recipes[at % recipes.length];
  const other = recipe && changed(recipe, change);
  const before = asPlanned({ name: 'any', pieces: recipes, joints });
  if (!other || !before.ok) return undefined;
  const after = asPlanned({
    name: 'any',
    pieces: recipes.map((one) => (one === recipe ? other : one)),
    joints,
  });
  if (!after.ok) return undefined;
  const { kind, armhole, neck } = design;
  const said = `${recipe.name} ${JSON.stringify(change)}: ${kind} ${armhole} ${neck.shape} ${neck.opening ?? ''}`;
  return { said, piece: recipe.name, before: before.value, after: after.value };
}

const namesIn = ({ what }: Answer<unknown>): readonly string[] =>
  what.flatMap((one) => {
    if (one.kind === 'seam' || one.kind === 'level') return [one.piece, one.to];
    return one.kind === 'pick up' ? [one.band] : [one.piece];
  });

const cases: Case[] = [];

describe(`any change of any piece of a draft (${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`, () => {
  beforeAll(
    () => {
      const tried = fc.tuple(someDesign(), fc.nat({ max: 6 }), someChange());
      for (const [design, at, change] of fc.sample(tried, { numRuns: DRAFTS })) {
        const one = caseOf(design, at, change);
        if (one) cases.push(one);
      }
      expect(cases.length).toBeGreaterThan(DRAFTS / 4);
    },
    60_000 + DRAFTS * 400,
  );

  it('whatever meets no more is told, with both of its pieces', () => {
    const silent: string[] = [];
    for (const { before, after, piece, said } of cases) {
      const all = [...answers({ before, after, inHand: piece })];
      for (const { what, pieces } of noMore(before, after)) {
        const isTold = all.some((one) =>
          pieces.some((name) => name !== piece && namesIn(one).includes(name)),
        );
        const isPair = pieces[0] === pieces[1] && all.length > 0;
        if (!isTold && !isPair) silent.push(`${said}: ${what}`);
      }
    }
    expect([silent.length, silent.slice(0, 20)]).toEqual([0, []]);
  }, 600_000);

  it('with every mend taken what can be counted meets again, each plan proves, and what is left was said to have no mend', () => {
    const outcome = { broken: 0, mended: 0 };
    const left: string[] = [];
    for (const one of cases) {
      const { before, after, piece, said } = one;
      if (consequences(before, after).length === 0) continue;
      outcome.broken += 1;
      const end = allMended(one);
      const planned = asPlanned({ name: 'any', pieces: end.pieces.map(({ recipe }) => recipe) });
      if (!planned.ok) throw new Error(`${said}: ${told(planned.faults)}`);
      const rest = [...answers({ before, after: end, inHand: piece })];
      const off = noMore(before, end).filter(({ within }) => within === 0);
      if (rest.length === 0 && off.length === 0) outcome.mended += 1;
      // nothing is left in silence
      for (const { what, pieces } of off)
        if (!rest.some((answer) => pieces.some((name) => namesIn(answer).includes(name))))
          left.push(`${said}: ${what}`);
      for (const { mends, what } of rest) if (mends.length > 0) left.push(`${said}: ${what[0].kind}`);
    }
    expect(left).toEqual([]);
    if (process.env.RIDGELINE_DRAFTS !== undefined) console.info(outcome);
    expect(outcome.mended / outcome.broken).toBeGreaterThanOrEqual(0.72);
  }, 600_000);
});
